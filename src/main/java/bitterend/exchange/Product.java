package bitterend.exchange;

import bitterend.measure.formula.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A standard product of the shop: what an order line takes over from it. Texts may name parameters and the {@code length}
 * and {@code legs} of the line, and work with them.
 *
 * @param id the name orders use
 * @param parameters what an order line may set
 * @param line texts for the columns of the main part
 * @param parts texts for the columns of further parts, by the name of the part
 * @param hardware parts to pick for each assembly
 */
record Product(
        String id,
        List<Parameter> parameters,
        Map<String, Template> line,
        Map<String, Map<String, Template>> parts,
        List<Hardware> hardware) {

    /** Length and legs of the order line, which every text may name beside the parameters. */
    static final Map<String, Kind> OF_THE_LINE = Map.of("length", Kind.LENGTH, "legs", Kind.NUMBER);

    private static final String LENGTH = "length";

    /**
     * What an order line may set.
     *
     * @param name as the line names it
     * @param kind what it stands for where it is worked with
     * @param usual its value where the line sets none; empty where the line must
     */
    record Parameter(String name, Kind kind, String usual) {
        /** How a line sets it, for a message. */
        String example() {
            return name + " = "
                    + switch (kind) {
                        case LENGTH, TEXT -> "300 mm";
                        case NUMBER -> "4";
                    };
        }
    }

    /**
     * Parts to pick.
     *
     * @param item what
     * @param count how many for each assembly
     */
    record Hardware(Template item, Template count) {}

    /** Usual values by name, in the order of the file. */
    Map<String, String> usual() {
        Map<String, String> usual = new LinkedHashMap<>();
        parameters.forEach(each -> usual.put(each.name(), each.usual()));
        return usual;
    }

    /** Whether the main part is not as long as what is ordered: {@code {length - tail}}. */
    boolean worksOnTheLength() {
        Template length = line.get(LENGTH);
        return length != null && length.workedWith().contains(LENGTH);
    }

    /** What a name of its formulas stands for. */
    Kind kind(String name) {
        return parameters.stream()
                .filter(each -> each.name().equals(name))
                .map(Parameter::kind)
                .findFirst()
                .orElseGet(() -> OF_THE_LINE.getOrDefault(name, Kind.TEXT));
    }

    /** The names whose values some text works with. */
    Set<String> workedWith() {
        Set<String> names = new TreeSet<>();
        Stream.of(
                        line.values().stream(),
                        parts.values().stream().flatMap(part -> part.values().stream()),
                        hardware.stream().flatMap(each -> Stream.of(each.item(), each.count())))
                .flatMap(each -> each)
                .forEach(template -> names.addAll(template.workedWith()));
        return names;
    }
}
