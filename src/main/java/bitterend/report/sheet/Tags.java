package bitterend.report.sheet;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.report.Figures;
import bitterend.report.PlanView;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The tags of a plan: one for every piece, and one for every assembly that is made of several. */
final class Tags {
    private final PlanView view;
    private final Figures figures;

    Tags(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
    }

    List<Tag> all() {
        Map<String, Piece> pieces = view.pieces();
        List<Tag> tags = new ArrayList<>();
        Map<String, List<Piece>> legs = new TreeMap<>(NaturalOrder.IDS);
        for (ReelDraw draw : view.plan().draws()) {
            for (Cut cut : draw.cuts()) {
                Piece piece = pieces.get(cut.piece());
                if (piece == null) {
                    throw new IllegalArgumentException("no piece " + cut.piece());
                }
                tags.add(piece(piece, cut, draw));
                assembly(piece).ifPresent(name -> legs.computeIfAbsent(name, key -> new ArrayList<>())
                        .add(piece));
            }
        }
        legs.forEach((name, parts) -> tags.add(assembly(name, parts)));
        return tags;
    }

    private Tag piece(Piece piece, Cut cut, ReelDraw draw) {
        Reel reel = view.reel(draw);
        List<String> lines = new ArrayList<>();
        lines.add("reel " + reel.id() + (reel.lot().isEmpty() ? "" : ", lot " + reel.lot()));
        if (!reel.papers().certificate().isEmpty()) {
            lines.add("certificate "
                    + (reel.papers().certificate() + " " + reel.papers().number()).strip());
        }
        lines.add(order(piece));
        lines.add(view.rope(draw).name());
        lines.add(piece.ends());
        String measure = "cut " + figures.length(cut.length()) + ", finished " + figures.length(piece.finished());
        return new Tag(piece.id(), "piece", measure, lines, QrCode.of(code(piece, cut, reel)));
    }

    private static String code(Piece piece, Cut cut, Reel reel) {
        return "piece " + piece.id() + " reel " + reel.id() + " lot " + reel.lot() + " cut "
                + cut.length().mm() + " mm";
    }

    private static Tag assembly(String name, List<Piece> parts) {
        Piece first = parts.get(0);
        List<String> ids = parts.stream().map(Piece::id).toList();
        List<String> lines = List.of(parts.size() + " legs: " + String.join(", ", ids), first.ends());
        return new Tag(name, "assembly", order(first), lines, QrCode.of("assembly " + name + "; legs " + parts.size()));
    }

    /** The serial of the assembly a leg belongs to: {@code 1041/3.2} of {@code 1041/3.2-1}. */
    private static Optional<String> assembly(Piece piece) {
        String line = piece.order() + "/" + piece.source().line() + ".";
        int leg = piece.id().lastIndexOf('-');
        return piece.id().startsWith(line) && leg > line.length()
                ? Optional.of(piece.id().substring(0, leg))
                : Optional.empty();
    }

    private static String order(Piece piece) {
        LocalDate due = piece.source().due();
        return "order " + piece.order() + ", line " + piece.source().line()
                + (due.equals(LocalDate.MAX) ? "" : ", due " + due);
    }
}
