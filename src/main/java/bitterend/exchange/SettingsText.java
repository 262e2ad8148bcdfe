package bitterend.exchange;

import bitterend.exchange.form.InputFile;
import bitterend.finding.Findings;
import bitterend.measure.Money;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** What {@code shop.json} says member by member, as it is written, beside what holds where it says nothing. */
public final class SettingsText {
    private static final JsonMapper JSON = new JsonMapper();
    /** What a new shop leaves out, and what it has to say itself. */
    private static final Map<String, String> USUAL = Map.ofEntries(
            Map.entry("name", ""),
            Map.entry("units", ""),
            Map.entry("currency", ""),
            Map.entry("labour", ""),
            Map.entry("day", "the day it is"),
            Map.entry("locale", "none"),
            Map.entry("ledger", "the file stock.db"),
            Map.entry("brake", Integer.toString(Settings.USUAL_BRAKE)),
            Map.entry("budget", "none"),
            Map.entry("mostWeeks", "none"),
            Map.entry("code", "none"),
            Map.entry("benchHours", "none"),
            Map.entry("benchMinutes cut", "3 min"),
            Map.entry("benchMinutes fetch", "4 min"),
            Map.entry("closed", "none"),
            Map.entry("letter address", "none"),
            Map.entry("letter contact", "none"),
            Map.entry("letter payment", "none"),
            Map.entry("letter delivery", "none"),
            Map.entry("letter before", "none"),
            Map.entry("letter after", "none"),
            Map.entry("letter taxes", "none"),
            Map.entry("letter paper", "A4"),
            Map.entry("quote parts", "none"));

    private SettingsText() {}

    /**
     * One setting.
     *
     * @param member its place in the file, {@code quote margin}
     * @param says what the file says; empty for nothing
     * @param usual what holds where it says nothing; empty where it must say something
     */
    public record Setting(String member, String says, String usual) {}

    /** All there are, those that the file names and those that it does not. */
    public static List<Setting> of(Path folder, Settings settings) {
        Map<String, String> says = InputFile.find(folder, ShopJson.NAME, new Findings())
                .map(file -> members(file.text()))
                .orElse(Map.of());
        NewShop plain = new NewShop(
                settings.name(),
                settings.units(),
                settings.money(),
                Money.ZERO,
                new NewBench(settings.bench().tools(), List.of()),
                "",
                List.of(),
                false);
        Map<String, String> usual = new LinkedHashMap<>(members(plain.settings()));
        usual.putAll(USUAL);
        if (says.keySet().stream().anyMatch(member -> member.startsWith("benchHours "))) {
            usual.remove("benchHours");
        }
        if (says.containsKey("ledger server")) {
            usual.remove("ledger");
        }
        Set<String> all = new LinkedHashSet<>(says.keySet());
        all.addAll(usual.keySet());
        all.remove("format");
        return all.stream()
                .map(member -> new Setting(member, says.getOrDefault(member, ""), usual.getOrDefault(member, "none")))
                .toList();
    }

    private static Map<String, String> members(String text) {
        Map<String, String> members = new LinkedHashMap<>();
        try {
            add(members, "", JSON.readTree(text));
        } catch (JsonProcessingException malformed) {
            throw new IllegalStateException("a file that was read", malformed);
        }
        return members;
    }

    private static void add(Map<String, String> members, String before, JsonNode object) {
        object.properties().forEach(member -> {
            String name = before + member.getKey();
            if (member.getValue().isObject()) {
                add(members, name + " ", member.getValue());
            } else {
                members.put(name, words(member.getValue()));
            }
        });
    }

    private static String words(JsonNode value) {
        if (!value.isArray()) {
            return value.asText();
        }
        return value.isEmpty()
                ? "none"
                : value.get(0).isObject()
                        ? "a list of " + value.size()
                        : StreamSupport.stream(value.spliterator(), false)
                                .map(JsonNode::asText)
                                .collect(Collectors.joining(", "));
    }
}
