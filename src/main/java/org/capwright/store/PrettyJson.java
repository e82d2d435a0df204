package org.capwright.store;

import java.io.StringWriter;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.json.JsonMapper;

/** JSON as this program prints it: two blanks a level, one field a line, the same line ends on every system. */
final class PrettyJson {
    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
    private static final DefaultPrettyPrinter STYLE = new DefaultPrettyPrinter(Separators.createDefaultInstance()
            .withObjectNameValueSpacing(Separators.Spacing.AFTER).withArrayEmptySeparator("").withObjectEmptySeparator(""))
            .withObjectIndenter(INDENT).withArrayIndenter(INDENT);
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private PrettyJson() {
    }

    /** What is written to a generator, as a text with a line end after its last line. */
    static String print(Consumer<JsonGenerator> writing) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = MAPPER.writer().with(STYLE).createGenerator(text)) {
            writing.accept(json);
        }
        return text + "\n";
    }

    /** A tree of maps, lists, texts and numbers, printed in the order in which the maps hold it. */
    static String print(Object tree) {
        return MAPPER.writer().with(STYLE).writeValueAsString(tree) + "\n";
    }
}
