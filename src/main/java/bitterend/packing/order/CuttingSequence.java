package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.WorkingDays;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The order of cutting within one run. A reel may turn out short, so the piece that is easiest to place elsewhere is cut
 * last: pieces of one set together, then fewest other homes first, then by the day they must be cut, then the longer, then by id.
 */
final class CuttingSequence {
    private final Workbench bench;
    private final RackState rack;
    private final WorkingDays working;
    private final Map<Asked, Long> homes = new HashMap<>();

    CuttingSequence(Workbench bench, RackState rack) {
        this.bench = bench;
        this.rack = rack;
        working = new WorkingDays(bench.problem().calendar());
    }

    /** Pieces of one kind on one reel have as many other homes. */
    private record Asked(int kind, String reel) {}

    private record Block(List<Piece> pieces, long homes, LocalDate cutBy) {
        private static final Comparator<Block> FIRST_TO_LAST = Comparator.comparingLong(Block::homes)
                .thenComparing(Block::cutBy)
                .thenComparing(Comparator.comparingLong(Block::longest).reversed())
                .thenComparing(block -> block.pieces().get(0).id(), NaturalOrder.IDS);

        long longest() {
            return pieces.get(0).cut().mm();
        }
    }

    List<Piece> of(Collection<Piece> pieces, String reel) {
        Map<String, List<Piece>> blocks = new TreeMap<>();
        for (Piece piece : pieces) {
            String key = piece.isMatched() ? "set " + piece.matching().set() : "piece " + piece.id();
            blocks.computeIfAbsent(key, name -> new ArrayList<>()).add(piece);
        }
        return blocks.values().stream()
                .map(block -> block(block, reel))
                .sorted(Block.FIRST_TO_LAST)
                .flatMap(block -> block.pieces().stream())
                .toList();
    }

    private Block block(List<Piece> pieces, String reel) {
        List<Piece> sorted = pieces.stream()
                .sorted(Comparator.comparing(Piece::cut).reversed().thenComparing(Piece::id, NaturalOrder.IDS))
                .toList();
        long fewest = sorted.stream()
                .mapToLong(piece -> otherHomes(piece, reel))
                .min()
                .orElseThrow();
        LocalDate cutBy = sorted.stream()
                .map(working::cutBy)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        return new Block(sorted, fewest, cutBy);
    }

    /** On how many runs of other reels a piece would fit beside everything that is planned there. */
    private long otherHomes(Piece piece, String reel) {
        int number = bench.numberOf(piece.id());
        return homes.computeIfAbsent(new Asked(bench.kindOf(number), reel), asked -> Arrays.stream(
                        bench.asListed().of(number))
                .filter(run -> rack.fits(number, run))
                .filter(run -> !bench.idOf(run).reel().equals(reel))
                .count());
    }
}
