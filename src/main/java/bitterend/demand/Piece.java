package bitterend.demand;

import bitterend.measure.Length;
import bitterend.measure.LengthsInWords;
import bitterend.measure.Written;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One continuous length of rope to cut.
 *
 * @param pieceId which piece of the order book
 * @param source where it comes from and when it is wanted
 * @param choices the ropes it may be cut from, the ordered one first, each with the cut length on that rope; never empty
 * @param matching which other pieces must come from the same rope
 * @param certificate the kind of certificate the reel must carry; empty when none is asked for
 * @param ownRope whether it must come off the customer's own rope
 * @param finished finished length as the order states it
 * @param ends the two ends in words, as printed beside the cut
 */
public record Piece(
        PieceId pieceId,
        Source source,
        List<RopeChoice> choices,
        Matching matching,
        String certificate,
        boolean ownRope,
        Written finished,
        String ends) {

    public Piece {
        choices = List.copyOf(choices);
        if (choices.isEmpty()) {
            throw new IllegalArgumentException("piece " + pieceId + " has no rope");
        }
    }

    /** A piece outside the order book, as studies make them, known by a text of its own. */
    public Piece(
            String id,
            Source source,
            List<RopeChoice> choices,
            Matching matching,
            String certificate,
            boolean ownRope,
            Length finished,
            String ends) {
        this(
                PieceId.outsideTheBook(id, source),
                source,
                choices,
                matching,
                certificate,
                ownRope,
                Written.worked(finished),
                ends);
    }

    /**
     * The order line behind a piece.
     *
     * @param order order number
     * @param line line within the order
     * @param due day it is wanted; {@link LocalDate#MAX} when none was given
     * @param priority 1 (first) to 9 (last); 5 when none was given
     * @param finishing working days that splicing and finishing take between the cut and the due day; 0 to {@value #MOST_DAYS}
     * @param minutes labour at its ends; 0 where nobody has stated any
     */
    public record Source(String order, String line, LocalDate due, int priority, int finishing, int minutes) {
        /** The most days that finishing may take. */
        public static final int MOST_DAYS = 60;
        /** The most minutes that the ends of a piece may take. */
        public static final int MOST_MINUTES = 100_000;

        public Source {
            if (finishing < 0 || finishing > MOST_DAYS) {
                throw new IllegalArgumentException("finishing from 0 to " + MOST_DAYS + " days: " + finishing);
            }
            if (priority < 1 || priority > 9) {
                throw new IllegalArgumentException("priority from 1 to 9: " + priority);
            }
            if (minutes < 0 || minutes > MOST_MINUTES) {
                throw new IllegalArgumentException("minutes from 0 to " + MOST_MINUTES + ": " + minutes);
            }
        }

        /** Of ends whose minutes nobody has stated. */
        public Source(String order, String line, LocalDate due, int priority, int finishing) {
            this(order, line, due, priority, finishing, 0);
        }

        /** Finished on the day it is cut. */
        public Source(String order, String line, LocalDate due, int priority) {
            this(order, line, due, priority, 0);
        }

        /** The same with what the ends of a piece ask of the bench. */
        public Source timed(int days, int labour) {
            return new Source(order, line, due, priority, days, labour);
        }

        /** {@code ORDER/LINE}, as people name a line. */
        public String lineId() {
            return order + "/" + line;
        }
    }

    /**
     * A rope a piece may be cut from.
     *
     * @param rope id of the rope
     * @param cut cut length on that rope, all allowances in, the cut loss not; positive
     */
    public record RopeChoice(String rope, Length cut) {
        public RopeChoice {
            if (!cut.isPositive()) {
                throw new IllegalArgumentException("cut length must be positive: " + cut);
            }
        }
    }

    /**
     * The matched set a piece belongs to.
     *
     * @param set name of the set, unique in the shop; empty when the piece stands alone
     * @param bond how close the set must stay together
     * @param begun its pieces that are cut already and that the others must match; empty for a set that is not begun
     * @param released that a person let it go on without matching pieces cut before, when, who and why; empty usually
     */
    public record Matching(String set, Bond bond, List<CutMate> begun, String released) {
        public static final Matching NONE = new Matching("", Bond.NONE);

        public Matching {
            begun = List.copyOf(begun);
        }

        /** A set of which nothing is cut. */
        public Matching(String set, Bond bond) {
            this(set, bond, List.of(), "");
        }
    }

    /** How close a matched set must stay together. */
    public enum Bond {
        NONE,
        /** All from one lot of one rope. */
        ONE_LOT,
        /** All off one reel. */
        ONE_REEL
    }

    /** Its id as text, by which the rest of the program knows it. */
    public String id() {
        return pieceId.text();
    }

    public String order() {
        return source.order();
    }

    /** The rope as ordered. */
    public String orderedRope() {
        return choices.get(0).rope();
    }

    /** The cut length on the rope as ordered. */
    public Length cut() {
        return choices.get(0).cut();
    }

    /** The cut length on a rope, if the piece may be cut from it. */
    public Optional<Length> lengthOn(String rope) {
        for (RopeChoice choice : choices) {
            if (choice.rope().equals(rope)) {
                return Optional.of(choice.cut());
            }
        }
        return Optional.empty();
    }

    /** Whether it may be cut from a rope. */
    public boolean isAllowedOn(String rope) {
        for (RopeChoice choice : choices) {
            if (choice.rope().equals(rope)) {
                return true;
            }
        }
        return false;
    }

    /** Whether its ends are those of another, however their lengths are written. */
    public boolean hasEndsOf(Piece other) {
        return LengthsInWords.exact(ends).equals(LengthsInWords.exact(other.ends));
    }

    public boolean isMatched() {
        return matching.bond() != Bond.NONE;
    }

    /** The same piece of a set of which some pieces are cut. */
    public Piece begunWith(List<CutMate> mates, String released) {
        Matching begun = new Matching(matching.set(), matching.bond(), mates, released);
        return new Piece(pieceId, source, choices, begun, certificate, ownRope, finished, ends);
    }

    /** The same piece with what its ends ask of the bench: working days of finishing, minutes of labour. */
    public Piece timed(int days, int minutes) {
        return new Piece(pieceId, source.timed(days, minutes), choices, matching, certificate, ownRope, finished, ends);
    }

    /** The same piece, to be cut from the first of these ropes, or from another of them; none is the customer's own. */
    public Piece onAnyOf(List<RopeChoice> ropes) {
        return new Piece(pieceId, source, ropes, matching, certificate, false, finished, ends);
    }
}
