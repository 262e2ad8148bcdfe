package bitterend.report.sheet;

import bitterend.report.Fact;
import java.util.List;

/**
 * A day's cut sheet, every value as it is printed.
 *
 * @param mark which plan it is, printed large on every page; empty for nothing
 * @param changes what changed since it was planned
 * @param shop name of the shop
 * @param day the day the rope is cut on
 * @param unit unit of the columns of lengths
 * @param glance the big figures of the first page
 * @param promised what of it is not to be cut yet, and what is not here; in sentences
 * @param proof what is proven of the plan, in plain words
 * @param fetch reels to fetch
 * @param shortfalls what could not be planned
 * @param picks thimbles, fittings, clips and twine to pick
 * @param notes what to know before cutting: first articles, warnings
 * @param cautions what is said on every sheet
 * @param reels the reels, in the order in which they are cut
 * @param splices the marks of each splice, for all eyes of the day
 * @param made how the plan was made
 */
public record Sheet(
        String mark,
        List<String> changes,
        String shop,
        String day,
        String unit,
        List<Fact> glance,
        List<String> promised,
        List<String> proof,
        List<Fetch> fetch,
        List<Shortfall> shortfalls,
        List<Fact> picks,
        List<String> notes,
        List<String> cautions,
        List<ReelSheet> reels,
        List<SpliceTable> splices,
        String made) {
    public Sheet {
        changes = List.copyOf(changes);
        glance = List.copyOf(glance);
        promised = List.copyOf(promised);
        proof = List.copyOf(proof);
        fetch = List.copyOf(fetch);
        shortfalls = List.copyOf(shortfalls);
        picks = List.copyOf(picks);
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
        reels = List.copyOf(reels);
        splices = List.copyOf(splices);
    }

    /** A reel to fetch. */
    public record Fetch(
            String reel,
            String rope,
            String lot,
            String place,
            String mass,
            String pieces,
            String drawn,
            String held) {}

    /** Work that could not be planned. */
    public record Shortfall(String pieces, String what, String why, String help) {}
}
