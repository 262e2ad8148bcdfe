package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.DrawPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cuts of reels whose sheet is out: they stay on their runs and in their order, whatever a later plan would do. */
final class SheetOrder {
    private final Map<String, Pin> steps = new HashMap<>();

    SheetOrder(PackingProblem problem) {
        problem.pins().stream().filter(pin -> pin.step() > 0).forEach(pin -> steps.put(pin.piece(), pin));
    }

    /** The pieces of each run as the sheet has them; nothing where no sheet of the reel is out, or its runs hold them no more. */
    Optional<List<List<Piece>>> runs(Reel reel, DrawPrice price, List<Piece> pieces) {
        if (pieces.isEmpty() || !pieces.stream().allMatch(piece -> steps.containsKey(piece.id()))) {
            return Optional.empty();
        }
        List<List<Piece>> runs = new ArrayList<>();
        List<RunLoad> loads = new ArrayList<>();
        price.runs().forEach(run -> {
            runs.add(new ArrayList<>());
            loads.add(RunLoad.NONE);
        });
        List<Piece> inOrder = pieces.stream()
                .sorted(Comparator.comparingInt(piece -> pin(piece).step()))
                .toList();
        int all = reel.holding(Length.ZERO).runs().size();
        for (Piece piece : inOrder) {
            int run = all - 1 - pin(piece).behind();
            if (run < 0 || run >= runs.size()) {
                return Optional.empty();
            }
            runs.get(run).add(piece);
            loads.set(run, loads.get(run).plus(piece.lengthOn(reel.rope()).orElseThrow()));
            if (!loads.get(run).fits(price.runs().get(run).length(), price.loss())) {
                return Optional.empty();
            }
        }
        return Optional.of(runs);
    }

    private Pin pin(Piece piece) {
        Pin pin = steps.get(piece.id());
        if (pin == null) {
            throw new IllegalArgumentException(piece.id() + " is on no sheet");
        }
        return pin;
    }
}
