package bitterend.report;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is said in the row of a mark, and on the tag of a piece: all that concerns it, nothing that concerns others. */
public final class RowWords {
    private final PlanView view;
    private final ReelWords reels;
    private final Map<String, List<FirstArticle>> firsts = new HashMap<>();
    private final Map<String, List<String>> waits = new HashMap<>();
    private final Map<String, Map<String, List<String>>> sets = new HashMap<>();

    public RowWords(PlanView view, Figures figures) {
        this.view = view;
        reels = new ReelWords(view, figures);
        Map<String, String> reelOf = new HashMap<>();
        for (ReelDraw draw : view.wholePlan()) {
            draw.cuts().forEach(cut -> reelOf.put(cut.piece(), draw.reel()));
            draw.cuts().stream()
                    .map(Cut::piece)
                    .map(this::piece)
                    .filter(Piece::isMatched)
                    .forEach(piece -> sets.computeIfAbsent(piece.matching().set(), set -> new TreeMap<>())
                            .computeIfAbsent(draw.reel(), reel -> new ArrayList<>())
                            .add(piece.id()));
        }
        for (FirstArticle first : FirstArticle.of(view)) {
            firsts.computeIfAbsent(first.piece(), id -> new ArrayList<>()).add(first);
            waits(first, reelOf);
        }
    }

    /**
     * The words of a row.
     *
     * @param urgent what must be read before the cut: what to measure first, who must help
     * @param wanted who wants the piece and when, and what the order says besides; empty where that is not known
     * @param plain the ends and the rest
     */
    public record Words(List<String> urgent, String wanted, List<String> plain) {
        public Words {
            urgent = List.copyOf(urgent);
            plain = List.copyOf(plain);
        }

        /** One under another. */
        public List<String> lines() {
            return Stream.of(urgent, wanted.isEmpty() ? List.<String>of() : List.of(wanted), plain)
                    .flatMap(List::stream)
                    .toList();
        }

        /** The same where the row above says who wants it. */
        public Words under(Words above) {
            return wanted.equals(above.wanted) ? new Words(urgent, "", plain) : this;
        }
    }

    /** Of a mark on this reel. */
    public Words of(ReelDraw draw, Mark mark) {
        String said = reels.of(draw, mark);
        if (mark.kind() != Mark.Kind.CUT) {
            return new Words(List.of(), "", List.of(said));
        }
        Piece piece = piece(mark.piece());
        List<String> urgent = new ArrayList<>(stop(piece));
        urgent.addAll(waits.getOrDefault(piece.id(), List.of()));
        String heavy = reels.heavy(draw, mark.length());
        if (!heavy.isEmpty()) {
            urgent.add(heavy);
        }
        List<String> plain = new ArrayList<>(List.of(said));
        plain.addAll(set(draw, piece));
        return new Words(urgent, wanted(piece), plain);
    }

    /** {@code Stop: splice and measure this one first, 7 more with bury-eye wait}; none for most pieces. */
    private List<String> stop(Piece piece) {
        return firsts.getOrDefault(piece.id(), List.of()).stream()
                .map(first -> "Stop: splice and measure this one first, " + (first.pieces() - 1) + " more with "
                        + first.termination() + (first.pieces() == 2 ? " waits" : " wait"))
                .toList();
    }

    /** In the row of the first piece of a reel that waits for a first article on another reel. */
    private void waits(FirstArticle first, Map<String, String> reelOf) {
        String home = reelOf.get(first.piece());
        Map<String, List<String>> waiting = first.all().stream()
                .collect(Collectors.groupingBy(
                        piece -> Objects.requireNonNull(reelOf.get(piece), piece),
                        LinkedHashMap::new,
                        Collectors.toList()));
        waiting.forEach((reel, pieces) -> {
            if (!reel.equals(home)) {
                waits.computeIfAbsent(pieces.get(0), id -> new ArrayList<>())
                        .add("Stop: wait until " + first.piece() + " off reel " + home + " is spliced and measured; "
                                + pieces.size() + " here with " + first.termination()
                                + (pieces.size() == 1 ? " waits" : " wait"));
            }
        });
    }

    /** {@code for ketch Brambling, due 2026-03-03: jib sheets, a pair}; empty where nothing is known. */
    private String wanted(Piece piece) {
        String due = due(piece);
        String who = Stream.of(customer(piece).isEmpty() ? "" : "for " + customer(piece), due)
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        String note = note(piece);
        return who.isEmpty() || note.isEmpty() ? who + note : who + ": " + note;
    }

    private static String due(Piece piece) {
        LocalDate due = piece.source().due();
        return due.equals(LocalDate.MAX) ? "" : "due " + due;
    }

    /** Who ordered it; empty where that is not stated. */
    public String customer(Piece piece) {
        WorkLine line = view.byId().lines().get(piece.id());
        return line == null ? "" : line.ordered().customer();
    }

    /** What the order says of it besides, in its own words; may be empty. */
    public String note(Piece piece) {
        WorkLine line = view.byId().lines().get(piece.id());
        return line == null ? "" : line.ordered().note();
    }

    /** {@code 3 of 6}: which piece of its line it is; empty for one that has none like it. */
    public String ofHowMany(Piece piece) {
        WorkLine line = view.byId().lines().get(piece.id());
        List<String> ids = (line == null
                        ? view.problem().pieces().stream()
                                .filter(other -> other.source().equals(piece.source()))
                        : line.demanded().pieces().stream())
                .map(Piece::id)
                .toList();
        return ids.size() < 2 ? "" : ids.indexOf(piece.id()) + 1 + " of " + ids.size();
    }

    /** Where else pieces of its matched set come from: other reels of this plan, and what is cut already. */
    public List<String> set(ReelDraw draw, Piece piece) {
        String set = piece.matching().set();
        List<String> others = new ArrayList<>();
        sets.getOrDefault(set, Map.of()).forEach((reel, pieces) -> {
            if (!reel.equals(draw.reel())) {
                others.add(Brief.named(pieces) + " off reel " + reel);
            }
        });
        String cut = piece.matching().begun().stream().map(CutMate::piece).collect(Collectors.joining(", "));
        if (!cut.isEmpty()) {
            others.add(cut + " cut before");
        }
        return others.isEmpty() ? List.of() : List.of("set " + set + ": " + String.join("; ", others));
    }

    private Piece piece(String id) {
        return Objects.requireNonNull(view.pieces().get(id), id);
    }
}
