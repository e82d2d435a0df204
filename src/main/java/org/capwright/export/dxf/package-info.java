/**
 * DXF for cutting tables: ASCII in the form of release 12 (AC1009), which every reader knows: LINE, ARC, CIRCLE and TEXT on
 * layers CUT, BEND, MARK and TEXT, x to the right and y up as in the drawing, in millimetres or inches as declared. Imports
 * {@code units}, {@code geom}, {@code drawing} and {@code blank}.
 *
 * <p>Compromises: the unit is declared in {@code $INSUNITS}, which is younger than release 12 but skipped by readers that
 * don't know it; it therefore also stands in a comment and among the writing.
 */
package org.capwright.export.dxf;
