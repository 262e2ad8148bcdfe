package bitterend.exchange;

import bitterend.buying.steady.Lived;
import bitterend.buying.steady.SteadyScenario;
import bitterend.buying.steady.WayNote;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.measure.Parsed;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Writes and reads shares of a buying study, and puts them together. Costs stand in 1/1000 of a minor unit. */
public final class StudyJson {
    private static final String FORMAT = "bitterend/study/2";
    private static final Pattern LONG = Pattern.compile("-?[0-9]{1,17}");

    private static final Codec<Cost> MILLIS = new Codec<>(Cost::millis, StudyJson::millis, Cost.ZERO);
    private static final Codec<Integer> COUNT = Codec.whole(0, 999_999_999);

    private StudyJson() {}

    /** Writes a share, whole or not at all. */
    public static void write(Path file, StudyPart part) {
        WholeFile.write(file, text(part));
    }

    /** The text of a share; the same content gives the same bytes. */
    public static String text(StudyPart part) {
        List<JsonTree> ropes = new ArrayList<>();
        part.ropes()
                .forEach((rope, worked) -> ropes.add(new JsonTree()
                        .with("rope", rope)
                        .with(
                                "ways",
                                worked.ways().stream()
                                        .map(each -> Members.tree(StudyJson::way, each))
                                        .toList())
                        .with(
                                "scenarios",
                                worked.scenarios().stream()
                                        .map(each -> Members.tree(StudyJson::scenario, each))
                                        .toList())));
        return new JsonTree()
                .with("format", FORMAT)
                .with("key", part.key())
                .with("seed", part.size().seed())
                .with("scenarios", part.size().scenarios())
                .with("weeks", part.size().weeks())
                .with("ropes", ropes)
                .text();
    }

    /**
     * All shares of one study as one; nothing when a file cannot be used or speaks of another study.
     *
     * @param expected the key and size they must have
     */
    public static Optional<StudyPart> merged(List<Path> files, StudyPart expected, Findings findings) {
        Map<String, Merging> all = new TreeMap<>();
        for (Path path : files) {
            InputFile.named(path, findings).ifPresent(read -> add(read, expected, all, findings));
        }
        Map<String, StudyPart.OfRope> ropes = new TreeMap<>();
        all.forEach((rope, merging) -> ropes.put(rope, merging.whole()));
        return findings.hasErrors()
                ? Optional.empty()
                : Optional.of(new StudyPart(expected.key(), expected.size(), ropes));
    }

    /** What the shares so far say of one rope. */
    private static final class Merging {
        private final List<WayNote> ways = new ArrayList<>();
        private final Map<Integer, SteadyScenario> scenarios = new TreeMap<>();

        StudyPart.OfRope whole() {
            return new StudyPart.OfRope(ways, List.copyOf(scenarios.values()));
        }
    }

    private static void add(InputFile file, StudyPart expected, Map<String, Merging> all, Findings findings) {
        JsonDocument.read(file, FORMAT, findings, document -> {
            same(document, "key", expected.key(), "a share of a study of this shop as its files are now");
            same(document, "seed", Long.toString(expected.size().seed()), "the seed of this study");
            same(document, "scenarios", Integer.toString(expected.size().scenarios()), "as many as in this study");
            same(document, "weeks", Integer.toString(expected.size().weeks()), "as many as in this study");
            for (JsonObject entry : document.objects("ropes")) {
                String rope = entry.fields().require("rope", Readings::id, "?");
                add(entry, file.name(), all.computeIfAbsent(rope, id -> new Merging()), findings);
            }
            return all;
        });
    }

    private static void add(JsonObject entry, String file, Merging all, Findings findings) {
        List<WayNote> ways = entry.objects("ways").stream()
                .map(each -> Members.read(StudyJson::way, each))
                .toList();
        if (all.ways.isEmpty()) {
            all.ways.addAll(ways);
        } else if (!ways.isEmpty() && !ways.equals(all.ways)) {
            findings.add(Finding.error(
                    file, entry.fields().place(), "ways", ways.size() + " ways", "the same as in the other files"));
        }
        for (JsonObject each : entry.objects("scenarios")) {
            SteadyScenario scenario = Members.read(StudyJson::scenario, each);
            if (!each.fields().sound()) {
                continue;
            }
            String place = each.fields().place();
            if (scenario.lived().size() != all.ways.size()) {
                findings.add(Finding.error(
                        file, place, "lived", scenario.lived().size() + " entries", "one for each of the ways"));
            }
            if (all.scenarios.put(scenario.number(), scenario) != null) {
                findings.add(Finding.error(
                        file,
                        place,
                        "number",
                        Integer.toString(scenario.number()),
                        "a scenario that no other file has"));
            }
        }
    }

    private static void same(JsonObject document, String member, String wanted, String expected) {
        if (!document.fields().text(member).orElse("").equals(wanted)) {
            document.fields().error(member, expected + ": " + wanted);
        }
    }

    private static WayNote way(Members<WayNote> way) {
        return new WayNote(way.list("rules", WayNote::rules, StudyJson::rule));
    }

    private static WayNote.RuleNote rule(Members<WayNote.RuleNote> rule) {
        return new WayNote.RuleNote(
                rule.is("offer", WayNote.RuleNote::offer, Codec.TEXT),
                rule.is("below", WayNote.RuleNote::point, Codec.LENGTH),
                rule.is("reels", WayNote.RuleNote::reels, COUNT));
    }

    private static SteadyScenario scenario(Members<SteadyScenario> scenario) {
        return new SteadyScenario(
                scenario.is("number", SteadyScenario::number, Codec.whole(0, 999_999_999)),
                scenario.list("lived", SteadyScenario::lived, StudyJson::lived));
    }

    private static Lived lived(Members<Lived> lived) {
        return new Lived(
                lived.is("cost", Lived::cost, MILLIS),
                lived.is("used", Lived::used, Codec.LENGTH),
                lived.is("pieces", Lived::pieces, COUNT),
                lived.is("late", Lived::late, COUNT),
                lived.is("stock", Lived::stock, Codec.LENGTH),
                lived.is("tied", Lived::tied, MILLIS),
                lived.is("reels", Lived::reels, COUNT),
                lived.is("scrap", Lived::scrap, Codec.LENGTH),
                lived.is("coils", Lived::coils, COUNT));
    }

    private static Parsed<Cost> millis(String text) {
        return LONG.matcher(text).matches()
                ? Parsed.of(new Cost(Long.parseLong(text)))
                : Parsed.refused("a whole number of at most 17 digits");
    }
}
