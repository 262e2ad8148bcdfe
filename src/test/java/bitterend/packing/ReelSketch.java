package bitterend.packing;

import bitterend.measure.Length;
import bitterend.stock.Flaw;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A reel for a test, plain until told otherwise: a free part reel of one sound run, lot not known. */
public final class ReelSketch {
    private final String id;
    private final long mm;
    private final List<Flaw> flaws = new ArrayList<>();
    private String rope = Sketch.ROPE;
    private String lot = "";
    private String certificate = "";
    private LocalDate useBy = LocalDate.MAX;
    private LocalDate received = LocalDate.MIN;
    private Reel.Custody custody = Reel.Custody.FREE;
    private boolean full;
    private long lessMm;

    private ReelSketch(String id, long mm) {
        this.id = id;
        this.mm = mm;
    }

    public static ReelSketch reel(String id, long mm) {
        return new ReelSketch(id, mm);
    }

    public ReelSketch of(String otherRope) {
        rope = otherRope;
        return this;
    }

    public ReelSketch lot(String number) {
        lot = number;
        return this;
    }

    public ReelSketch flaw(long fromMm, long toMm) {
        flaws.add(new Flaw(new Length(fromMm), new Length(toMm), Length.ZERO, "join"));
        return this;
    }

    public ReelSketch certificate(String kind) {
        certificate = kind;
        return this;
    }

    public ReelSketch useBy(LocalDate day) {
        useBy = day;
        return this;
    }

    public ReelSketch received(LocalDate day) {
        received = day;
        return this;
    }

    public ReelSketch full() {
        full = true;
        return this;
    }

    /** It may be so much shorter. */
    public ReelSketch uncertain(long byMm) {
        lessMm = byMm;
        return this;
    }

    public ReelSketch onHold() {
        custody = new Reel.Custody("", Reel.State.ON_HOLD, "");
        return this;
    }

    public ReelSketch reservedFor(String order) {
        custody = new Reel.Custody("", Reel.State.RESERVED, order);
        return this;
    }

    public ReelSketch ownedBy(String customer, String order) {
        custody = new Reel.Custody(customer, Reel.State.FREE, order);
        return this;
    }

    /** So much of it for an order until a day, behind what is held already. */
    public ReelSketch held(long metres, String order, LocalDate until) {
        List<Held> all = new ArrayList<>(custody.held());
        all.add(new Held(new Length(metres * 1000), Held.For.ORDER, order, until, ""));
        custody = custody.holding(all);
        return this;
    }

    public Reel reel() {
        Reel.Contents contents =
                new Reel.Contents(new Length(mm), new Length(lessMm), Length.ZERO, Length.ZERO, Reel.Known.METERED);
        Reel.Papers papers = new Reel.Papers(certificate, certificate.isEmpty() ? "" : "1", useBy, received);
        return new Reel(id, rope, lot, contents, flaws, papers, custody, full, Reel.Where.UNKNOWN);
    }
}
