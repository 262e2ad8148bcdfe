package bitterend.report;

import bitterend.packing.HeldWords;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What stands on the label of a reel, a line each. */
public final class ReelLabel {
    private ReelLabel() {}

    /** @param length what is said of its length behind its rope; may be empty */
    public static List<String> lines(Reel reel, String length) {
        List<String> lines = new ArrayList<>(List.of(reel.id(), reel.rope() + length));
        lines.add("lot " + (reel.lot().isEmpty() ? "not known" : reel.lot()));
        lines.addAll(papers(reel));
        if (reel.custody().isCustomersOwn()) {
            lines.add(reel.custody().owner() + "'s own, order " + reel.custody().order());
        }
        return lines;
    }

    /** The same with what is in its way, its flaws, measured from its working end, and its place. */
    public static List<String> withFlaws(Reel reel, String length, Figures figures) {
        List<String> lines = lines(reel, length);
        lines.addAll(2, inTheWay(reel, figures));
        held(reel, figures).forEach(lines::add);
        flaws(reel, figures).forEach(lines::add);
        if (!reel.where().place().isEmpty()) {
            lines.add("place " + reel.where().place());
        }
        return lines;
    }

    /** That it is not to be cut, or for one order alone, and what of its length cannot be counted on. */
    private static List<String> inTheWay(Reel reel, Figures figures) {
        List<String> lines = new ArrayList<>();
        Reel.Custody custody = reel.custody();
        if (custody.isOnHold()) {
            lines.add("ON HOLD, not to be cut");
        }
        if (custody.isReserved() && !custody.isCustomersOwn()) {
            lines.add("kept for order " + custody.order());
        }
        Reel.Contents contents = reel.contents();
        if (contents.uncertainty().isPositive()) {
            lines.add("may be " + figures.length(contents.uncertainty()) + " shorter");
        }
        if (contents.leadTrim().isPositive()) {
            lines.add(figures.length(contents.leadTrim()) + " of worn end, to be cut off first");
        }
        if (contents.innerWraps().isPositive()) {
            lines.add(figures.length(contents.innerWraps()) + " of inner wraps, not to be used");
        }
        return lines;
    }

    /** What of it is held, whom for and until when. */
    static List<String> held(Reel reel, Figures figures) {
        return reel.custody().held().stream()
                .map(held -> figures.sentence(HeldWords.of(held)))
                .toList();
    }

    /** Its flaws, such as {@code flaw 9.500 m to 9.800 m +/- 0.050 m (chafed)}. */
    static List<String> flaws(Reel reel, Figures figures) {
        return reel.flaws().stream()
                .map(flaw -> "flaw " + stretch(flaw, figures) + (flaw.what().isEmpty() ? "" : " (" + flaw.what() + ")"))
                .toList();
    }

    /** Where a flaw lies, as it was marked: one mark or two, and how far they may be off. */
    static String stretch(Flaw flaw, Figures figures) {
        return figures.length(flaw.from())
                + (flaw.to().equals(flaw.from()) ? "" : " to " + figures.length(flaw.to()))
                + (flaw.uncertainty().isPositive() ? " +/- " + figures.length(flaw.uncertainty()) : "");
    }

    /** Its certificate and its last day, as far as they are stated. */
    static List<String> papers(Reel reel) {
        List<String> parts = new ArrayList<>();
        Reel.Papers papers = reel.papers();
        if (!papers.certificate().isEmpty()) {
            parts.add(("certificate " + papers.certificate() + " " + papers.number()).strip());
        }
        if (!papers.useBy().equals(LocalDate.MAX)) {
            parts.add("use by " + papers.useBy());
        }
        return parts;
    }
}
