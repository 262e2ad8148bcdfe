package bitterend.work.plans;

import bitterend.demand.Piece;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import bitterend.stock.Reel;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Turns the draws of an earlier plan into pins. */
final class KeptDraws {
    private KeptDraws() {}

    /**
     * The day with a pin for every piece of the plan that is still wanted, on a reel that is still there; pins of the
     * shop's own come first. The day as it is when there is no plan to keep.
     */
    static PackingProblem pinned(PackingProblem day, @Nullable CutPlan plan) {
        if (plan == null) {
            return day;
        }
        Set<String> wanted = day.pieces().stream().map(Piece::id).collect(Collectors.toSet());
        Set<String> there = day.reels().stream().map(Reel::id).collect(Collectors.toSet());
        Set<String> pinned = day.pins().stream().map(Pin::piece).collect(Collectors.toSet());
        List<Pin> kept = plan.draws().stream()
                .filter(draw -> there.contains(draw.reel()))
                .flatMap(KeptDraws::pins)
                .filter(pin -> wanted.contains(pin.piece()) && !pinned.contains(pin.piece()))
                .toList();
        List<Pin> pins = Stream.concat(day.pins().stream(), kept.stream()).toList();
        return day.withPins(pins);
    }

    private static Stream<Pin> pins(ReelDraw draw) {
        return draw.cuts().stream().map(cut -> new Pin(cut.piece(), draw.reel()));
    }
}
