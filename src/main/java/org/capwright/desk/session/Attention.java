package org.capwright.desk.session;

import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.capwright.check.Check;

/** What the person is looking at, shared by all parts of the window. */
public final class Attention {
    private final DoubleProperty openRad = new SimpleDoubleProperty(0);
    private final StringProperty inputPath = new SimpleStringProperty("");
    private final ObjectProperty<Check> check = new SimpleObjectProperty<>();

    /**
     * Opening of the leaves on screen, radians.
     *
     * @return the property
     */
    public DoubleProperty openRadProperty() {
        return openRad;
    }

    /**
     * Path of the input that has the focus; empty where none has.
     *
     * @return the property
     */
    public StringProperty inputPathProperty() {
        return inputPath;
    }

    /**
     * The check that is chosen; null where none is.
     *
     * @return the property
     */
    public ObjectProperty<Check> checkProperty() {
        return check;
    }

    /**
     * Chooses a check, and opens the leaves to where it happens.
     *
     * @param chosen the check
     */
    public void choose(Check chosen) {
        check.set(chosen);
        chosen.place().ifPresent(place -> openRad.set(place.openRad()));
    }
}
