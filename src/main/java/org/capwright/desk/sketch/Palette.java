package org.capwright.desk.sketch;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import javafx.scene.paint.Color;

/**
 * Colours by role: ink on paper, or chalk on slate. One accent for what is chosen, one for trouble; neither is ever the only
 * sign of anything.
 *
 * @param paper ground of drawings and lists
 * @param desk ground round them
 * @param ink lines and text
 * @param quiet secondary text, thin lines
 * @param line borders
 * @param fill quiet fill of fixed parts
 * @param leaf fill of the leaves
 * @param accent what is chosen
 * @param trouble what is foul
 * @param care what is tight
 */
public record Palette(Color paper, Color desk, Color ink, Color quiet, Color line, Color fill, Color leaf, Color accent,
                      Color trouble, Color care) {
    /** Ink on paper. */
    public static final Palette LIGHT = new Palette(Color.web("#fbfaf6"), Color.web("#ecebe5"), Color.web("#22262b"),
            Color.web("#6b7178"), Color.web("#c9c7be"), Color.web("#e4e2d9"), Color.web("#b9c4cf"), Color.web("#1f6f8b"),
            Color.web("#b3261e"), Color.web("#8a5a00"));
    /** Chalk on slate. */
    public static final Palette DARK = new Palette(Color.web("#1e2429"), Color.web("#161b1f"), Color.web("#e6e4dc"),
            Color.web("#9aa3ab"), Color.web("#3a434b"), Color.web("#2b343b"), Color.web("#5b7083"), Color.web("#6fc3df"),
            Color.web("#ff8a80"), Color.web("#e0b050"));

    /**
     * These colours as a style sheet's names, to be added before the sheet that uses them.
     *
     * @return address of the sheet
     */
    public String sheet() {
        String css = ".root { -cw-paper: " + web(paper) + "; -cw-desk: " + web(desk) + "; -cw-ink: " + web(ink) + "; -cw-quiet: "
                + web(quiet) + "; -cw-line: " + web(line) + "; -cw-fill: " + web(fill) + "; -cw-accent: " + web(accent)
                + "; -cw-trouble: " + web(trouble) + "; -cw-care: " + web(care) + "; }";
        return "data:text/css;base64," + Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
    }

    private static String web(Color color) {
        return String.format(Locale.ROOT, "#%02x%02x%02x", Math.round(color.getRed() * 255), Math.round(color.getGreen() * 255),
                Math.round(color.getBlue() * 255));
    }
}
