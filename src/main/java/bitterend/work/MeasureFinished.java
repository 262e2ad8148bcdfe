package bitterend.work;

import bitterend.demand.Piece;
import bitterend.demand.SpliceCard;
import bitterend.demand.SpliceCard.How;
import bitterend.demand.SpliceCard.Outcome;
import bitterend.exchange.MeasuredRows;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.finding.Finding;
import bitterend.finding.Nearest;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.RatioText;
import bitterend.stock.LedgerException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Books what the boxes of a splice card say: what a piece was cut to, what it came out at, how that was measured, by whom. It
 * becomes a row of {@code measured.csv}, from which take-up is learned. A piece outside of what passes is booked only with a
 * word on what becomes of it.
 */
public final class MeasureFinished {
    static final String PASSED = "passed";
    private static final String MEASURED = "measured";

    private final Path folder;
    private final Shop shop;
    private final FinishedLog log;

    /**
     * @param folder the shop folder
     * @param shop what is in it
     * @param log where it is kept that a piece is made
     */
    public MeasureFinished(Path folder, Shop shop, FinishedLog log) {
        this.folder = folder;
        this.shop = shop;
        this.log = log;
    }

    /**
     * The boxes of one piece.
     *
     * @param piece its id
     * @param cut what it was cut to
     * @param cameOut what it measures when it is made
     * @param how how that was measured
     * @param splicer who made it; empty when not noted
     * @param day when
     * @param said what becomes of a piece that does not pass; {@link Said#NOTHING} for one that does
     */
    public record Boxes(String piece, Length cut, Length cameOut, How how, String splicer, LocalDate day, Said said) {}

    /**
     * What was decided about a piece.
     *
     * @param word {@code accepted}, {@code respliced} or {@code spoiled}; empty for nothing
     * @param by who decided; empty unless it was accepted
     */
    public record Said(String word, String by) {
        static final String ACCEPTED = "accepted";
        public static final Said NOTHING = new Said("", "");
        public static final Said RESPLICED = new Said("to be respliced", "");
        public static final Said SPOILED = new Said("spoiled", "");

        public static Said accepted(String by) {
            return new Said(ACCEPTED, by);
        }

        boolean isNothing() {
            return word.isEmpty();
        }

        String words() {
            return by.isEmpty() ? word : word + " by " + by;
        }
    }

    /** What became of it. */
    public sealed interface Result {
        /**
         * It is a row of the file.
         *
         * @param wanted what it was compared with
         * @param verdict {@code passed}, {@code measured} where nothing was asked, or what was said
         */
        record Booked(Boxes boxes, Outcome wanted, String verdict) implements Result {}

        /** It does not pass, and nobody said what becomes of it; nothing was written. */
        record Outside(Boxes boxes, Outcome wanted) implements Result {}

        /** It cannot be booked so; nothing was written. */
        record Refused(String why) implements Result {}

        /** The file cannot take it; nothing was written. */
        record NotWritten(List<Finding> findings) implements Result {}
    }

    /** Books the boxes. */
    public Result book(Boxes boxes) {
        Optional<OrderLine> line = line(boxes.piece());
        Optional<SpliceCard> card = line.flatMap(found -> found.demanded().findCard());
        if (line.isEmpty() || card.isEmpty()) {
            List<String> known = shop.pieces().stream().map(Piece::id).toList();
            return new Result.Refused("no order asks for piece " + boxes.piece() + Nearest.hint(boxes.piece(), known));
        }
        Optional<Outcome> wanted = card.get().find(boxes.how());
        if (wanted.isEmpty()) {
            return new Result.Refused("the order of " + boxes.piece() + " names no "
                    + (boxes.how() == How.PINS ? "pin" : "tension") + " to measure it with; measure it slack");
        }
        if (boxes.cut().isShorterThan(boxes.cameOut())) {
            return new Result.Refused("piece " + boxes.piece() + " cannot come out longer than it was cut");
        }
        boolean passes = wanted.get().passes(boxes.cameOut().fine());
        if (!passes && boxes.said().isNothing()) {
            return new Result.Outside(boxes, wanted.get());
        }
        String verdict =
                !boxes.said().isNothing() ? boxes.said().words() : wanted.get().isJudged() ? PASSED : MEASURED;
        MeasuredRows.Row row = row(boxes, line.get(), verdict);
        List<Finding> findings = MeasuredRows.problems(folder, row);
        if (!findings.isEmpty()) {
            return new Result.NotWritten(findings);
        }
        try {
            log.keep(boxes, verdict, () -> MeasuredRows.add(folder, row));
            return new Result.Booked(boxes, wanted.get(), verdict);
        } catch (LedgerException.Refused refused) {
            return new Result.Refused(refused.sentence());
        }
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
        cells.put("rope", line.assembly().ropes().get(0));
        cells.put("end a", ends[0]);
        cells.put("end b", ends.length > 1 ? ends[1] : "");
        cells.put("cut", LengthText.exact(boxes.cut()));
        cells.put("finished", LengthText.exact(boxes.cameOut()));
        cells.put("measured", measured(boxes.how(), line));
        cells.put(
                "extension",
                boxes.how() == How.TENSION
                        ? RatioText.exact(line.assembly().make().measuring().extension())
                        : "");
        cells.put("bedded in", "no");
        cells.put("splicer", boxes.splicer());
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
