package bitterend.exchange;

import bitterend.buying.KnotValue;
import bitterend.catalogue.Rope;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reads and writes {@code values.json}: value curves that the shop typed, each marked so, and those that the program
 * learned from the past and wrote once.
 */
public final class ValuesJson {
    public static final String NAME = "values.json";
    /** The file as it was before the last writing. */
    public static final String OLD_NAME = "values.old.json";

    private static final String FORMAT = "bitterend/values/1";

    private ValuesJson() {}

    /** The curves by rope id; curves of ropes that are not in the catalogue are not wanted. */
    static ShopValues read(InputFile file, Ropes ropes, Findings findings) {
        Map<String, KnotValue> typed = new TreeMap<>();
        Map<String, KnotValue> learned = new TreeMap<>();
        JsonDocument.read(file, FORMAT, findings, document -> {
            for (JsonObject entry : document.objects("values")) {
                boolean own = entry.fields().optional("typed", Readings::yesOrNo, false);
                String rope = curve(entry, ropes, own ? typed : learned);
                if (!own && learned.containsKey(rope)) {
                    tellOfLearned(entry, rope);
                }
            }
            return document;
        });
        return new ShopValues(typed, learned);
    }

    /** A curve that the past taught knows nothing of the coils of today. */
    private static void tellOfLearned(JsonObject entry, String rope) {
        entry.fields()
                .warning(
                        "typed",
                        "\"yes\" on a curve of the shop's own; without it this curve of " + rope
                                + " counts as learned from the past once: it is stale and not used, and value --write takes"
                                + " it out");
    }

    /**
     * Replaces the file by typed curves, whole; the file that was there stays beside it under {@link #OLD_NAME}, or where an
     * older one is kept under the next number.
     *
     * @return the name under which it stays
     */
    public static String write(Path folder, Map<String, KnotValue> typed) {
        Path file = folder.resolve(NAME);
        try {
            String old = OLD_NAME;
            for (int number = 2; Files.exists(folder.resolve(old)); number++) {
                old = "values.old-" + number + ".json";
            }
            if (Files.exists(file)) {
                Files.copy(file, folder.resolve(old));
            }
            WholeFile.write(file, text(typed));
            return old;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The text of the file with these typed curves. */
    public static String text(Map<String, KnotValue> values) {
        List<JsonTree> list = new ArrayList<>();
        new TreeMap<>(values)
                .forEach((rope, value) -> list.add(new JsonTree()
                        .with("rope", rope)
                        .with("typed", "yes")
                        .with(
                                "knots",
                                value.knots().stream()
                                        .map(knot -> Members.tree(ValueForm::knot, knot))
                                        .toList())));
        return new JsonTree().with("format", FORMAT).with("values", list).text();
    }

    private static String curve(JsonObject entry, Ropes ropes, Map<String, KnotValue> values) {
        String id = RopeColumn.read(entry.fields(), ropes);
        List<KnotValue.Knot> knots = new ArrayList<>();
        boolean sound = true;
        for (JsonObject each : entry.objects("knots")) {
            KnotValue.Knot knot = Members.read(ValueForm::knot, each);
            if (each.fields().sound() && !knots.isEmpty()) {
                KnotValue.Knot before = knots.get(knots.size() - 1);
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
            values.put(id, new KnotValue(rope.get().price(), knots));
        }
        return id;
    }

    static Parsed<Ratio> share(String text) {
        return RatioText.parse(text)
                .then(share -> share.isNegative() || share.compareTo(Ratio.ONE) > 0
                        ? Parsed.refused("a share from 0 to 1")
                        : Parsed.of(share));
    }
}
