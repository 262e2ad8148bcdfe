package bitterend.packing;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.demand.Piece.Matching;
import bitterend.demand.Piece.RopeChoice;
import bitterend.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A piece for a test, plain until told otherwise: no due date, priority 5, no set, no certificate. */
public final class PieceSketch {
    private final String id;
    private final List<RopeChoice> choices = new ArrayList<>();
    private String order = "A";
    private LocalDate due = LocalDate.MAX;
    private int priority = 5;
    private int finishing;
    private int minutes;
    private Matching matching = Matching.NONE;
    private String certificate = "";
    private boolean ownRope;

    private PieceSketch(String id) {
        this.id = id;
    }

    public static PieceSketch piece(String id, long mm) {
        return new PieceSketch(id).or(Sketch.ROPE, mm);
    }

    public static PieceSketch ofRope(String id, String rope, long mm) {
        return new PieceSketch(id).or(rope, mm);
    }

    /** Another rope it may be cut from. */
    public PieceSketch or(String rope, long mm) {
        choices.add(new RopeChoice(rope, new Length(mm)));
        return this;
    }

    public PieceSketch order(String number) {
        order = number;
        return this;
    }

    public PieceSketch due(LocalDate day) {
        due = day;
        return this;
    }

    /** Working days between the cut and the due day. */
    public PieceSketch finishing(int days) {
        finishing = days;
        return this;
    }

    /** Labour at its ends. */
    public PieceSketch minutes(int labour) {
        minutes = labour;
        return this;
    }

    public PieceSketch priority(int number) {
        priority = number;
        return this;
    }

    public PieceSketch set(String name, Bond bond) {
        matching = new Matching(name, bond);
        return this;
    }

    /** A set of which one piece is cut already. */
    public PieceSketch begun(String name, Bond bond, String cut, String lot, String... reels) {
        matching = new Matching(name, bond, List.of(new CutMate(cut, Sketch.ROPE, lot, List.of(reels))), "");
        return this;
    }

    public PieceSketch certificate(String kind) {
        certificate = kind;
        return this;
    }

    public PieceSketch ownRope() {
        ownRope = true;
        return this;
    }

    public String id() {
        return id;
    }

    Piece piece() {
        Length cut = choices.get(0).cut();
        Piece.Source source = new Piece.Source(order, "1", due, priority, finishing, minutes);
        return new Piece(id, source, choices, matching, certificate, ownRope, cut, "plain, plain");
    }
}
