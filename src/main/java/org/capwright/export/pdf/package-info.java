/**
 * PDF pages: true-size patterns in tiles, dimensioned pages, the cut list. Everything here is in millimetres on paper,
 * origin in the page's lower left corner, y up; {@link org.capwright.export.pdf.Canvas} alone knows PDF's own unit of
 * 1/72 in (ISO 32000-1). Fonts are embedded.
 */
package org.capwright.export.pdf;
