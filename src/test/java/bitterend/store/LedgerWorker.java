package bitterend.store;

import bitterend.day.Part;
import bitterend.day.Posting;
import bitterend.day.RecordedPlan;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.LengthBook.Account;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * A process that receives reels, posts plans and counts what is left, over and over, and says so on its standard output
 * after each is acknowledged: {@code reel <id>}, {@code piece <id>}, {@code count <movement>}. It is there to be killed.
 */
public final class LedgerWorker {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private LedgerWorker() {}

    /**
     * Works until killed, or for so many rounds.
     *
     * @param args shop folder, a name no other worker has, rounds
     */
    public static void main(String[] args) {
        Path folder = Path.of(args[0]);
        for (int round = 0; round < Integer.parseInt(args[2]); round++) {
            try (Ledger ledger = SqliteLedger.open(folder, Clock.systemUTC())) {
                work(ledger, args[1] + "-" + round);
            }
        }
    }

    private static void work(Ledger ledger, String name) {
        Rack rack = new Rack(ledger, "worker");
        rack.receive(reel(name), "");
        say("reel " + name);
        List<String> pieces = List.of(name + "/1.1", name + "/1.2", name + "/1.3");
        RecordedPlan plan = new RecordedPlan("plan " + name, plan(name, pieces), Map.of(name, 1L));
        new Posting(ledger, "worker").post(plan, Part.ALL);
        pieces.forEach(piece -> say("piece " + piece));
        Event counted = rack.count(
                name, bitterend.measure.Written.worked(new Length(40_000)), Length.ZERO, Reel.Known.COUNTED, "");
        say("count " + counted.movements().get(0).number());
    }

    @SuppressWarnings("SystemOut")
    private static void say(String line) {
        System.out.println(line);
        System.out.flush();
    }

    private static Reel reel(String id) {
        Reel.Contents contents =
                new Reel.Contents(new Length(100_000), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED);
        return new Reel(
                id, "braid", "L1", contents, List.of(), Reel.Papers.NONE, Reel.Custody.FREE, true, Reel.Where.UNKNOWN);
    }

    /** Three pieces of 20 m off one reel, 40 m left. */
    private static CutPlan plan(String reel, List<String> pieces) {
        Length piece = new Length(20_000);
        List<Cut> cuts = List.of(
                new Cut(pieces.get(0), Length.ZERO, piece),
                new Cut(pieces.get(1), piece, piece.times(2)),
                new Cut(pieces.get(2), piece.times(2), piece.times(3)));
        RunDraw run = new RunDraw(1, Length.ZERO, piece.times(5), cuts, piece.times(2), RunDraw.Rest.ON_REEL);
        LengthBook book = LengthBook.EMPTY
                .with(Account.BEFORE, piece.times(5))
                .with(Account.PIECES, piece.times(3))
                .with(Account.LEFT, piece.times(2));
        ReelDraw draw = new ReelDraw(reel, Length.ZERO, List.of(run), piece.times(2), book, Cost.ZERO);
        return new CutPlan(DAY, List.of(draw), List.of(), book, Cost.ZERO, List.of());
    }
}
