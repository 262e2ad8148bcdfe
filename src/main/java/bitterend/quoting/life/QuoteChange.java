package bitterend.quoting.life;

import bitterend.finding.NaturalOrder;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.QuotedLine;
import bitterend.quoting.QuotedWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What is other in one line of a quote than in the revision before.
 *
 * @param line the line
 * @param what what is other
 * @param before the line before; empty where it is new
 * @param now the line now; empty where it is dropped
 */
public record QuoteChange(String line, What what, List<QuotedLine> before, List<QuotedLine> now) {
    public QuoteChange {
        before = List.copyOf(before);
        now = List.copyOf(now);
    }

    /** What may be other. */
    public enum What {
        NEW("new line"),
        DROPPED("dropped"),
        ROPE("rope"),
        LENGTH("finished length"),
        ENDS("ends"),
        LEGS("legs"),
        QUANTITY("quantity"),
        MINUTES("labour each"),
        HARDWARE("hardware each"),
        SAMPLES("samples and tests"),
        PRICE("price");

        private final String words;

        What(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    private static final Map<What, Function<QuotedLine, Object>> LOOKED_AT = looked();

    private static Map<What, Function<QuotedLine, Object>> looked() {
        Map<What, Function<QuotedLine, Object>> looked = new TreeMap<>();
        looked.put(What.ROPE, line -> line.what().rope() + line.what().ownRope());
        looked.put(What.LENGTH, line -> line.what().finished());
        looked.put(What.ENDS, line -> line.what().ends());
        looked.put(What.LEGS, line -> line.what().legs());
        looked.put(What.QUANTITY, line -> line.what().quantity());
        looked.put(What.MINUTES, QuotedLine::minutes);
        looked.put(What.HARDWARE, QuotedLine::hardwareEach);
        looked.put(What.SAMPLES, line -> line.of(Kind.SAMPLES));
        looked.put(What.PRICE, QuotedLine::price);
        return looked;
    }

    /** Everything that is other, line by line. */
    public static List<QuoteChange> between(QuotedWork before, QuotedWork now) {
        Map<String, QuotedLine> old = byName(before);
        Map<String, QuotedLine> fresh = byName(now);
        Map<String, List<QuoteChange>> changes = new TreeMap<>(NaturalOrder.IDS);
        old.forEach((name, line) -> {
            if (!fresh.containsKey(name)) {
                changes.put(name, List.of(new QuoteChange(name, What.DROPPED, List.of(line), List.of())));
            }
        });
        fresh.forEach((name, line) -> {
            QuotedLine was = old.get(name);
            changes.put(
                    name,
                    was == null
                            ? List.of(new QuoteChange(name, What.NEW, List.of(), List.of(line)))
                            : ofLine(name, was, line));
        });
        List<QuoteChange> all = new ArrayList<>();
        changes.values().forEach(all::addAll);
        return all;
    }

    private static List<QuoteChange> ofLine(String name, QuotedLine was, QuotedLine is) {
        Predicate<Function<QuotedLine, Object>> differs =
                part -> !part.apply(was).equals(part.apply(is));
        return LOOKED_AT.entrySet().stream()
                .filter(each -> differs.test(each.getValue()))
                .map(each -> new QuoteChange(name, each.getKey(), List.of(was), List.of(is)))
                .toList();
    }

    private static Map<String, QuotedLine> byName(QuotedWork work) {
        Map<String, QuotedLine> lines = new TreeMap<>();
        work.lines().forEach(line -> lines.put(line.name(), line));
        return lines;
    }
}
