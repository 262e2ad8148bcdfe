package bitterend.packing.strategy;

import static bitterend.packing.PieceSketch.ofRope;
import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceSketch;
import bitterend.packing.Sketch;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Pieces are of one kind only if every reel takes them on the same terms. */
final class PieceKindsTest {
    @Test
    void alikePieces_areOneKind() {
        Sketch sketch = new Sketch()
                .with(piece("A/1.1", 1_000).order("A"))
                .with(piece("B/1.1", 1_000).order("B"));
        assertEquals(List.of(List.of("A/1.1", "B/1.1")), kinds(sketch.problem()));
    }

    @Test
    void anyTermThatDiffers_makesAnotherKind() {
        Map<String, PieceSketch> others = new TreeMap<>();
        others.put("length", piece("other", 1_001));
        others.put("rope", ofRope("other", Sketch.OTHER_ROPE, 1_000));
        others.put("a second rope", piece("other", 1_000).or(Sketch.OTHER_ROPE, 1_000));
        others.put("certificate", piece("other", 1_000).certificate("3.1"));
        others.put("own rope", piece("other", 1_000).ownRope());
        others.put("an order that has a reel", piece("other", 1_000).order("kept"));
        others.put("priority", piece("other", 1_000).priority(4));
        others.put("day", piece("other", 1_000).due(Sketch.DAY));
        others.forEach((term, other) -> {
            Sketch sketch = new Sketch()
                    .with(reel("K", 9_000).reservedFor("kept"))
                    .with(piece("one", 1_000))
                    .with(other);
            assertEquals(2, kinds(sketch.problem()).size(), term);
        });
    }

    @Test
    void pinnedPiece_isAKindByItself() {
        Sketch sketch = new Sketch()
                .with(reel("K", 9_000))
                .with(piece("one", 1_000))
                .with(piece("other", 1_000))
                .pin("other", "K");
        assertEquals(2, kinds(sketch.problem()).size());
    }

    private static List<List<String>> kinds(PackingProblem problem) {
        return new PieceKinds(problem, problem.pieces())
                .kinds().stream()
                        .map(kind -> kind.stream().map(Piece::id).toList())
                        .toList();
    }
}
