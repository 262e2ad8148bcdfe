package bitterend.serve;

import static bitterend.serve.FormField.chosen;
import static bitterend.serve.FormField.ticked;
import static bitterend.serve.FormField.typed;

import bitterend.exchange.Shop;
import bitterend.market.OnOrder;
import bitterend.report.Figures;
import bitterend.serve.FormField.Choice;
import bitterend.stock.Event;
import bitterend.stock.Held;
import bitterend.stock.Movement;
import bitterend.stock.Paid;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The forms of the rack: what may be done with a reel, and the one for a reel that came in. */
final class ReelForms {
    /** Where what is done with a reel is sent. */
    static final String WORK = "/rack/reel";

    /** Where a reel that came in is sent. */
    static final String RECEIVE = "/rack/receive";

    private static final String LENGTH = "23.4 m, 77 ft 6 in";
    private static final String PRICE = "410 or 1.85/m";
    private static final String DAY = "2026-03-05";
    private static final FormField WHY = typed("note", "Why", "");

    private final Shop shop;
    private final Figures figures;
    private final String booking;

    /** @param booking the id of the page that they are on */
    ReelForms(Shop shop, Figures figures, String booking) {
        this.shop = shop;
        this.figures = figures;
        this.booking = booking;
    }

    /**
     * All that may be done with a reel that is there.
     *
     * @param lofts the other lofts of the server
     */
    List<FormView> of(Reel reel, List<String> lofts) {
        List<FormView> forms = new ArrayList<>();
        forms.add(counted(reel));
        forms.add(
                form(reel, "move", "Moved to another place", "Book the place", typed("place", "Place", "bay 3"), WHY));
        forms.add(form(reel, "flaw", "A flaw was found", "Book the flaw", flaws("From the end now outside"), WHY));
        forms.add(corrected(reel));
        forms.add(held(reel));
        if (!reel.custody().held().isEmpty()) {
            forms.add(letGo(reel));
        }
        forms.add(form(reel, "hold", "On hold: nobody cuts it", "Put it on hold", WHY));
        forms.add(form(reel, "release", "Released, or kept for nobody any more", "Release it", WHY));
        forms.add(form(
                reel,
                "split",
                "Split: some of it goes onto a reel of its own",
                "Split it",
                typed("length", "Length taken off", LENGTH),
                typed("to", "Number of the new reel", ""),
                WHY));
        forms.add(form(reel, "rewind", "Wound over: its inner end is outside now", "Book it wound over", WHY));
        forms.add(left(reel, lofts));
        return forms;
    }

    private FormView form(Reel reel, String what, String title, String button, FormField... fields) {
        return new FormView(WORK, what, title, reel.id(), Arrays.asList(fields), button, booking + "-" + what, false);
    }

    private static FormField flaws(String label) {
        return typed("flaw", label, "12 m to 12.5 m: chafed");
    }

    private FormView counted(Reel reel) {
        return form(
                reel,
                "count",
                "Counted or measured: it is so long",
                "Book the length",
                typed("length", "Length", LENGTH),
                typed("uncertainty", "It may be shorter by", "0 m"),
                known().with(Reel.Known.COUNTED.name()),
                WHY);
    }

    private static FormField known() {
        return chosen(
                "known",
                "How it is known",
                Arrays.stream(Reel.Known.values())
                        .map(known -> new Choice(known.name(), known.word()))
                        .toList());
    }

    private FormView corrected(Reel reel) {
        Reel.Papers papers = reel.papers();
        return form(
                reel,
                "correct",
                "Corrected: lot, papers, price or note were written down wrongly",
                "Correct it",
                typed("rope", "Rope, while nothing came off it", "")
                        .offering(ropes())
                        .with(reel.rope()),
                typed("lot", "Lot", "").with(reel.lot()),
                typed("certificate", "Certificate", "").with(papers.certificate()),
                typed("number", "Its number", "").with(papers.number()),
                typed("useBy", "Use by", DAY).with(day(papers.useBy())),
                typed("received", "Received", DAY).with(day(papers.received())),
                typed("reelNote", "What is to be known of it", "")
                        .with(reel.where().note()),
                typed("paid", "Paid for it as it came, without freight; empty: as it was", PRICE),
                typed("freight", "and for bringing it", ""),
                typed("note", "Why it is corrected", ""));
    }

    /** A day as it is typed; empty for none. */
    static String day(LocalDate day) {
        return day.equals(LocalDate.MAX) || day.equals(LocalDate.MIN) ? "" : day.toString();
    }

    private FormView held(Reel reel) {
        return form(
                reel,
                "reserve",
                "Kept for an order or a customer: all of it, or so many metres until a day",
                "Keep it",
                typed("order", "Order", "").offering(orders()),
                typed("customer", "or customer", "").offering(customers()),
                typed("length", "So much of it; empty for all", LENGTH),
                typed("until", "Until", DAY),
                WHY);
    }

    private FormView letGo(Reel reel) {
        return form(
                reel,
                "letgo",
                "Held metres are let go",
                "Let them go",
                chosen(
                        "name",
                        "Held",
                        reel.custody().held().stream()
                                .map(held -> new Choice(held.name(), words(held)))
                                .toList()),
                WHY);
    }

    private String words(Held held) {
        return figures.length(held.length()) + " for " + held.whom() + " until " + held.until();
    }

    private FormView left(Reel reel, List<String> lofts) {
        return form(
                reel,
                "leave",
                "It leaves the rack",
                "Book it gone",
                chosen(
                        "how",
                        "How",
                        List.of(
                                new Choice("", "choose"),
                                new Choice("return", "goes back to its supplier or owner"),
                                new Choice("sell", "sold as it is"),
                                new Choice("condemn", "condemned"),
                                new Choice("send", "sent to another loft"))),
                typed("loft", "Which loft, where it is sent", "").offering(plain(lofts.stream())),
                ticked("sure", "sold although it is past its last day"),
                WHY);
    }

    /**
     * Takes an event of a reel back whole; the last of them first in the list.
     *
     * @param corrected events that put right what was paid for it
     */
    FormView undo(String reel, List<Movement> movements, List<Paid.Corrected> corrected) {
        SortedMap<Long, Choice> events = new TreeMap<>(Comparator.reverseOrder());
        for (Movement movement : movements) {
            events.putIfAbsent(
                    movement.event(),
                    event(movement.event(), movement.entry().kind().word(), movement.who()));
        }
        for (Paid.Corrected each : corrected) {
            Event event = each.event();
            events.putIfAbsent(
                    event.number(),
                    event(event.number(), event.act().kind().word(), event.act().who()));
        }
        return new FormView(
                WORK,
                "undo",
                "Take back what was booked wrongly",
                reel,
                List.of(chosen("event", "Event", List.copyOf(events.values())), WHY),
                "Take it back",
                booking + "-undo",
                false);
    }

    private static Choice event(long number, String what, String who) {
        return new Choice(Long.toString(number), "event " + number + ", " + what + ", " + who);
    }

    /** For a reel that came in. */
    FormView received() {
        return new FormView(
                RECEIVE,
                "receive",
                "A reel came in",
                "",
                List.of(
                        typed("reel", "Number of the reel", ""),
                        typed("onOrder", "Of the order of reels", "").offering(onOrder()),
                        typed("rope", "Rope", "").offering(ropes()),
                        typed("length", "Length, as its label says", LENGTH),
                        known().with(Reel.Known.NOMINAL.name()),
                        typed("tolerance", "May be so much short", "1.5 %"),
                        typed("uncertainty", "or short by a length", ""),
                        typed("lot", "Lot", ""),
                        typed("paid", "Paid for it, without freight", PRICE),
                        typed("freight", "and for bringing it", ""),
                        typed("place", "Place", "").offering(places()),
                        typed("certificate", "Certificate", ""),
                        typed("number", "Its number", ""),
                        typed("useBy", "Use by", DAY),
                        typed("received", "Received; empty for today", DAY),
                        flaws("Flaws, from the end now outside"),
                        typed("leadTrim", "Worn outer end to cut off", "0 m"),
                        typed("innerWraps", "Inner wraps that cannot be used", "0 m"),
                        typed("owner", "Customer, of a customer's own rope", "").offering(customers()),
                        typed("order", "and the order it is for", "").offering(orders()),
                        ticked("part", "a part reel: it has been cut from"),
                        typed("reelNote", "What is to be known of it", ""),
                        WHY),
                "Book it in",
                booking,
                true);
    }

    private List<Choice> ropes() {
        return shop.catalogue().ropes().stream()
                .map(rope -> new Choice(rope.id(), rope.name()))
                .toList();
    }

    private List<Choice> onOrder() {
        return shop.supplies().onOrder().stream().map(this::choice).toList();
    }

    private Choice choice(OnOrder order) {
        return new Choice(
                order.id(),
                order.quantity() + " x " + figures.written(order.written()) + " " + order.rope() + ", expected "
                        + order.expected());
    }

    private List<Choice> orders() {
        return plain(shop.orders().stream()
                .map(line -> line.assembly().ordered().source().order()));
    }

    private List<Choice> customers() {
        return plain(
                shop.orders().stream().map(line -> line.assembly().ordered().customer()));
    }

    private List<Choice> places() {
        return plain(shop.reels().stream().map(reel -> reel.where().place()));
    }

    private static List<Choice> plain(Stream<String> words) {
        return words.filter(each -> !each.isEmpty())
                .distinct()
                .sorted(bitterend.finding.NaturalOrder.IDS)
                .map(each -> new Choice(each, each))
                .toList();
    }
}
