package bitterend.report.sheet;

import bitterend.catalogue.Rope;
import bitterend.catalogue.Termination.Kind;
import bitterend.demand.Assembly;
import bitterend.demand.CodeInForce;
import bitterend.demand.Derivation;
import bitterend.demand.Piece;
import bitterend.demand.SpliceCard;
import bitterend.demand.SpliceCard.How;
import bitterend.finding.Finding;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.report.BenchMarks;
import bitterend.report.Cautions;
import bitterend.report.Fact;
import bitterend.report.Figures;
import bitterend.report.LengthsPage;
import bitterend.report.PlanView;
import bitterend.report.sheet.CardSheet.EndBlock;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The splice cards of a plan: one for each order line that it cuts, those cut first in front. */
final class Cards {
    private final PlanView view;
    private final Figures figures;
    private final Map<String, Drawn> drawn = new LinkedHashMap<>();

    /** A piece that the plan cuts. */
    private record Drawn(Cut cut, ReelDraw draw) {}

    Cards(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
        for (ReelDraw draw : view.draws()) {
            draw.cuts().forEach(cut -> drawn.put(cut.piece(), new Drawn(cut, draw)));
        }
    }

    List<CardSheet> of(List<CardWork> work) {
        Map<String, CardWork> byPiece = new LinkedHashMap<>();
        work.forEach(line -> line.demanded().pieces().forEach(piece -> byPiece.put(piece.id(), line)));
        List<CardWork> inOrder = drawn.keySet().stream()
                .filter(byPiece::containsKey)
                .map(byPiece::get)
                .distinct()
                .toList();
        List<CardSheet> cards = new ArrayList<>();
        inOrder.forEach(line -> card(line).ifPresent(card -> cards.add(card(line, card))));
        return cards;
    }

    private CardSheet card(CardWork line, SpliceCard card) {
        List<Piece> pieces = line.demanded().pieces().stream()
                .filter(piece -> drawn.containsKey(piece.id()))
                .toList();
        List<BenchMarks> marks = line.demanded().layouts().stream()
                .map(layout -> BenchMarks.of(layout, figures))
                .toList();
        Drawn first = drawnAs(pieces.get(0));
        List<EndBlock> ends = notTwice(new EndBlocks(line.demanded(), figures).all());
        List<String> notes = new ArrayList<>(notes(line, first.draw()));
        notes.addAll(warnings(line, ends));
        return new CardSheet(
                title(line.assembly()),
                order(line, pieces),
                rope(view.rope(first.draw())),
                lengths(line.assembly().make(), card),
                pieces.stream().map(this::cut).toList(),
                notes,
                view.beforeCut(first.draw()).words(),
                fetch(line),
                new CardDrawer(
                                card,
                                marks,
                                figures,
                                figures.written(line.assembly().make().finished()))
                        .drawing(),
                ends,
                ways(card),
                booking(card, pieces.get(0)));
    }

    /** What was warned of when the line was ordered, and who accepted it, unless its ends say so themselves. */
    private List<String> warnings(CardWork line, List<EndBlock> ends) {
        String said = ends.stream()
                .flatMap(end -> Stream.concat(end.counts().stream(), Stream.of(end.caution())))
                .collect(Collectors.joining("\n"));
        return Cautions.forTheBench(line.demanded().findings().stream()
                .map(warning -> warning.in(figures.units()))
                .filter(warning -> !warning.isError() && !isIn(said, warning))
                .toList());
    }

    private static boolean isIn(String said, Finding warning) {
        int comma = warning.found().indexOf(", ");
        return said.contains(warning.expected().split(";", 2)[0])
                || (comma > 0 && said.contains(warning.found().substring(comma + 2)));
    }

    /** What is counted at the second end as at the first is not said again. */
    private static List<EndBlock> notTwice(List<EndBlock> ends) {
        return ends.stream()
                .map(end -> end.equals(ends.get(0)) ? end : end.after(ends.get(0)))
                .toList();
    }

    /** The ways in which it can be measured: round no pin where it has no eye and no fitting. */
    private static List<How> ways(SpliceCard card) {
        boolean pins = card.ends().stream().anyMatch(end -> end.eye().flat().isPositive() && !isRing(end));
        return Stream.of(How.values())
                .filter(how -> card.find(how).isPresent() && (how != How.PINS || pins))
                .toList();
    }

    private static boolean isRing(SpliceCard.End end) {
        return end.kind() == Kind.GROMMET;
    }

    private String booking(SpliceCard card, Piece piece) {
        String judged =
                (card.ordered().isJudged() ? "Outside of what passes: accepted by name, respliced, or spoiled. " : "");
        return judged + "To book a row, with what is in its boxes: bitterend measure " + shop() + " " + piece.id()
                + " --cut ... --came-out ... --how "
                + ways(card).stream().map(How::word).collect(Collectors.joining("|")) + " --splicer ... --minutes ...";
    }

    /** The shop folder, where the cards are of one. */
    private String shop() {
        return view.mark().folder().isEmpty() ? "." : view.mark().folder();
    }

    private Drawn drawnAs(Piece piece) {
        Drawn found = drawn.get(piece.id());
        if (found == null) {
            throw new IllegalArgumentException("not planned: " + piece.id());
        }
        return found;
    }

    private static String title(Assembly assembly) {
        Piece.Source source = assembly.ordered().source();
        String part = assembly.membership().part();
        return source.order() + ", line " + source.line() + (part.isEmpty() ? "" : ", " + part);
    }

    private static List<Fact> order(CardWork line, List<Piece> pieces) {
        Assembly.Ordered ordered = line.assembly().ordered();
        LocalDate due = ordered.source().due();
        List<Fact> facts = new ArrayList<>();
        add(facts, "for", ordered.customer());
        add(facts, "due", due.equals(LocalDate.MAX) ? "" : due.toString());
        add(facts, "product", ordered.product());
        add(facts, "use", use(line.assembly().terms().use()));
        add(facts, "note", ordered.note());
        int rings = ordered.pieces();
        add(facts, "rings", card(line).filter(Cards::isRing).isPresent() ? Integer.toString(rings) : "");
        String legs = ordered.legs() > 1 ? ", " + ordered.legs() + " legs each" : "";
        add(facts, "pieces", pieces.size() + " of " + line.demanded().pieces().size() + " in this plan" + legs);
        add(facts, "set", line.assembly().terms().matching().set());
        code(line).map(CodeInForce::words).ifPresent(words -> add(facts, "code", words));
        return facts;
    }

    private static String use(Assembly.Use use) {
        return switch (use) {
            case GENERAL -> "";
            case LIFTING -> "lifting";
            case TURNING -> "lifting, where the load can turn";
        };
    }

    private static Optional<SpliceCard> card(CardWork line) {
        return line.demanded().findCard();
    }

    private static boolean isRing(SpliceCard card) {
        return card.ends().stream().anyMatch(Cards::isRing);
    }

    private static Optional<CodeInForce> code(CardWork line) {
        return card(line).flatMap(SpliceCard::findCode);
    }

    private List<Fact> rope(Rope rope) {
        List<Fact> facts = new ArrayList<>();
        add(facts, "rope", rope.name());
        add(facts, "rope id", rope.id());
        add(facts, "colour", rope.identity().colour());
        add(facts, "tracer", rope.identity().tracer());
        return facts;
    }

    private List<Fact> lengths(Assembly.Make make, SpliceCard card) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "finished",
                figures.written(make.finished()) + " "
                        + figures.sentence(card.ordered().measured())
                        + (card.ordered().isJudged() ? "" : "; the order states no tolerance")));
        facts.add(new Fact("expect", outcome(card.floor())));
        add(
                facts,
                "passes",
                card.ordered().isJudged() ? passes(card.ordered()) + "; on the floor " + passes(card.floor()) : "");
        return facts;
    }

    private String outcome(SpliceCard.Outcome outcome) {
        return figures.length(outcome.length()) + " " + figures.sentence(outcome.measured());
    }

    private String passes(SpliceCard.Outcome outcome) {
        return "from " + figures.length(outcome.least()) + " to " + figures.length(outcome.most());
    }

    private CardSheet.Cut cut(Piece piece) {
        Drawn found = drawnAs(piece);
        Reel reel = view.reel(found.draw());
        return new CardSheet.Cut(
                piece.id(),
                figures.length(view.exactly(found.draw(), found.cut().length())),
                reel.id(),
                reel.lot());
    }

    /** Sample and spare by the piece they are on; what the code asks; how the counter reads; substitutes. */
    private List<String> notes(CardWork line, ReelDraw draw) {
        List<String> notes = new ArrayList<>(new ExtraRope(figures).sentences(line));
        code(line).map(CodeInForce::asks).stream()
                .flatMap(List::stream)
                .map(asked -> LengthsPage.sentence(figures.sentence(asked)))
                .forEach(notes::add);
        String counter = new bitterend.report.ReelWords(view, figures).counter(draw);
        if (!counter.isEmpty()) {
            notes.add(counter);
        }
        String other = line.demanded().pieces().stream()
                .filter(piece -> drawn.containsKey(piece.id()))
                .map(piece -> view.rope(drawnAs(piece).draw()).id())
                .filter(rope -> !rope.equals(line.assembly().ropes().get(0)))
                .distinct()
                .collect(Collectors.joining(", "));
        if (!other.isEmpty()) {
            notes.add("Marks are for " + line.assembly().ropes().get(0) + " as ordered; of a piece from " + other
                    + " see bitterend lengths " + shop() + " "
                    + line.assembly().ordered().source().order() + "/"
                    + line.assembly().ordered().source().line() + ".");
        }
        for (Derivation derivation : line.demanded().derivations()) {
            derivation.notes().stream()
                    .map(figures::sentence)
                    .filter(Cards::isForTheBench)
                    .map(LengthsPage::sentence)
                    .filter(note -> !notes.contains(note))
                    .forEach(notes::add);
        }
        return notes;
    }

    /** Of the notes of a derivation those that say how near it must come and what is hung on it. */
    private static boolean isForTheBench(String note) {
        return (note.contains(": within ") && !note.startsWith("finished length"))
                || note.startsWith("a leg hangs ")
                || note.startsWith("matched at the bench")
                || note.startsWith("hung on ")
                || note.startsWith("over its hardware");
    }

    private List<Fact> fetch(CardWork line) {
        Map<String, Integer> items = new LinkedHashMap<>();
        line.demanded().work().forEach(end -> end.parts()
                .forEach(part -> items.merge(figures.sentence(part.words()), part.count(), Integer::sum)));
        int legs = line.assembly().ordered().legs();
        line.demanded().work().forEach(end -> end.shared(legs)
                .forEach(part -> items.merge(
                        part.item() + (legs == 1 ? "" : " for all " + legs + " legs"), part.count(), Integer::sum)));
        return items.entrySet().stream()
                .map(item -> new Fact(item.getKey(), Integer.toString(item.getValue())))
                .toList();
    }

    private static void add(List<Fact> facts, String label, String value) {
        if (!value.isEmpty()) {
            facts.add(new Fact(label, value));
        }
    }
}
