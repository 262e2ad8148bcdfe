package bitterend.exchange;

import bitterend.buying.Outcome;
import bitterend.buying.Scenario;
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
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Writes and reads shares of a buying study, and puts them together. Costs stand in 1/1000 of a minor unit. */
public final class StudyJson {
    private static final String FORMAT = "bitterend/study/1";
    private static final Pattern LONG = Pattern.compile("-?[0-9]{1,17}");

    private static final Codec<Cost> MILLIS = new Codec<>(Cost::millis, StudyJson::millis, Cost.ZERO);
    private static final Codec<Integer> COUNT = Codec.whole(0, 999_999);

    private StudyJson() {}

    /** Writes a share, whole or not at all. */
    public static void write(Path file, StudyPart part) {
        WholeFile.write(file, text(part));
    }

    /** The text of a share; the same content gives the same bytes. */
    public static String text(StudyPart part) {
        List<JsonTree> ropes = new ArrayList<>();
        part.ropes()
                .forEach((rope, scenarios) -> ropes.add(new JsonTree()
                        .with("rope", rope)
                        .with(
                                "scenarios",
                                scenarios.stream()
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
        Map<String, List<Scenario>> all = new TreeMap<>();
        for (Path path : files) {
            Path file = path.toAbsolutePath();
            Path folder = Optional.ofNullable(file.getParent()).orElse(file);
            Optional.ofNullable(file.getFileName())
                    .flatMap(name -> InputFile.require(folder, name.toString(), findings))
                    .ifPresent(read -> add(read, expected, all, findings));
        }
        all.values().forEach(scenarios -> scenarios.sort(Comparator.comparingInt(Scenario::number)));
        return findings.hasErrors()
                ? Optional.empty()
                : Optional.of(new StudyPart(expected.key(), expected.size(), all));
    }

    private static void add(InputFile file, StudyPart expected, Map<String, List<Scenario>> all, Findings findings) {
        JsonDocument.read(file, FORMAT, findings, document -> {
            same(document, "key", expected.key(), "a share of a study of this shop as its files are now");
            same(document, "seed", Long.toString(expected.size().seed()), "the seed of this study");
            same(document, "scenarios", Integer.toString(expected.size().scenarios()), "as many as in this study");
            same(document, "weeks", Integer.toString(expected.size().weeks()), "as many as in this study");
            for (JsonObject entry : document.objects("ropes")) {
                String rope = entry.fields().require("rope", Readings::id, "?");
                List<Scenario> scenarios = all.computeIfAbsent(rope, id -> new ArrayList<>());
                Set<Integer> known = new HashSet<>();
                scenarios.forEach(each -> known.add(each.number()));
                for (JsonObject each : entry.objects("scenarios")) {
                    Scenario scenario = Members.read(StudyJson::scenario, each);
                    if (each.fields().sound() && !known.add(scenario.number())) {
                        findings.add(Finding.error(
                                file.name(),
                                each.fields().place(),
                                "number",
                                Integer.toString(scenario.number()),
                                "a scenario that no other file has"));
                    }
                    scenarios.add(scenario);
                }
            }
            return all;
        });
    }

    private static void same(JsonObject document, String member, String wanted, String expected) {
        if (!document.fields().text(member).orElse("").equals(wanted)) {
            document.fields().error(member, expected + ": " + wanted);
        }
    }

    private static Scenario scenario(Members<Scenario> scenario) {
        return new Scenario(
                scenario.is("number", Scenario::number, Codec.whole(0, 999_999_999)),
                scenario.is("useful", Scenario::useful, Codec.LENGTH),
                scenario.list("outcomes", Scenario::outcomes, StudyJson::outcome));
    }

    private static Outcome outcome(Members<Outcome> outcome) {
        return new Outcome(
                outcome.is("cost", Outcome::cost, MILLIS),
                outcome.is("waste", Outcome::waste, Codec.LENGTH),
                outcome.is("coils", Outcome::coils, COUNT),
                outcome.is("reels", Outcome::reels, COUNT),
                outcome.is("avoidable", Outcome::avoidable, MILLIS));
    }

    private static Parsed<Cost> millis(String text) {
        return LONG.matcher(text).matches()
                ? Parsed.of(new Cost(Long.parseLong(text)))
                : Parsed.refused("a whole number of at most 17 digits");
    }
}
