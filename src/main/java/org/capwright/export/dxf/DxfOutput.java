package org.capwright.export.dxf;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import org.capwright.geom.Vec2;

/** Writes the pairs of group code and value that a DXF file is made of. */
final class DxfOutput {
    private static final int COMMENT = 999;
    private static final int LAST_ASCII = 0x7E;

    private final Writer out;
    private final DxfUnit unit;

    DxfOutput(Writer out, DxfUnit unit) {
        this.out = out;
        this.unit = unit;
    }

    void pair(int code, String value) throws IOException {
        out.write(String.format(Locale.ROOT, "%3d\n%s\n", code, ascii(value)));
    }

    void pair(int code, int value) throws IOException {
        out.write(String.format(Locale.ROOT, "%3d\n%6d\n", code, value));
    }

    void comment(String text) throws IOException {
        pair(COMMENT, text);
    }

    /** A length, to a billionth of the unit. */
    void length(int code, double mm) throws IOException {
        number(code, unit.of(mm));
    }

    /** An angle in degrees, from 0 up to 360. */
    void angle(int code, double rad) throws IOException {
        double degrees = Math.toDegrees(rad) % 360;
        number(code, degrees < 0 ? degrees + 360 : degrees);
    }

    void number(int code, double value) throws IOException {
        out.write(String.format(Locale.ROOT, "%3d\n%.9f\n", code, value == 0 ? 0.0 : value));
    }

    /** A point; codes of its coordinates are ten apart. */
    void point(int code, Vec2 p) throws IOException {
        length(code, p.x());
        length(code + 10, p.y());
        number(code + 20, 0);
    }

    /** Letters beyond ASCII as the codes that readers turn back, control characters as blanks. */
    private static String ascii(String text) {
        StringBuilder ascii = new StringBuilder();
        for (char letter : text.toCharArray()) {
            if (letter > LAST_ASCII) {
                ascii.append(String.format(Locale.ROOT, "\\U+%04X", (int) letter));
            } else {
                ascii.append(letter < ' ' ? ' ' : letter);
            }
        }
        return ascii.toString();
    }
}
