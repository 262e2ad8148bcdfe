package bitterend.work.orders;

import bitterend.catalogue.Termination;
import bitterend.day.FinishedPieces;
import bitterend.day.LookedOver;
import bitterend.demand.DemandModel;
import bitterend.demand.Demanded;
import bitterend.demand.Piece;
import bitterend.demand.SpliceCard;
import bitterend.demand.SpliceCard.How;
import bitterend.demand.SpliceCard.Outcome;
import bitterend.exchange.MeasuredRows;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.finding.Finding;
import bitterend.finding.Nearest;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Written;
import bitterend.packing.Words;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.work.ShopNow;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Books what the boxes of a splice card say: what a piece was cut to, what it came out at, how that was measured, by whom, in how many minutes. It
 * becomes a row of {@code measured.csv}, from which take-up is learned. A piece outside of what passes is booked only with a
 * word on what becomes of it.
 */
public final class MeasureFinished {
    private static final String MEASURED = "measured";
    private static final Ratio FAR = Ratio.percent(5);
    private static final long FAR_ANYHOW_MM = 100;

    private final Path folder;
    private final Shop shop;
    private final FinishedLog log;

    private MeasureFinished(ShopNow shop, FinishedLog log) {
        folder = shop.at().folder();
        this.shop = shop.shop();
        this.log = log;
    }

    /**
     * Books them; in the ledger, too, where the shop keeps one.
     *
     * @param caller puts into an act who does it, and under which id
     * @param note why, in the words of who does it; may be empty
     */
    public static Result book(ShopNow shop, Boxes boxes, UnaryOperator<Event.Act> caller, String note) {
        return shop.at().ledger().isKept()
                ? shop.at().writing(ledger -> new MeasureFinished(shop, new FinishedLog.OfLedger(ledger, caller, note))
                        .book(boxes))
                : new MeasureFinished(shop, FinishedLog.NONE).book(boxes);
    }

    /**
     * The boxes of one piece.
     *
     * @param piece its id
     * @param cut what it was cut to, and of which rope
     * @param cameOut what it measures when it is made, as it was typed
     * @param how how that was measured
     * @param by who made it, and how long that took
     * @param day when
     * @param said what is said of it: that it passes, or what becomes of one that does not; or {@link Said#NOTHING}
     */
    public record Boxes(String piece, Cut cut, Written cameOut, How how, By by, LocalDate day, Said said) {
        Boxes cutTo(Cut known) {
            return new Boxes(piece, known, cameOut, how, by, day, said);
        }
    }

    /**
     * Who made a piece.
     *
     * @param splicer empty when not noted
     * @param minutes how long it took, from 1; 0 when not noted
     */
    public record By(String splicer, int minutes) {}

    /**
     * A piece before it was made.
     *
     * @param length what it was cut to, as it was typed; nothing for what the ledger has
     * @param rope id of the rope it is of; empty for what the ledger has, else the rope that was ordered
     */
    public record Cut(Written length, String rope) {
        /** Of this, what was not typed is as it is known. */
        Cut or(Cut known) {
            return new Cut(length.exact().isPositive() ? length : known.length, rope.isEmpty() ? known.rope : rope);
        }
    }

    /**
     * What was decided about a piece.
     *
     * @param word {@code passed}, {@code accepted}, {@code to be respliced} or {@code spoiled}; empty for nothing
     * @param by who decided; empty unless it was accepted
     */
    public record Said(String word, String by) {
        public static final Said NOTHING = new Said("", "");
        public static final Said PASSED = new Said(LookedOver.PASSED, "");
        public static final Said RESPLICED = new Said(FinishedPieces.TO_BE_RESPLICED, "");
        public static final Said SPOILED = new Said(MeasuredRows.SPOILED, "");

        /** Somebody takes a piece outside of what passes. */
        public static Said accepted(String by) {
            return new Said(LookedOver.ACCEPTED_BY, by);
        }

        /** Whether it says what becomes of a piece that does not pass. */
        boolean isOfOneOutside() {
            return !equals(NOTHING) && !equals(PASSED);
        }

        String words() {
            return word + by;
        }
    }

    /** What became of it. */
    public sealed interface Result {
        /**
         * It is a row of the file.
         *
         * @param event number of the event; 0 in a shop without a ledger
         * @param wanted what it was compared with
         * @param verdict {@code passed}, {@code measured} where nothing was asked, or what was said
         */
        record Booked(Boxes boxes, Outcome wanted, String verdict, long event) implements Result {}

        /** It does not pass, and nobody said what becomes of it; nothing was written. */
        record Outside(Boxes boxes, Outcome wanted) implements Result {}

        /** It cannot be booked so; nothing was written. */
        record Refused(String why) implements Result {}

        /** The file cannot take it; nothing was written. */
        record NotWritten(List<Finding> findings) implements Result {}
    }

    /** Books the boxes. */
    public Result book(Boxes typed) {
        Optional<OrderLine> line = line(typed.piece());
        Cut cut = typed.cut().or(log.cut(typed.piece()).orElse(new Cut(Written.NOTHING, "")));
        List<String> allowed = line.map(found -> found.assembly().ropes()).orElse(List.of());
        if (line.isPresent() && !typed.cut().rope().isEmpty() && !allowed.contains(cut.rope())) {
            return new Result.Refused(
                    "piece " + typed.piece() + " may be of " + String.join(", ", allowed) + ", not of " + cut.rope());
        }
        Optional<SpliceCard> card = line.flatMap(found -> card(found, cut.rope()));
        if (line.isEmpty() || card.isEmpty()) {
            List<String> known = shop.pieces().stream().map(Piece::id).toList();
            return new Result.Refused("no order asks for piece " + typed.piece() + Nearest.hint(typed.piece(), known));
        }
        Optional<Outcome> wanted = card.get().find(typed.how());
        if (wanted.isEmpty()) {
            return new Result.Refused("the order of " + typed.piece() + " names no "
                    + (typed.how() == How.PINS ? "pin" : "tension") + " to measure it with; measure it slack");
        }
        String ordered = line.get().assembly().ropes().get(0);
        Boxes boxes = typed.cutTo(cut.or(new Cut(Written.NOTHING, ordered)));
        Optional<String> unlikely = unlikely(boxes, card.get(), line.get());
        return unlikely.isPresent() ? new Result.Refused(unlikely.get()) : judged(boxes, line.get(), wanted.get());
    }

    /** What is wanted of a piece on the rope it is of: a substitute may be thicker, and its eye reach round a pin otherwise. */
    private Optional<SpliceCard> card(OrderLine line, String rope) {
        boolean substitute = line.assembly().ropes().indexOf(rope) > 0;
        Demanded demanded = substitute
                ? new DemandModel(shop.catalogue()).pieces(line.assembly().of(rope))
                : line.demanded();
        return demanded.findCard();
    }

    /** No rope comes out longer than it was cut, but for what fittings reach beyond it and what tension stretches. */
    private static Optional<String> unlikely(Boxes boxes, SpliceCard card, OrderLine line) {
        Written cut = boxes.cut().length();
        if (!cut.exact().isPositive()) {
            return Optional.of("no ledger knows piece " + boxes.piece() + " as cut; say with --cut what it was cut to");
        }
        FineLength most = card.ends().stream()
                .filter(end -> end.kind() == Termination.Kind.FITTING)
                .map(end -> end.eye().flat())
                .reduce(cut.exact(), FineLength::plus);
        Ratio stretched = boxes.how() == How.TENSION
                ? Ratio.ONE.plus(line.assembly().make().measuring().extension())
                : Ratio.ONE;
        return most.times(stretched).compareTo(boxes.cameOut().exact()) < 0
                ? Optional.of("piece " + boxes.piece() + " cannot come out longer than it was cut, " + Words.of(cut)
                        + "; when that was longer, say so with --cut")
                : Optional.empty();
    }

    private Result judged(Boxes boxes, OrderLine line, Outcome wanted) {
        boolean passes = wanted.passes(boxes.cameOut().exact());
        boolean asked = wanted.isJudged() || !boxes.said().equals(Said.NOTHING);
        if ((!passes && !boxes.said().isOfOneOutside()) || (!asked && isFarOff(boxes, wanted))) {
            return new Result.Outside(boxes, wanted);
        }
        String verdict = !boxes.said().equals(Said.NOTHING)
                ? boxes.said().words()
                : wanted.isJudged() ? LookedOver.PASSED : MEASURED;
        MeasuredRows.Row row = row(boxes, line, verdict);
        List<Finding> findings = MeasuredRows.problems(folder, row);
        if (!findings.isEmpty()) {
            return new Result.NotWritten(findings);
        }
        try {
            long event =
                    MeasuredRows.orAsItWas(folder, () -> log.keep(boxes, verdict, () -> MeasuredRows.add(folder, row))
                            .map(Event::number)
                            .orElse(0L));
            return new Result.Booked(boxes, wanted, verdict, event);
        } catch (LedgerException.Refused refused) {
            return new Result.Refused(refused.sentence());
        }
    }

    /** By more than a figure from the bench can be off in earnest, where the order does not say how near it must come. */
    private static boolean isFarOff(Boxes boxes, Outcome wanted) {
        Length was = wanted.length().roundedUp();
        long off = Math.abs(boxes.cameOut().roundedDown().minus(was).mm());
        return off > Math.max(FAR.timesRoundedDown(was.mm()), FAR_ANYHOW_MM);
    }

    private Optional<OrderLine> line(String piece) {
        return shop.orders().stream()
                .filter(line -> line.demanded().pieces().stream()
                        .anyMatch(each -> each.id().equals(piece)))
                .findFirst();
    }

    private static MeasuredRows.Row row(Boxes boxes, OrderLine line, String verdict) {
        Piece piece = line.demanded().pieces().get(0);
        String[] ends = piece.ends().split(" / ", 2);
        Map<String, String> cells = new HashMap<>();
        cells.put("rope", boxes.cut().rope());
        cells.put("end a", ends[0]);
        cells.put("end b", ends.length > 1 ? ends[1] : "");
        cells.put("cut", boxes.cut().length().kept());
        cells.put("finished", boxes.cameOut().kept());
        cells.put("measured", measured(boxes.how(), line));
        cells.put(
                "extension",
                boxes.how() == How.TENSION
                        ? RatioText.exact(line.assembly().make().measuring().extension())
                        : "");
        cells.put("bedded in", "no");
        cells.put("splicer", boxes.by().splicer());
        cells.put(
                "minutes",
                boxes.by().minutes() > 0 ? Integer.toString(boxes.by().minutes()) : "");
        cells.put("day", boxes.day().toString());
        cells.put("note", verdict);
        return new MeasuredRows.Row(boxes.piece(), cells);
    }

    /** In the words of the column {@code measured}. */
    private static String measured(How how, OrderLine line) {
        bitterend.demand.Measuring measuring = line.assembly().make().measuring();
        return switch (measuring.between()) {
            case OUTSIDE -> "outside";
            case CIRCUMFERENCE -> "circumference";
            case FLAT -> "flat";
            case ON_PINS -> how == How.SLACK
                    ? "flat"
                    : "on pin " + LengthText.exact(measuring.pin().asLength());
            case BEARING_POINTS -> how == How.SLACK ? "flat" : "pin to pin";
        };
    }
}
