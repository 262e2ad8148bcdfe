package bitterend.exchange;

import bitterend.buying.Outcome;
import bitterend.buying.Scenario;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
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
                                scenarios.stream().map(StudyJson::scenario).toList())));
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
                    Scenario scenario = scenario(each);
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

    private static JsonTree scenario(Scenario scenario) {
        return new JsonTree()
                .with("number", scenario.number())
                .with("useful", LengthText.exact(scenario.useful()))
                .with(
                        "outcomes",
                        scenario.outcomes().stream().map(StudyJson::outcome).toList());
    }

    private static JsonTree outcome(Outcome outcome) {
        return new JsonTree()
                .with("cost", outcome.cost().millis())
                .with("waste", LengthText.exact(outcome.waste()))
                .with("coils", outcome.coils())
                .with("reels", outcome.reels())
                .with("avoidable", outcome.avoidable().millis());
    }

    private static Scenario scenario(JsonObject each) {
        List<Outcome> outcomes = new ArrayList<>();
        for (JsonObject outcome : each.objects("outcomes")) {
            Fields fields = outcome.fields();
            outcomes.add(new Outcome(
                    new Cost(fields.require("cost", StudyJson::whole, 0L)),
                    fields.require("waste", LengthText::parse, Length.ZERO),
                    fields.require("coils", Readings.whole(0, 999_999), 0),
                    fields.require("reels", Readings.whole(0, 999_999), 0),
                    new Cost(fields.require("avoidable", StudyJson::whole, 0L))));
        }
        return new Scenario(
                each.fields().require("number", Readings.whole(0, 999_999_999), 0),
                each.fields().require("useful", LengthText::parse, Length.ZERO),
                outcomes);
    }

    private static Parsed<Long> whole(String text) {
        return LONG.matcher(text).matches()
                ? Parsed.of(Long.parseLong(text))
                : Parsed.refused("a whole number of at most 17 digits");
    }
}
