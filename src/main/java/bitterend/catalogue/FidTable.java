package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.Ratio;
import java.util.List;

/**
 * How long the fid of a rope is. A splicer measures with the tool itself: sizes that have a tool are in the table, for
 * all others it is a multiple of the diameter.
 *
 * @param tools the tools there are
 * @param diameters fid length in diameters, for ropes without a tool of their own
 * @param shortSections short section as a part of the fid, for ropes without a tool; thinnest first, the last without limit
 * @param provenance where the rule for ropes without a tool comes from
 */
public record FidTable(List<Tool> tools, Ratio diameters, List<ShortSection> shortSections, Provenance provenance) {
    public FidTable {
        tools = List.copyOf(tools);
        shortSections = List.copyOf(shortSections);
        if (shortSections.isEmpty()
                || !shortSections.get(shortSections.size() - 1).limit().equals(DiameterLimit.ANY)) {
            throw new IllegalArgumentException("short sections must end with one for every rope: " + shortSections);
        }
    }

    /**
     * A tool for one diameter.
     *
     * @param rope the rope it is made for
     * @param fid its lengths
     */
    public record Tool(Diameter rope, Fid fid) {}

    /**
     * The short section of ropes up to a limit.
     *
     * @param limit the ropes
     * @param part part of the fid
     */
    public record ShortSection(DiameterLimit limit, Ratio part) {}

    /** The fid for a rope. */
    public Fid fid(Diameter rope) {
        return tools.stream()
                .filter(tool -> tool.rope().equals(rope))
                .map(Tool::fid)
                .findFirst()
                .orElseGet(() -> byRule(rope));
    }

    private Fid byRule(Diameter rope) {
        Ratio part = shortSections.stream()
                .filter(step -> step.limit().admits(rope))
                .findFirst()
                .orElseThrow()
                .part();
        return new Fid(rope.times(diameters), rope.times(diameters).times(part), provenance);
    }
}
