package org.capwright.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.blank.Grain;
import org.capwright.check.Check;
import org.capwright.check.Limit;
import org.capwright.check.Quantity;
import org.capwright.job.CapJob;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.JobReader;
import org.capwright.job.SleeveInputs;
import org.capwright.part.Cap;
import org.capwright.part.Sheet;
import org.capwright.stock.nest.Nester;
import org.capwright.stock.nest.Piece;
import org.capwright.stock.nest.SheetSize;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Whether every blank fits on some sheet; cylinders that don't are made in more pieces. */
public final class StockFit {
    /** What to do about a blank that fits on no sheet; its check says how large a sheet must be. */
    public static final String REMEDY = "put a sheet that is large enough into the stock file";

    private static final String OWN_ID = "stock\\..*\\.(length|width)";
    private static final int MOST_PIECES = 6;
    private static final int FRACTION = 16;
    private static final SortedMap<String, Input<Integer>> CYLINDERS = new TreeMap<>(Map.of("sleeve", SleeveInputs.PIECES,
            "hood", HoodInputs.PIECES));

    private StockFit() {
    }

    /**
     * The cap with its cylinders in as many pieces as the stock asks for. Only numbers of pieces that were left to auto change.
     *
     * @param job the job
     * @param stock the stock
     * @return the cap; what still does not fit shows in {@link #misfits}
     */
    public static Cap split(CapJob job, ShopStock stock) {
        Cap cap = Cap.solve(job);
        for (String part : CYLINDERS.keySet()) {
            cap = job.find(CYLINDERS.get(part)).isEmpty() ? split(cap, part, stock) : cap;
        }
        return cap;
    }

    /** In the fewest pieces that fit; as it was where no number of pieces helps. */
    private static Cap split(Cap cap, String part, ShopStock stock) {
        for (int pieces = pieces(cap, part); pieces <= MOST_PIECES; pieces++) {
            Cap tried = pieces == pieces(cap, part) ? cap
                    : Cap.solve(JobReader.read(cap.job().text().with(CYLINDERS.get(part).path(), Integer.toString(pieces)))
                            .orThrow());
            if (misfits(Blanks.of(tried), stock).stream().noneMatch(misfit -> misfit.anyStock() && misfit.blank().id()
                    .startsWith(part))) {
                return tried;
            }
        }
        return cap;
    }

    private static int pieces(Cap cap, String part) {
        return part.equals("sleeve") ? cap.sleeve().flat().pieces() : cap.hood().flat().pieces();
    }

    /**
     * Blanks that fit on no sheet of their metal and thickness.
     *
     * @param blanks the blanks
     * @param stock the stock
     * @return each with the size that it needs
     */
    public static List<Misfit> misfits(List<Blank> blanks, ShopStock stock) {
        List<Misfit> misfits = new ArrayList<>();
        for (Blank blank : blanks) {
            List<StockSheet> sheets = stock.sheetsFor(blank.sheet());
            if (sheets.stream().noneMatch(sheet -> fits(blank, sheet, stock))) {
                misfits.add(misfit(blank, stock, !sheets.isEmpty()));
            }
        }
        return misfits;
    }

    private static boolean fits(Blank blank, StockSheet sheet, ShopStock stock) {
        return Nester.fits(Piece.of("", blank, stock.keepGrain()), new SheetSize("", sheet.lengthMm(), sheet.widthMm(), 1, 1,
                false), stock.rules());
    }

    /** The grain runs along a sheet's length; a blank that may lie either way lies along it. */
    private static Misfit misfit(Blank blank, ShopStock stock, boolean anyStock) {
        boolean bound = stock.keepGrain() && blank.grain() != Grain.FREE;
        boolean across = bound ? blank.grain() == Grain.ALONG_Y : blank.widthMm() > blank.lengthMm();
        double margins = 2 * stock.rules().marginMm();
        return across ? new Misfit(blank, blank.widthMm() + margins, blank.lengthMm() + margins, anyStock)
                : new Misfit(blank, blank.lengthMm() + margins, blank.widthMm() + margins, anyStock);
    }

    /**
     * The checks of a cap against a stock, to be appended to its other checks: every blank must fit on a sheet, cylinders in as
     * many pieces as the stock asks for.
     *
     * @param cap the cap
     * @param stock the stock
     * @return a foul for each blank that does not fit; empty where everything fits
     */
    public static List<Check> checks(Cap cap, ShopStock stock) {
        return checks(Blanks.of(split(cap.job(), stock)), stock);
    }

    /**
     * Whether a check is one of those against a stock.
     *
     * @param check any check
     * @return true if so; then {@link #REMEDY} is what to do
     */
    public static boolean made(Check check) {
        return check.id().matches(OWN_ID);
    }

    /**
     * A foul check for each side of a blank that no sheet has, with the sheet that would do.
     *
     * @param blanks the blanks
     * @param stock the stock
     * @return the checks; empty where everything fits
     */
    public static List<Check> checks(List<Blank> blanks, ShopStock stock) {
        return misfits(blanks, stock).stream().flatMap(misfit -> checks(misfit, stock).stream()).toList();
    }

    private static List<Check> checks(Misfit misfit, ShopStock stock) {
        return stock.sheetsFor(misfit.blank().sheet()).stream().min(Comparator.comparingDouble(sheet -> lack(misfit, sheet)))
                .map(sheet -> shortSides(misfit, sheet, stock)).orElseGet(() -> List.of(check(misfit, "length",
                        misfit.needLengthMm(), 0, source(misfit, stock))));
    }

    /** How much the sides of a sheet lack, together. */
    private static double lack(Misfit misfit, StockSheet sheet) {
        return Math.max(0, misfit.needLengthMm() - sheet.lengthMm()) + Math.max(0, misfit.needWidthMm() - sheet.widthMm());
    }

    private static List<Check> shortSides(Misfit misfit, StockSheet sheet, ShopStock stock) {
        List<Check> checks = new ArrayList<>(List.of(
                check(misfit, "length", misfit.needLengthMm(), sheet.lengthMm(), source(misfit, stock)),
                check(misfit, "width", misfit.needWidthMm(), sheet.widthMm(), source(misfit, stock))));
        checks.removeIf(check -> check.margin() >= 0);
        return checks;
    }

    private static Check check(Misfit misfit, String side, double needMm, double haveMm, String source) {
        return new Check("stock." + misfit.blank().id() + "." + side, "sheet " + side + " for " + misfit.blank().name(),
                Quantity.LENGTH,
                needMm, new Limit(haveMm, false, 0, source), Optional.empty(), false);
    }

    private static String source(Misfit misfit, ShopStock stock) {
        ShopFormat format = new ShopFormat(stock.units(), FRACTION);
        Sheet sheet = misfit.blank().sheet();
        String would = TapeSize.up(misfit.needLengthMm(), format) + " x " + TapeSize.up(misfit.needWidthMm(), format);
        String metal = sheet.metal().word() + " " + format.thickness(Length.ofMm(sheet.thicknessMm()));
        return misfit.anyStock() ? "stock file; the nearest sheet of " + metal + ". One of " + would + " or larger would do"
                : "stock file; it has no " + metal + ". A sheet of " + would + " or larger would do";
    }
}
