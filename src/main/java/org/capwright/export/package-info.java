/**
 * What leaves the program: figures, lists and patterns as CSV, SVG, DXF and PDF. Writers only transform and write what the core
 * has made. Lengths in SVG are real millimetres. Imports everything but {@code store}, {@code cli} and the window, and the
 * libraries that write the files.
 */
package org.capwright.export;
