package bitterend.exchange.mapping;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads and writes {@code mappings.json}: what was answered about sheets, by their set of headings. */
public final class MappingsJson {
    public static final String NAME = "mappings.json";
    private static final String FORMAT = "bitterend/mappings/1";

    private final List<Mapping> mappings;

    private MappingsJson(List<Mapping> mappings) {
        this.mappings = List.copyOf(mappings);
    }

    private record Mapping(List<String> headings, Map<String, String> answers) {
        private boolean isOf(List<String> other) {
            return key(headings).equals(key(other));
        }

        private static List<String> key(List<String> headings) {
            return headings.stream()
                    .map(TradeWords::plain)
                    .filter(name -> !name.isEmpty())
                    .sorted()
                    .toList();
        }
    }

    /** The file of a shop; none of it where it is missing. What cannot be read is told. */
    public static MappingsJson find(Path folder, Findings findings) {
        return InputFile.find(folder, NAME, findings)
                .flatMap(file -> JsonDocument.read(file, FORMAT, findings, MappingsJson::read))
                .orElse(new MappingsJson(List.of()));
    }

    private static MappingsJson read(JsonObject document) {
        List<Mapping> mappings = new ArrayList<>();
        for (JsonObject each : document.objects("mappings")) {
            Map<String, String> answers = new TreeMap<>();
            for (JsonObject answer : each.objects("answers")) {
                answers.put(
                        answer.fields().require("asked", Readings::text, "?"),
                        answer.fields().require("answer", Readings::text, "?"));
            }
            mappings.add(new Mapping(each.texts("headings"), answers));
        }
        return new MappingsJson(mappings);
    }

    /** What was answered about sheets with these headings, whatever their order. */
    public Map<String, String> answers(List<String> headings) {
        return find(headings).map(Mapping::answers).orElse(Map.of());
    }

    /** Whether a sheet with these headings was imported before. */
    public boolean knows(List<String> headings) {
        return find(headings).isPresent();
    }

    private Optional<Mapping> find(List<String> headings) {
        return mappings.stream().filter(each -> each.isOf(headings)).findFirst();
    }

    /** The same with these answers about sheets with these headings. */
    public MappingsJson with(List<String> headings, Map<String, String> answers) {
        List<Mapping> all = new ArrayList<>(
                mappings.stream().filter(each -> !each.isOf(headings)).toList());
        all.add(new Mapping(headings.stream().filter(each -> !each.isBlank()).toList(), new TreeMap<>(answers)));
        return new MappingsJson(all);
    }

    /** The text of the file. */
    public String text() {
        return new JsonTree()
                .with("format", FORMAT)
                .with("mappings", mappings.stream().map(MappingsJson::tree).toList())
                .text();
    }

    private static JsonTree tree(Mapping mapping) {
        List<JsonTree> answers = mapping.answers().entrySet().stream()
                .map(entry -> new JsonTree().with("asked", entry.getKey()).with("answer", entry.getValue()))
                .toList();
        return new JsonTree().with("headings", mapping.headings()).with("answers", answers);
    }
}
