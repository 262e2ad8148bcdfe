package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.Ratio;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How long the fid of a rope is. A splicer measures with the tool itself: sizes that have a tool are in the table, for
 * all others it is a multiple of the diameter.
 *
 * @param tools the tools there are
 * @param rule the fid of ropes without a tool
 * @param bench what the bench measures with
 */
public record FidTable(List<Tool> tools, Rule rule, BenchTools bench) {
    public FidTable {
        tools = List.copyOf(tools);
    }

    /**
     * A tool for one diameter.
     *
     * @param rope the rope it is made for
     * @param bench the bench that uses it; null for any
     * @param fid its lengths
     */
    public record Tool(Diameter rope, @Nullable BenchTools bench, Fid fid) {
        boolean isUsedOn(BenchTools other) {
            return bench == null || bench == other;
        }
    }

    /**
     * The fid of ropes without a tool of their own.
     *
     * @param diameters its length in diameters, by what the bench measures with
     * @param shortSections short section as a part of the fid; thinnest first, the last without limit
     * @param provenance where the rule comes from
     */
    public record Rule(Map<BenchTools, Ratio> diameters, List<ShortSection> shortSections, Provenance provenance) {
        public Rule {
            diameters = Map.copyOf(diameters);
            shortSections = List.copyOf(shortSections);
            if (shortSections.isEmpty()
                    || !shortSections.get(shortSections.size() - 1).limit().equals(DiameterLimit.ANY)) {
                throw new IllegalArgumentException("short sections must end with one for every rope: " + shortSections);
            }
        }

        private Fid fid(Diameter rope, BenchTools bench) {
            Ratio part = shortSections.stream()
                    .filter(step -> step.limit().admits(rope))
                    .findFirst()
                    .orElseThrow()
                    .part();
            Ratio length = diameters.getOrDefault(bench, Ratio.ZERO);
            return new Fid(rope.times(length), rope.times(length).times(part), provenance);
        }
    }

    /**
     * The short section of ropes up to a limit.
     *
     * @param limit the ropes
     * @param part part of the fid
     */
    public record ShortSection(DiameterLimit limit, Ratio part) {}

    /** The same on a bench that measures with these tools. */
    public FidTable on(BenchTools other) {
        return new FidTable(tools, rule, other);
    }

    /** The fid for a rope. */
    public Fid fid(Diameter rope) {
        return tools.stream()
                .filter(tool -> tool.rope().equals(rope) && tool.isUsedOn(bench))
                .map(Tool::fid)
                .findFirst()
                .orElseGet(() -> rule.fid(rope, bench));
    }
}
