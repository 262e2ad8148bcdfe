package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Opens JSON files: strict, no member twice, nothing behind the end, numbers kept as written. */
public final class JsonDocument {
    private static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(FileLimits.DEEPEST)
                            .maxNumberLength(FileLimits.MOST_DIGITS)
                            .maxStringLength(FileLimits.LONGEST_TEXT)
                            .maxTokenCount(FileLimits.MOST_PARTS)
                            .build())
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.USE_BIG_INTEGER_FOR_INTS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private JsonDocument() {}

    /**
     * Reads a whole file of the given format, such as {@code bitterend/ropes/1}, or of an older one; whatever the reader did
     * not ask for is told.
     */
    public static <T> Optional<T> read(
            InputFile file, String format, Findings findings, Function<JsonObject, T> reader, String... older) {
        AskedMembers asked = new AskedMembers();
        Optional<T> read = open(file, format, findings, asked, older).map(reader);
        asked.tellOthers(file.name(), findings);
        return read;
    }

    /** Reads a part of a file; what else is in it is nobody's concern. */
    public static <T> Optional<T> readPart(
            InputFile file, String format, Findings findings, Function<JsonObject, T> reader) {
        return open(file, format, findings, new AskedMembers()).map(reader);
    }

    private static Optional<JsonObject> open(
            InputFile file, String format, Findings findings, AskedMembers asked, String... older) {
        JsonNode root;
        try {
            root = JSON.readTree(file.text());
        } catch (JsonProcessingException malformed) {
            findings.add(JsonMistake.of(file, malformed));
            return Optional.empty();
        }
        if (root == null || !root.isObject()) {
            findings.add(Finding.error(file.name(), "", "", "", "one JSON object, in { and }"));
            return Optional.empty();
        }
        JsonObject object = new JsonObject(file.name(), "", root, findings, asked);
        String found = object.fields().text("format").orElse("");
        if (!found.equals(format) && !List.of(older).contains(found)) {
            object.fields().error("format", '"' + format + '"');
            object.leave();
            return Optional.empty();
        }
        return Optional.of(object);
    }
}
