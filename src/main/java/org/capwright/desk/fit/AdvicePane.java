package org.capwright.desk.fit;

import java.util.List;
import javafx.scene.layout.BorderPane;
import org.capwright.check.Verdict;
import org.capwright.desk.session.FitDesk;
import org.capwright.desk.session.FitDesk.Fitted;
import org.capwright.desk.session.Session;
import org.capwright.desk.sketch.Marks;
import org.capwright.desk.widget.WordColumn;
import org.capwright.fitup.BlankChange;
import org.capwright.fitup.Contradiction;
import org.capwright.fitup.FitVerdict;
import org.capwright.fitup.Suggestion;
import org.capwright.geom.Oval;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Everything that can be done, what the readings tell, every clearance, and which blanks change. */
final class AdvicePane extends BorderPane {
    private final Session session;
    private final FitDesk desk;
    private final WordColumn column = new WordColumn(3);

    AdvicePane(Session session, FitDesk desk) {
        this.session = session;
        this.desk = desk;
        column.setId("advice");
        setCenter(column);
        desk.fittedProperty().addListener((o, was, is) -> show());
        show();
    }

    /** A suggestion in one line. */
    static String words(Suggestion one, ShopFormat format) {
        return one.words() + ": " + format.length(Length.ofMm(one.after())) + ", " + one.verdict().word()
                + (one.spoilsNothing() ? "" : "; something else becomes worse");
    }

    private void show() {
        column.clear();
        Fitted fitted = desk.fittedProperty().get();
        if (fitted == null) {
            return;
        }
        ShopFormat format = session.solvedProperty().get().format();
        column.title("WHAT TO DO");
        List<Suggestion> suggestions = fitted.advice().suggestions();
        if (suggestions.isEmpty()) {
            column.line("Nothing: every clearance keeps its limit.");
        }
        suggestions.forEach(one -> column.line(words(one, format)));
        column.line("Best place of the hood: shift " + shift(fitted, format) + "; leaf to hood "
                + format.length(Length.ofMm(fitted.advice().leastNowMm()))
                + " now, " + format.length(Length.ofMm(fitted.advice().bestLeastMm())) + " then.");
        notes(fitted, format);
        changes(fitted.fitUp().rederived().changes(fitted.fitUp().drawn()), format);
        column.title("EVERY CLEARANCE");
        fitted.fitUp().verdicts().stream().sorted((a, b) -> Double.compare(a.check().margin(), b.check().margin()))
                .forEach(one -> clearance(one, format));
    }

    private static String shift(Fitted fitted, ShopFormat format) {
        double mm = fitted.advice().bestShift().norm();
        double towards = fitted.advice().bestShift().direction();
        return mm < 0.05 ? "none" : format.length(Length.ofMm(mm)) + " towards "
                + format.angle(Angle.ofRad(towards < 0 ? towards + 2 * Math.PI : towards));
    }

    private void notes(Fitted fitted, ShopFormat format) {
        column.title("WHAT THE READINGS TELL");
        Oval hood = fitted.fitUp().work().hood();
        if (fitted.fitUp().hood().terms().radius()) {
            column.line("Hood: mean inside radius " + length(hood.radiusMm(), format) + ", out of round by "
                    + length(hood.ovalityMm(), format) + " either way, longest at "
                    + format.angle(Angle.ofRad(hood.ovalityRad())) + ", centre off by " + length(hood.centre().norm(), format)
                    + ".");
        }
        fitted.fitUp().notes().forEach(column::line);
        fitted.fitUp().withoutSuspects().ifPresent(without -> column.line("Without the readings that disagree: "
                + without.verdict().word() + ", "
                + without.deciding().line(format) + "."));
        fitted.fitUp().rederived().conflicts().stream().filter(one -> one.check().verdict() != Verdict.CLEAR).forEach(one -> conflict(one, format));
    }

    private void conflict(Contradiction one, ShopFormat format) {
        column.line(Marks.sign(one.check().verdict()) + " " + one.check().line(format) + ": " + one.check().limit().source() + ". "
                + one.remedy())
                .getStyleClass().add(Marks.style(one.check().verdict()));
    }

    private void changes(List<BlankChange> changes, ShopFormat format) {
        if (changes.isEmpty()) {
            return;
        }
        column.title("BLANKS THAT CHANGE, since cut parts are held at their sizes");
        changes.forEach(change -> column.line(change.name() + ": " + length(change.oldLengthMm(), format) + " x "
                + length(change.oldWidthMm(), format) + " becomes "
                + length(change.newLengthMm(), format) + " x " + length(change.newWidthMm(), format)));
    }

    private void clearance(FitVerdict one, ShopFormat format) {
        column.line(Marks.sign(one.verdict()) + " " + one.line(format)).getStyleClass().add(Marks.style(one.verdict()));
    }

    private static String length(double mm, ShopFormat format) {
        return format.length(Length.ofMm(mm));
    }
}
