package bitterend.quoting;

import bitterend.finding.Finding;
import bitterend.measure.LengthText;
import bitterend.measure.Units;
import bitterend.quoting.sharing.NewRope;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Parts the lines of a request that can be priced from those that cannot: pieces that no reel is long enough for, more
 * pieces than can be worked out in one quote, and lines in the place of such a line.
 */
final class Priceable {
    private final QuoteBasis basis;
    private final List<QuoteLine> lines;
    private final List<Lacking> lacking = new ArrayList<>();

    private Priceable(QuoteBasis basis, List<QuoteLine> lines) {
        this.basis = basis;
        this.lines = new ArrayList<>(lines);
    }

    /** The lines that stay, and what the others lack. */
    record Parted(List<QuoteLine> lines, List<Lacking> lacking) {}

    static Parted of(QuoteBasis basis, QuoteRequest request) {
        Priceable parting = new Priceable(basis, request.lines());
        List.copyOf(parting.lines).forEach(parting::tooLong);
        List<QuoteLine> wanted = parting.lines.stream()
                .filter(line -> !line.ownRope() && !line.isAlternative())
                .toList();
        Set<String> ropes = wanted.stream().map(QuoteLine::rope).collect(Collectors.toCollection(TreeSet::new));
        ropes.forEach(parting::tooMany);
        Set<String> left = parting.lines.stream()
                .filter(line -> !line.isAlternative())
                .map(QuoteLine::name)
                .collect(Collectors.toSet());
        List.copyOf(parting.lines).stream()
                .filter(line -> line.isAlternative()
                        && !left.contains(line.asked().terms().insteadOf()))
                .forEach(parting::inPlaceOfNothing);
        return new Parted(List.copyOf(parting.lines), parting.lacking);
    }

    private void tooLong(QuoteLine line) {
        NewRope rope = basis.anySize(line.rope());
        if (!line.ownRope() && !line.pieces().stream().allMatch(rope::holds)) {
            leave(
                    line,
                    "a piece of it is longer than any reel of that rope that can be had",
                    finding(
                            line,
                            "length",
                            line.assembly().make().finished().kept(),
                            "pieces no longer than the longest reel of " + line.rope() + " that can be had, "
                                    + LengthText.print(rope.longest(), Units.METRIC)));
        }
    }

    /** The largest lines are left out until the rest can be worked out. */
    private void tooMany(String rope) {
        Optional<QuoteLine> largest = largest(rope);
        while (largest.isPresent()) {
            QuoteLine line = largest.get();
            leave(
                    line,
                    "it is more than one quote can hold; ask for it in another",
                    finding(
                            line,
                            "quantity",
                            String.valueOf(line.pieces().size()),
                            "at most " + NewRope.MOST_PIECES + " pieces of " + rope
                                    + " in one quote; ask for the rest in another"));
            largest = largest(rope);
        }
    }

    private Optional<QuoteLine> largest(String rope) {
        List<QuoteLine> of = lines.stream()
                .filter(line ->
                        !line.ownRope() && !line.isAlternative() && line.rope().equals(rope))
                .toList();
        return RopePrices.isTooMany(of)
                ? of.stream().max(Comparator.comparingInt(line -> line.pieces().size()))
                : Optional.empty();
    }

    private void inPlaceOfNothing(QuoteLine line) {
        String other = line.asked().terms().insteadOf();
        leave(
                line,
                "line " + other + ", whose place it would take, is not in this quote",
                finding(line, "instead of", other, "a line that can be priced"));
    }

    private void leave(QuoteLine line, String why, Finding finding) {
        lines.remove(line);
        Lacking.Asked asked = new Lacking.Asked(
                line.name(),
                line.assembly().ordered().note(),
                line.assembly().make().finished().kept(),
                line.rope(),
                false);
        lacking.add(new Lacking(asked, why, List.of(finding)));
    }

    private static Finding finding(QuoteLine line, String field, String found, String expected) {
        return Finding.error(
                line.assembly().origin().file(), line.assembly().origin().place(), field, found, expected);
    }
}
