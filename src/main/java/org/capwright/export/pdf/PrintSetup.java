package org.capwright.export.pdf;

/**
 * What to print on.
 *
 * @param paper the paper
 * @param scale what the printer gets wrong on it
 */
public record PrintSetup(Paper paper, PrinterScale scale) {
    /**
     * Paper in a printer that nobody has measured.
     *
     * @param paper the paper
     * @return the setup, nothing put right
     */
    public static PrintSetup of(Paper paper) {
        return new PrintSetup(paper, PrinterScale.NONE);
    }
}
