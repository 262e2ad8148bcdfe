package bitterend.serve;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.report.DueWords;
import bitterend.report.EndsInWords;
import bitterend.report.Fact;
import bitterend.report.Figures;
import bitterend.report.PlanView;
import bitterend.report.RowWords;
import bitterend.report.sheet.Row;
import bitterend.work.plans.AskMates;
import bitterend.work.plans.AskMates.Mate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** The cuts of a reel that are still to be made, and what is said of each to who cuts. */
final class CutsToMake {
    private final PlanView view;
    private final Figures figures;
    private final RowWords words;
    private final AskMates mates;
    private final CutCards cards;

    CutsToMake(PlanView view, Figures figures, AskMates mates, CutCards cards) {
        this.cards = cards;
        this.view = view;
        this.figures = figures;
        this.mates = mates;
        words = new RowWords(view, figures);
    }

    /** Of these rows, but for what is cut: the next one first, each with the one before it. */
    List<NextCut> of(String reel, List<Row> rows, Set<String> cut) {
        List<NextCut> still = new ArrayList<>();
        String before = "";
        for (Row row : rows) {
            if (row.isCut()) {
                String piece = row.mark().piece();
                if (!cut.contains(piece)) {
                    still.add(next(
                            reel,
                            row,
                            before,
                            Objects.requireNonNull(view.pieces().get(piece), piece)));
                }
                before = piece;
            }
        }
        return still;
    }

    private NextCut next(String reel, Row row, String before, Piece piece) {
        List<String> others = mates(reel, piece);
        return new NextCut(
                row,
                before,
                figures.written(EndsInWords.of(piece.ends())),
                facts(piece),
                others.isEmpty() ? "" : set(piece.matching()),
                others,
                cards.of(piece.id()));
    }

    private List<Fact> facts(Piece piece) {
        LocalDate due = piece.source().due();
        List<Fact> facts = new ArrayList<>();
        add(facts, "customer", words.customer(piece));
        add(facts, "due", due.equals(LocalDate.MAX) ? "" : DueWords.named(due));
        add(facts, "of its line", words.ofHowMany(piece));
        add(facts, "note", words.note(piece));
        return facts;
    }

    private static void add(List<Fact> facts, String label, String value) {
        if (!value.isEmpty()) {
            facts.add(new Fact(label, value));
        }
    }

    private static String set(Piece.Matching matching) {
        return "Set " + matching.set() + (matching.bond() == Bond.ONE_REEL ? ", all off one reel" : ", all of one lot");
    }

    private List<String> mates(String here, Piece piece) {
        Map<String, List<String>> byPlace = new LinkedHashMap<>();
        for (Mate mate : mates.of(piece)) {
            byPlace.computeIfAbsent(where(mate, here), place -> new ArrayList<>())
                    .add(mate.piece());
        }
        return byPlace.entrySet().stream()
                .map(place -> place.getValue().stream().collect(Collectors.joining(", ", "", ": " + place.getKey())))
                .toList();
    }

    private static String where(Mate mate, String here) {
        String reel = mate.reel().equals(here)
                ? "this reel"
                : "reel " + mate.reel() + (mate.lot().isEmpty() ? ", lot not known" : ", lot " + mate.lot());
        return switch (mate.state()) {
            case CUT -> "cut off " + reel;
            case TO_BE_CUT -> "to be cut off " + reel;
            case OPEN -> "not cut, and not in this plan";
        };
    }
}
