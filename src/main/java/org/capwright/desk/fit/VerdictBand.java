package org.capwright.desk.fit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.desk.session.FitDesk;
import org.capwright.desk.session.FitDesk.Fitted;
import org.capwright.desk.session.Session;
import org.capwright.desk.sketch.Marks;
import org.capwright.fitup.Contradiction;
import org.capwright.fitup.FitVerdict;
import org.capwright.geom.Vec2;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

/** Clear, tight or foul in letters to be read from three steps away; where; and the first thing to do. */
final class VerdictBand extends VBox {
    private final Session session;
    private final FitDesk desk;
    private final Label verdict = new Label();
    private final Label why = new Label();
    private final Label advice = new Label();

    VerdictBand(Session session, FitDesk desk) {
        this.session = session;
        this.desk = desk;
        verdict.setId("fit-verdict");
        why.setId("fit-why");
        advice.setId("fit-advice");
        for (Label label : List.of(verdict, why, advice)) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        }
        advice.getStyleClass().add("advice");
        getStyleClass().add("verdict-band");
        getChildren().addAll(verdict, why, advice);
        desk.fittedProperty().addListener((o, was, is) -> show());
        desk.refusalProperty().addListener((o, was, is) -> show());
        desk.linesProperty().addListener((o, was, is) -> show());
        show();
    }

    private void show() {
        Fitted fitted = desk.fittedProperty().get();
        verdict.getStyleClass().setAll("label", "verdict-large");
        if (fitted != null) {
            made(fitted);
        } else if (!desk.refusalProperty().get().isEmpty()) {
            verdict.setText("These readings can't all be right");
            say(desk.refusalProperty().get(), "");
        } else {
            verdict.setText(desk.measured() ? "Fitting" : "Nothing measured yet");
            say(desk.measured() ? "" : "Type what you measure beside the drawing; Enter goes to the next reading. Leave out what you can't reach.", "");
        }
    }

    private void made(Fitted fitted) {
        ShopFormat format = session.solvedProperty().get().format();
        Verdict now = fitted.fitUp().verdict();
        FitVerdict deciding = fitted.fitUp().deciding();
        verdict.setText(Marks.sign(now) + " " + now.word().toUpperCase(Locale.ROOT)
                + (deciding.sure() ? "" : "   too close to call with these readings"));
        verdict.getStyleClass().add(Marks.style(now));
        Optional<Contradiction> against = fitted.fitUp().rederived().conflicts().stream().filter(one -> one.check().verdict() == Verdict.FOUL).findFirst();
        say(against.map(one -> "Cut parts don't go together: " + one.check().line(format) + ". "
                + one.remedy()).orElseGet(() -> deciding.line(format) + place(deciding, format)),
                doFirst(fitted, format));
    }

    /** A reading that disagrees is measured again before anything is bent. */
    private static String doFirst(Fitted fitted, ShopFormat format) {
        List<String> again = Stream.of(fitted.fitUp().stack(), fitted.fitUp().sleeve(),
                fitted.fitUp().hood()).flatMap(fit -> fit.suspects().stream())
                .map(one -> format.length(Length.ofMm(one.reading().valueMm())) + " at "
                + format.angle(Angle.ofRad(one.reading().azimuthRad()))).toList();
        if (!again.isEmpty()) {
            return "Measure again, it disagrees with the rest: " + String.join("; ", again);
        }
        return fitted.advice().suggestions().isEmpty() ? "" : "Do: "
                + AdvicePane.words(fitted.advice().suggestions().get(0), format);
    }

    private static String place(FitVerdict deciding, ShopFormat format) {
        return deciding.check().place().map(place -> "; at azimuth " + format.angle(Angle.ofRad(azimuth(place)))
                + ", leaf open " + format.angle(Angle.ofRad(place.openRad()))).orElse("");
    }

    private static double azimuth(Check.Place place) {
        double rad = new Vec2(place.at().x(), place.at().y()).direction();
        return rad < 0 ? rad + 2 * Math.PI : rad;
    }

    private void say(String reason, String first) {
        why.setText(reason);
        advice.setText(first);
        why.setManaged(!reason.isEmpty());
        advice.setManaged(!first.isEmpty());
    }
}
