package org.capwright.desk.view;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.capwright.air.LeafAir;
import org.capwright.check.Quantity;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.Solved;
import org.capwright.units.Length;

/** The cap in one line: size, mass, what it opens at, where it floats. */
final class FootBar extends HBox {
    private final Label line = new Label();

    FootBar(Session session) {
        getStyleClass().add("foot");
        getChildren().add(line);
        line.setId("foot");
        session.solvedProperty().addListener((o, was, is) -> show(is));
        show(session.solvedProperty().get());
    }

    private void show(Solved solved) {
        if (solved == null) {
            line.setText("No cap yet: type what is missing.");
            return;
        }
        LeafAir leaf = solved.air().leaves().get(0);
        line.setText(String.format(Locale.ROOT, "%s wide, %s high    %s    opens at %s    floats %.0f to %.0f deg at the design flow (estimates)",
                solved.format().length(Length.ofMm(solved.cap().widthMm())),
                solved.format().length(Length.ofMm(solved.cap().heightMm())),
                solved.format().mass(solved.cap().massKg()), Quantity.PRESSURE.words(leaf.liftPressurePa(), solved.format()),
                Math.toDegrees(leaf.band().drag().openRad()), Math.toDegrees(leaf.band().jet().openRad())));
    }
}
