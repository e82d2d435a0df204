package org.capwright.export.figure;

import java.util.List;
import org.capwright.fitup.Advice;
import org.capwright.fitup.FitUp;
import org.capwright.fitup.tolerance.MarginSpread;
import org.capwright.fitup.tolerance.ToleranceRun;
import org.capwright.geom.Oval;
import org.capwright.part.Leaf;
import org.capwright.swing.Clearance;
import org.capwright.swing.Pair;

/** The figures of a fit-up and of a tolerance run. */
public final class FitFigures {
    private FitFigures() {
    }

    /**
     * The figures of a fit-up.
     *
     * @param fitUp the fit-up
     * @param advice its advice
     * @return figures named {@code fit.*}
     */
    public static List<Figure> of(FitUp fitUp, Advice advice) {
        FigureList list = new FigureList();
        Oval hood = fitUp.work().hood();
        list.mm("fit.hood.radius", hood.radiusMm()).mm("fit.hood.ovality", hood.ovalityMm())
                .degrees("fit.hood.ovality.azimuth", hood.ovalityRad()).mm("fit.hood.shift.x", hood.centre().x())
                .mm("fit.hood.shift.y", hood.centre().y()).mm("fit.hood.scatter", fitUp.hood().scatterMm())
                .number("fit.hood.suspects", fitUp.hood().suspects().size()).mm("fit.sleeve.radius",
                fitUp.work().sleeve().radiusMm())
                .mm("fit.sleeve.ovality", fitUp.work().sleeve().ovalityMm());
        fitUp.made().leaves().forEach(leaf -> leaf(list, fitUp, leaf));
        return list.mm("fit.shift.best.x", advice.bestShift().x()).mm("fit.shift.best.y", advice.bestShift().y())
                .mm("fit.shift.best.least", advice.bestLeastMm()).mm("fit.shift.best.gain", advice.gainMm()).figures();
    }

    private static void leaf(FigureList list, FitUp fitUp, Leaf leaf) {
        Clearance plus = fitUp.swing().least(Pair.LEAF_HOOD, leaf.number(), 1);
        Clearance minus = fitUp.swing().least(Pair.LEAF_HOOD, leaf.number(), -1);
        Clearance least = plus.leastMm() <= minus.leastMm() ? plus : minus;
        String at = "fit.leaf." + leaf.number();
        list.mm(at + ".least", least.leastMm()).degrees(at + ".opening", least.openRad()).mm(at + ".x", least.where().x())
                .mm(at + ".y", least.where().y()).mm(at + ".z", least.where().z()).mm(at + ".plus.least", plus.leastMm())
                .mm(at + ".minus.least", minus.leastMm());
    }

    /**
     * The figures of a tolerance run.
     *
     * @param run the run
     * @return figures named {@code tolerance.*}
     */
    public static List<Figure> of(ToleranceRun run) {
        FigureList list = new FigureList();
        list.number("tolerance.builds", run.builds()).number("tolerance.share", run.share()).number("tolerance.share.error",
                run.shareError());
        spread(list, "tolerance.margin", run.least());
        run.margins().forEach(margin -> spread(list, "tolerance.margin." + margin.id(), margin));
        run.annulus().ifPresent(mm -> list.mm("tolerance.annulus", mm));
        list.mm("tolerance.annulus.hood", run.hoodAnnulusMm());
        return list.figures();
    }

    private static void spread(FigureList list, String at, MarginSpread margin) {
        list.mm(at + ".p01", margin.p01().mm()).mm(at + ".p01.error", margin.p01().errorMm()).mm(at + ".p05", margin.p05().mm())
                .mm(at + ".p05.error", margin.p05().errorMm()).mm(at + ".p50", margin.p50().mm())
                .mm(at + ".p50.error", margin.p50().errorMm()).number(at + ".share", margin.share());
        margin.shares().forEach(one -> list.number(at + ".variance." + one.source().input().name(), one.share()));
    }
}
