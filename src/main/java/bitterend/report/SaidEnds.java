package bitterend.report;

import bitterend.demand.Assembly;
import bitterend.demand.EndSpec;
import bitterend.demand.EndWork;
import bitterend.demand.HungHardware;
import bitterend.quoting.QuoteLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The ends of a quoted line as a customer says them: {@code double-braid eye, 700 mm long, for a pin of 220 mm}. Lengths
 * stay as they were written.
 */
final class SaidEnds {
    private static final Pattern KEY =
            Pattern.compile(" (length|perimeter|diameter|ratio|thimble|pin|bore|tail|tucks|tapered|to|with)(?= |$)");

    private SaidEnds() {}

    /** A sentence part for each end; one for both where they are made alike, and one for a ring. */
    static List<String> of(QuoteLine line) {
        Assembly.Make make = line.assembly().make();
        List<EndWork> work = line.demanded().work();
        boolean said = !make.endA().words().isEmpty() || !make.endB().words().isEmpty();
        if (!said || work.isEmpty()) {
            return List.of(EndsInWords.of(line.pieces().get(0).ends()));
        }
        String first = end(make.endA(), work.get(0));
        if (work.size() == 1) {
            return List.of(first);
        }
        String second = end(make.endB(), work.get(1));
        return first.equals(second) ? List.of("both ends: " + first) : List.of("end A: " + first, "end B: " + second);
    }

    private static String end(EndSpec spec, EndWork work) {
        Map<String, String> words = split(spec.words());
        List<String> said = new ArrayList<>();
        said.add(name(work.name()));
        if (!spec.fitting().id().isEmpty()) {
            said.add(spec.fitting().id());
        }
        words.forEach((key, value) -> {
            if (key.equals("with")) {
                said.add("with " + hardware(work));
            } else if (!key.isEmpty()) {
                said.add(phrase(key, value));
            }
        });
        return String.join(", ", said);
    }

    /** Its name without the way of the bench to make it: {@code hand-tucked wire eye, three full tucks and two half}. */
    private static String name(String name) {
        int comma = name.indexOf(", ");
        return comma < 0 ? name : name.substring(0, comma);
    }

    private static String hardware(EndWork work) {
        return work.hardware().stream().map(HungHardware::name).collect(Collectors.joining(" and "));
    }

    private static String phrase(String key, String value) {
        return switch (key) {
            case "length" -> value + " long";
            case "perimeter" -> value + " round the inside";
            case "diameter" -> value + " across";
            case "ratio" -> value + " times as long as its pin is thick";
            case "thimble" -> "on a thimble " + value;
            case "pin" -> "for a pin of " + value;
            case "bore" -> "bore " + value;
            case "tail" -> "tail " + value;
            case "tucks" -> value + " tucks";
            case "to" -> "joined to " + value;
            default -> key;
        };
    }

    /** Each word of an end with what was written behind it. */
    private static Map<String, String> split(String text) {
        Map<String, String> words = new LinkedHashMap<>();
        Matcher key = KEY.matcher(text);
        String open = "";
        int from = 0;
        while (key.find()) {
            words.put(open, text.substring(from, key.start()).strip());
            open = key.group(1);
            from = key.end();
        }
        words.put(open, text.substring(from).strip());
        return words;
    }
}
