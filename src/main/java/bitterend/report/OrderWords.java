package bitterend.report;

import bitterend.day.OrderChange;
import bitterend.day.OrdersTold;
import bitterend.day.SparePiece;
import bitterend.day.SparePieces.Use;
import bitterend.finding.CommandWord;
import bitterend.measure.Written;
import bitterend.packing.Words;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.stock.Ordered;
import java.util.ArrayList;
import java.util.List;

/** What is said of orders that changed after cutting, and of spare pieces, on every page alike. */
public final class OrderWords {
    private final Figures figures;
    private final String shop;

    /** @param shop the shop folder, as commands name it */
    public OrderWords(Figures figures, String shop) {
        this.figures = figures;
        this.shop = CommandWord.of(shop);
    }

    /** Every change after cutting, then every spare piece. */
    public List<String> first(OrdersTold told) {
        List<String> first = new ArrayList<>(changes(told));
        first.addAll(spares(told));
        return first;
    }

    /** The same as the top of a page; empty when there is nothing to tell. */
    public Document top(OrdersTold told) {
        List<String> first = first(told);
        if (first.isEmpty()) {
            return Document.EMPTY;
        }
        Writing page = new Writing();
        page.heading("Changed after cutting, and spare pieces");
        first.forEach(words -> page.paragraph(words + "."));
        return page.document();
    }

    /** What changed of pieces that are still wanted; the others are spare. */
    List<String> changes(OrdersTold told) {
        return told.changes().stream()
                .filter(change -> !change.isUnwanted())
                .map(this::change)
                .toList();
    }

    List<String> spares(OrdersTold told) {
        return told.spares().stream()
                .map(spare -> spare.piece() + why(spare, told) + spare(spare, told.uses()))
                .toList();
    }

    /** What changed, and what can be done. */
    private String change(OrderChange change) {
        String piece = change.piece() + customer(change.was());
        String length = figures.length(change.length());
        return switch (change.what()) {
            case CANCELLED -> piece + ": its line is cancelled";
            case FEWER -> piece + ": fewer are ordered now";
            case ROPE -> piece + ": ordered in " + change.now().make().rope() + " now, and cut from another rope; "
                    + again(change);
            case TOO_SHORT -> piece + ": " + wasAndIs(change) + "; it takes " + figures.length(change.needed())
                    + " and is cut at " + length + "; " + again(change);
            case CERTIFICATE -> piece + ": ordered with "
                    + Words.certificate(change.now().terms().certificate()) + " now, which its rope does not carry; "
                    + again(change);
            case OWN_ROPE -> piece + ": ordered "
                    + (change.now().terms().ownRope() ? "in the customer's own rope" : "in the shop's rope")
                    + " now, and cut from other rope; " + again(change);
            case LENGTH, ENDS, MEASURING -> piece + ": " + wasAndIs(change) + "; it takes "
                    + figures.length(change.needed()) + " and is cut at " + length + ", long enough; " + keep(change);
            case SET -> piece + ": of " + set(change.was()) + " when it was cut, of " + set(change.now()) + " now; "
                    + keep(change);
        };
    }

    private static String customer(Ordered was) {
        return was.wish().customer().isEmpty() ? "" : " (" + was.wish().customer() + ")";
    }

    private String wasAndIs(OrderChange change) {
        Ordered was = change.was();
        Ordered now = change.now();
        boolean alike = !was.terms().isKept()
                || was.terms().measured().equals(now.terms().measured());
        return "ordered " + make(was) + (alike ? "" : measured(was)) + " when it was cut, " + make(now)
                + (alike ? "" : measured(now)) + " now";
    }

    private String make(Ordered ordered) {
        String finished = ordered.make().finished();
        return Written.parse(finished).value().map(figures::written).orElse(finished) + ", "
                + figures.written(ordered.make().ends());
    }

    private String measured(Ordered ordered) {
        return ", measured " + figures.written(ordered.terms().measured());
    }

    private static String set(Ordered ordered) {
        Ordered.Bond bond = ordered.bond();
        return bond.match().isEmpty() ? "no set" : "set " + bond.set() + ", match " + bond.match();
    }

    private String again(OrderChange change) {
        return "to open it again: " + spareIt(change) + "; to accept it: " + keepIt(change);
    }

    private String keep(OrderChange change) {
        return "to accept it: " + keepIt(change) + "; to open it again: " + spareIt(change);
    }

    private String spareIt(OrderChange change) {
        return "bitterend orders spare " + shop + " " + CommandWord.of(change.piece());
    }

    private String keepIt(OrderChange change) {
        return "bitterend orders keep " + shop + " " + CommandWord.of(change.piece());
    }

    /** Why it is spare, where the order book says so. */
    private static String why(SparePiece spare, OrdersTold told) {
        return customer(spare.ordered())
                + told.changes().stream()
                        .filter(change -> change.isUnwanted() && change.piece().equals(spare.piece()))
                        .map(change -> change.what() == OrderChange.What.FEWER
                                ? ": fewer are ordered now; "
                                : ": its line is cancelled; ")
                        .findFirst()
                        .orElse(": ");
    }

    /** What a spare piece is, and what it could become. */
    private String spare(SparePiece spare, List<Use> uses) {
        String lot = spare.reel().lot().isEmpty() ? "" : ", lot " + spare.reel().lot();
        String what = figures.length(spare.length()) + " of " + spare.reel().rope() + lot;
        return what + "; "
                + uses.stream()
                        .filter(use -> use.spare().piece().equals(spare.piece()))
                        .findFirst()
                        .map(use -> "it fits " + use.piece() + ", " + figures.length(use.surplus())
                                + " to cut off: bitterend orders give " + shop + " " + CommandWord.of(spare.piece())
                                + " "
                                + CommandWord.of(use.piece()))
                        .orElse("to make it a coil: bitterend orders back " + shop + " "
                                + CommandWord.of(spare.piece()));
    }
}
