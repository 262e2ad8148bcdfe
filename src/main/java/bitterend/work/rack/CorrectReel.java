package bitterend.work.rack;

import bitterend.exchange.Settings;
import bitterend.exchange.Shop;
import bitterend.measure.MoneyText;
import bitterend.stock.Paid;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Corrects what was written down wrongly of a reel. A length is no such thing: that is counted anew. */
public final class CorrectReel {
    private final RackDesk desk;

    public CorrectReel(RackDesk desk) {
        this.desk = desk;
    }

    /**
     * What is corrected; what is null stays.
     *
     * @param rope its rope, as long as nothing came off it
     * @param lot production run
     * @param papers what came with it
     * @param note what is to be known of it
     * @param paid what was paid for it, as it came
     */
    public record Correction(
            @Nullable RopeOf rope, @Nullable String lot, Papers papers, @Nullable String note, Paid paid) {}

    /**
     * A rope that a reel is said to be of.
     *
     * @param id its id
     * @param shop the shop that must have it
     */
    public record RopeOf(String id, Shop shop) {
        private boolean isThere() {
            return shop.catalogue().findRope(id).isPresent();
        }
    }

    /**
     * What came with a reel; what is null stays.
     *
     * @param certificate kind of certificate
     * @param number its number
     * @param useBy last day to cut it; {@link LocalDate#MAX} for none
     * @param received the day it came
     */
    public record Papers(
            @Nullable String certificate,
            @Nullable String number,
            @Nullable LocalDate useBy,
            @Nullable LocalDate received) {}

    /**
     * What became of it.
     *
     * @param booking what was booked, or why nothing was
     * @param warnings what the lot looks like that is there, in a sentence
     */
    public record Outcome(Booking booking, List<String> warnings) {
        public Outcome {
            warnings = List.copyOf(warnings);
        }
    }

    /** Books it, or says why not. */
    public Outcome correct(String reel, Correction correction) {
        RopeOf rope = correction.rope();
        if (rope != null && !rope.isThere()) {
            return new Outcome(new Booking.Refused("there is no rope " + rope.id() + " in ropes.json"), List.of());
        }
        String lot = correction.lot();
        List<String> warnings = lot == null
                ? List.of()
                : new LookAlikes(desk.at()).lotOf(reel, lot).stream().toList();
        return new Outcome(booked(reel, correction), warnings);
    }

    private Booking booked(String reel, Correction correction) {
        Changes changes = new Changes();
        AskRack rack = new AskRack(desk.at());
        Paid paid = correction.paid();
        Optional<Paid.OfReel> before = paid.equals(Paid.NOT_SAID) ? Optional.empty() : rack.paid(reel);
        Booking booking = desk.rack(each -> each.correct(new bitterend.stock.Correction(
                reel,
                old -> changes.made(old, correction),
                paid,
                () -> String.join("; ", changes.words),
                desk.note())));
        return booking instanceof Booking.Booked booked && !paid.equals(Paid.NOT_SAID)
                ? new Booking.Booked(
                        booked.event(),
                        PaidTold.corrected(
                                before.map(Paid.OfReel::paid).orElse(Paid.NOT_SAID), rack.paid(reel), money()))
                : booking;
    }

    private MoneyText money() {
        return desk.at().settings().map(Settings::money).orElse(MoneyText.NO_CURRENCY);
    }

    /** What changes, in words. */
    private static final class Changes {
        private final List<String> words = new ArrayList<>();

        Reel made(Reel old, Correction correction) {
            Reel.Papers papers = old.papers();
            Papers said = correction.papers();
            RopeOf rope = correction.rope();
            return new Reel(
                            old.id(),
                            changed("rope", old.rope(), rope == null ? null : rope.id()),
                            changed("lot", old.lot(), correction.lot()),
                            old.contents(),
                            old.flaws(),
                            new Reel.Papers(
                                    changed("certificate", papers.certificate(), said.certificate()),
                                    changed("certificate number", papers.number(), said.number()),
                                    changed("use by", papers.useBy(), said.useBy()),
                                    changed("received", papers.received(), said.received())),
                            old.custody(),
                            old.full(),
                            old.where())
                    .withWhere(new Reel.Where(
                            old.where().place(),
                            old.where().mass(),
                            old.where().draw(),
                            changed("note", old.where().note(), correction.note())));
        }

        private <T> T changed(String name, T old, @Nullable T other) {
            if (other == null || other.equals(old)) {
                return old;
            }
            words.add(name + " " + word(old) + " -> " + word(other));
            return other;
        }

        private static String word(Object value) {
            boolean none = value.equals(LocalDate.MAX) || value.equals(LocalDate.MIN) || value.equals("");
            return none ? "none" : value.toString();
        }
    }
}
