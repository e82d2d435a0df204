package org.capwright.store;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.capwright.job.Input;
import org.capwright.job.Inputs;
import org.capwright.job.JobText;
import org.capwright.job.Kind;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.io.ContentReference;
import tools.jackson.core.json.JsonFactory;

/** Flattens JSON to texts by path. Numbers keep the digits they are written with. */
final class JobParser {
    /** The text that stands for an object without fields where no group of inputs is known. */
    static final String EMPTY_OBJECT = "{}";

    private final Path file;
    private final JsonParser parser;
    private final Map<String, String> texts = new LinkedHashMap<>();

    private JobParser(Path file, JsonParser parser) {
        this.file = file;
        this.parser = parser;
    }

    /** Reads the bytes of a file; the path is for messages only. */
    static JobText parse(Path file, byte[] bytes) {
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), bytes)) {
            return new JobParser(file, parser).job();
        } catch (JacksonException e) { // before the first token: the bytes are in no encoding that JSON has
            throw malformed(file, new TokenStreamLocation(ContentReference.unknown(), 0, 1, 1), e);
        }
    }

    private JobText job() {
        try {
            return root();
        } catch (JacksonException e) {
            TokenStreamLocation place = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
            throw malformed(file, place, e);
        }
    }

    private static UnreadableJobException malformed(Path file, TokenStreamLocation place, JacksonException e) {
        return new UnreadableJobException(file, place, "this is not well-formed JSON ("
                + e.getOriginalMessage().lines().findFirst().orElse("") + ")");
    }

    private JobText root() {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            throw refused("a job file is one JSON object, starting with {");
        }
        object("");
        if (parser.nextToken() != null) {
            throw refused("there is something after the end of the job");
        }
        return JobText.of(texts);
    }

    private void object(String path) {
        Set<String> names = new HashSet<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            if (name.isEmpty() || name.matches(".*[.\\[\\]].*")) {
                throw refused("\"" + name + "\" can't be a field's name: it is empty or holds a point or a bracket");
            }
            String inner = path.isEmpty() ? name : path + "." + name;
            if (!names.add(name)) {
                throw refused("the field " + inner + " stands here a second time");
            }
            parser.nextToken();
            value(inner);
        }
        if (names.isEmpty() && !group(path)) {
            texts.put(path, EMPTY_OBJECT);
        }
    }

    private void array(String path) {
        int size = 0;
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            value(path + "[" + size + "]");
            size++;
        }
        if (size == 0) {
            refuseForText(path, "an empty list");
            texts.put(path, JobText.EMPTY_LIST);
        }
    }

    private void value(String path) {
        switch (parser.currentToken()) {
            case START_OBJECT -> object(path);
            case START_ARRAY -> array(path);
            case VALUE_NULL -> {
                refuseForText(path, "null");
                texts.put(path, "null");
            }
            default -> texts.put(path, parser.getString());
        }
    }

    /** Any word is a good free text, so these can't be left for the reader of jobs to refuse. */
    private void refuseForText(String path, String what) {
        Optional<Input<?>> input = Inputs.at(path);
        if (input.isPresent() && input.get().kind() == Kind.TEXT) {
            throw refused(path + " must be a text, not " + what);
        }
    }

    private static boolean group(String path) {
        return path.isEmpty() || Inputs.all().stream().anyMatch(input -> input.path().startsWith(path + "."));
    }

    private UnreadableJobException refused(String reason) {
        return new UnreadableJobException(file, parser.currentTokenLocation(), reason);
    }
}
