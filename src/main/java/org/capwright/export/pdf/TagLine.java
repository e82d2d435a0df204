package org.capwright.export.pdf;

import java.util.List;
import org.capwright.export.JobTag;

/**
 * The line of a page's head that says which job the page is from: what is foul, name, revision, stamp. What is too long for the
 * line is shortened, the name first; the stamp never.
 *
 * @param typeface the typeface
 * @param capitalsMm height of its capitals
 * @param widthMm width of the line
 */
record TagLine(Typeface typeface, double capitalsMm, double widthMm) {
    /** The most that a revision takes of the line. */
    private static final double REVISION_SHARE = 0.25;
    /** The most that a name takes of a line that also says what is foul. */
    private static final double NAME_BESIDE_FOULS_SHARE = 0.3;

    /** The line. */
    String of(JobTag tag) {
        String revision = shortened(tag.revision(), widthMm * REVISION_SHARE);
        double room = widthMm - width(new JobTag("", revision, tag.stamp(), List.of()).line());
        double most = tag.fouls().isEmpty() ? room : Math.min(room, widthMm * NAME_BESIDE_FOULS_SHARE);
        String line = new JobTag(shortened(tag.name(), most), revision, tag.stamp(), List.of()).line();
        return tag.fouls().isEmpty() ? line : fouls(tag.fouls(), widthMm - width(line)) + line;
    }

    /** As many fouls as fit, the rest counted. */
    private String fouls(List<String> fouls, double roomMm) {
        for (int listed = fouls.size(); listed > 0; listed--) {
            String text = fouls(String.join("; ", fouls.subList(0, listed)), fouls.size() - listed);
            if (width(text) <= roomMm) {
                return text;
            }
        }
        double rest = width(fouls("", fouls.size() - 1));
        return fouls(shortened(fouls.get(0), roomMm - rest), fouls.size() - 1);
    }

    private static String fouls(String listed, int more) {
        return "FOUL: " + listed + (more > 0 ? "; and " + more + " more" : "") + ". ";
    }

    private double width(String text) {
        return typeface.widthMm(capitalsMm, text);
    }

    private String shortened(String text, double roomMm) {
        return typeface.shortened(capitalsMm, text, roomMm);
    }
}
