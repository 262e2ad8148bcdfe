package bitterend.exchange;

import bitterend.buying.LearnedValue;
import bitterend.catalogue.Rope;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads and writes {@code values.json}: value curves learned from the past. */
public final class ValuesJson {
    public static final String NAME = "values.json";
    /** The file as it was before the last writing. */
    public static final String OLD_NAME = "values.old.json";

    private static final String FORMAT = "bitterend/values/1";

    private ValuesJson() {}

    /** The curves by rope id; curves of ropes that are not in the catalogue are not wanted. */
    static Map<String, LearnedValue> read(InputFile file, Ropes ropes, Findings findings) {
        Map<String, LearnedValue> values = new TreeMap<>();
        JsonDocument.open(file, FORMAT, findings).ifPresent(document -> {
            document.allowOnly("format", "values");
            document.objects("values").forEach(entry -> curve(entry, ropes, values));
        });
        return values;
    }

    /** Replaces the file, whole; the file that was there stays beside it under {@link #OLD_NAME}. */
    public static void write(Path folder, Map<String, LearnedValue> values) {
        Path file = folder.resolve(NAME);
        try {
            if (Files.exists(file)) {
                Files.copy(file, folder.resolve(OLD_NAME), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        WholeFile.write(file, text(values));
    }

    /** The text of the file. */
    public static String text(Map<String, LearnedValue> values) {
        List<JsonTree> list = new ArrayList<>();
        new TreeMap<>(values)
                .forEach((rope, value) -> list.add(new JsonTree()
                        .with("rope", rope)
                        .with(
                                "knots",
                                value.knots().stream().map(ValuesJson::knot).toList())));
        return new JsonTree().with("format", FORMAT).with("values", list).text();
    }

    private static JsonTree knot(LearnedValue.Knot knot) {
        return new JsonTree()
                .with("length", LengthText.exact(knot.length()))
                .with("share", RatioText.exact(knot.share()));
    }

    private static void curve(JsonObject entry, Ropes ropes, Map<String, LearnedValue> values) {
        entry.allowOnly("rope", "knots");
        String id = RopeColumn.read(entry.fields(), ropes);
        List<LearnedValue.Knot> knots = new ArrayList<>();
        boolean sound = true;
        for (JsonObject each : entry.objects("knots")) {
            each.allowOnly("length", "share");
            LearnedValue.Knot knot = new LearnedValue.Knot(
                    each.fields().require("length", Readings::presentLength, new Length(1)),
                    each.fields().require("share", ValuesJson::share, Ratio.ZERO));
            if (each.fields().sound() && !knots.isEmpty()) {
                LearnedValue.Knot before = knots.get(knots.size() - 1);
                if (!knot.length().isLongerThan(before.length()) || knot.share().compareTo(before.share()) < 0) {
                    each.fields().error("share", "knots of rising length whose shares never fall");
                }
            }
            sound &= each.fields().sound();
            knots.add(knot);
        }
        if (knots.isEmpty()) {
            entry.fields().error("knots", "a list of at least one knot");
        }
        Optional<Rope> rope = ropes.find(id);
        if (sound && entry.fields().sound() && rope.isPresent()) {
            values.put(id, new LearnedValue(rope.get().price(), knots));
        }
    }

    static Parsed<Ratio> share(String text) {
        return RatioText.parse(text)
                .then(share -> share.isNegative() || share.compareTo(Ratio.ONE) > 0
                        ? Parsed.refused("a share from 0 to 1")
                        : Parsed.of(share));
    }
}
