package bitterend.day;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.LengthBook;
import bitterend.packing.PieceSketch;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.Sketch;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Reels with their cuts and hours of a bench, of which lengths and money do not matter. */
final class BenchSketch {
    private BenchSketch() {}

    /** A reel that these pieces are cut off; they are added to the shop. */
    static ReelDraw reel(Sketch shop, String id, PieceSketch... pieces) {
        List<Cut> cuts = new ArrayList<>();
        for (PieceSketch each : pieces) {
            shop.with(each);
            cuts.add(new Cut(each.id(), Length.ZERO, new Length(1_000)));
        }
        RunDraw run = new RunDraw(1, Length.ZERO, new Length(9_000), cuts, Length.ZERO, RunDraw.Rest.SCRAP);
        return new ReelDraw(id, Length.ZERO, List.of(run), Length.ZERO, LengthBook.EMPTY, Cost.ZERO);
    }

    /** So many minutes from Monday to Friday. */
    static Map<DayOfWeek, Integer> everyDay(int minutes) {
        Map<DayOfWeek, Integer> hours = new EnumMap<>(DayOfWeek.class);
        for (int day = 1; day <= 5; day++) {
            hours.put(DayOfWeek.of(day), minutes);
        }
        return hours;
    }
}
