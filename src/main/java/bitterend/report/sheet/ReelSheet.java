package bitterend.report.sheet;

import bitterend.report.Fact;
import java.util.List;

/**
 * One reel on a sheet.
 *
 * @param id id of the reel
 * @param rope name of the rope
 * @param mark which plan it is, and whether this sheet is issued
 * @param promise that it is not to be cut yet; empty for one that is
 * @param changes what changed of it since it was planned
 * @param facts what to know of the reel, label and value
 * @param before what to do before each cut; empty for nothing
 * @param cautions stretches to keep clear of, and what to know of such rope, in words
 * @param limit the reading past which not to cut without counting; empty when all of the rope is certain
 * @param counter what to know of a counter that does not read true; empty for one that does
 * @param segments the cutting table, page by page
 * @param rest what happens to the rest
 */
public record ReelSheet(
        String id,
        String rope,
        String mark,
        String promise,
        List<String> changes,
        List<Fact> facts,
        String before,
        List<String> cautions,
        String limit,
        String counter,
        List<Segment> segments,
        String rest) {
    public ReelSheet {
        changes = List.copyOf(changes);
        facts = List.copyOf(facts);
        cautions = List.copyOf(cautions);
        segments = List.copyOf(segments);
    }
}
