package org.capwright.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.capwright.job.JobText;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.units.Length;
import org.capwright.units.QuantityParser;
import org.capwright.units.UnitSystem;
import org.capwright.units.UnreadableQuantityException;

/** Reads the fields of a shop's own file (stock, rates) one by one and keeps every problem; a field that nobody asked for is one too. */
final class ShopText {
    private final JobText text;
    private final Set<String> asked = new HashSet<>();
    private final List<Problem> problems = new ArrayList<>();
    private UnitSystem bare = UnitSystem.INCH;

    ShopText(JobText text) {
        this.text = text;
    }

    /** The texts of a file that is made of this tree. */
    static JobText of(Map<String, Object> tree) {
        return JobParser.parse(Path.of("shop.json"), PrettyJson.print(tree).getBytes(StandardCharsets.UTF_8));
    }

    /** What a bare number of length is in. */
    void units(UnitSystem system) {
        bare = system;
    }

    int listSize(String path) {
        asked.add(path);
        return text.listSize(path);
    }

    boolean has(String path) {
        return text.at(path).isPresent();
    }

    Optional<String> find(String path) {
        asked.add(path);
        return text.at(path);
    }

    String text(String path) {
        return find(path).orElseGet(() -> {
            refuse(path, "", "it must be given", "Add it");
            return "";
        });
    }

    /** One of some words; the first stands in for one that is refused. */
    <T> T word(String path, List<T> values, Function<T, String> word) {
        String typed = text(path).strip();
        return values.stream().filter(value -> word.apply(value).equals(typed)).findFirst().orElseGet(() -> {
            if (!typed.isEmpty()) {
                refuse(path, typed, "it must be one of " + values.stream().map(word).collect(Collectors.joining(", ")),
                        "Choose one of them");
            }
            return values.get(0);
        });
    }

    /** A length over 0, or at least 0. */
    double lengthMm(String path, boolean mayBeZero) {
        String typed = text(path);
        if (typed.isEmpty()) {
            return 1;
        }
        try {
            Length length = QuantityParser.length(typed, bare);
            if (length.mm() > 0 || mayBeZero && length.mm() == 0) {
                return length.mm();
            }
            refuse(path, typed, "it must be " + (mayBeZero ? "at least 0" : "over 0"), "Type a larger length");
        } catch (UnreadableQuantityException e) {
            refuse(path, typed, e.getMessage(), "Type a length such as 48 in or 1250 mm");
        }
        return 1;
    }

    /** A number of at least 0; empty where it is not given. */
    OptionalDouble amount(String path) {
        Optional<String> typed = find(path);
        try {
            if (typed.isPresent() && QuantityParser.number(typed.get()) < 0) {
                refuse(path, typed.get(), "it must be at least 0", "Type a larger number, or leave it out where it is not known");
                return OptionalDouble.empty();
            }
            return typed.isPresent() ? OptionalDouble.of(QuantityParser.number(typed.get())) : OptionalDouble.empty();
        } catch (UnreadableQuantityException e) {
            refuse(path, typed.orElse(""), e.getMessage(), "Type a number such as 12.50, or leave it out where it is not known");
            return OptionalDouble.empty();
        }
    }

    /** A whole number of a range; empty where it is not given. */
    OptionalInt count(String path, int least, int most) {
        OptionalDouble number = amount(path);
        if (number.isPresent() && (number.getAsDouble() != Math.rint(number.getAsDouble()) || number.getAsDouble() < least
                || number.getAsDouble() > most)) {
            refuse(path, text.at(path).orElse(""), "it must be a whole number from " + least + " to " + most,
                    "Type such a number");
            return OptionalInt.empty();
        }
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }

    void refuse(String path, String typed, String reason, String remedy) {
        problems.add(new Problem(path, typed, reason, remedy));
    }

    /** Refuses the file if anything was wrong with it. */
    void done(String what) {
        for (String path : text.texts().keySet()) {
            if (!asked.contains(path)) {
                refuse(path, text.texts().get(path), "a " + what + " has no such field", "Take it out, or mend its name");
            }
        }
        if (!problems.isEmpty()) {
            throw new RefusedJobException(problems);
        }
    }
}
