package bitterend.report.sheet;

import bitterend.demand.PickList;
import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Cut;
import bitterend.packing.HeldWords;
import bitterend.packing.LengthBook;
import bitterend.packing.ReelDraw;
import bitterend.report.Cautions;
import bitterend.report.Fact;
import bitterend.report.Figures;
import bitterend.report.PlanMark;
import bitterend.report.PlanView;
import bitterend.report.Proof;
import bitterend.report.ReelWords;
import bitterend.report.ShortWork;
import bitterend.report.sheet.Sheet.Fetch;
import bitterend.report.sheet.Sheet.Shortfall;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts a day's plan on sheets: every value as it is printed, for HTML and PDF alike. */
public final class SheetMaker {
    private final PlanView view;
    private final Figures figures;
    private final List<CardWork> work;

    /**
     * @param view the plan
     * @param figures how figures are printed
     * @param work what the order lines ask of the splicers
     */
    public SheetMaker(PlanView view, Figures figures, List<CardWork> work) {
        this.view = view;
        this.figures = figures;
        this.work = List.copyOf(work);
    }

    /** The sheet; {@code made} says how the plan came about. */
    public Sheet sheet(String made) {
        ReelSheets reels = new ReelSheets(view, figures);
        return new Sheet(
                view.mark().words(),
                view.mark().changes().stream()
                        .map(PlanMark.Change::sentence)
                        .map(figures::sentence)
                        .toList(),
                view.shop(),
                view.part().day().toString(),
                figures.unit(),
                glance(),
                new PromiseWords(view).sentences(),
                Stream.of(new Proof(view, figures).forTheBench())
                        .filter(words -> !words.isEmpty())
                        .toList(),
                fetched().stream().map(this::fetch).toList(),
                shortfalls(),
                picks(),
                new SheetNotes(view, figures.units()).of(planned()),
                Cautions.ALWAYS,
                view.draws().stream().map(reels::of).toList(),
                new SpliceTables(figures).of(planned()),
                made);
    }

    private List<Fact> glance() {
        LengthBook book = view.book();
        int wanted = view.problem().pieces().size();
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact("reels to fetch", Integer.toString(view.draws().size())),
                new Fact(
                        "pieces to cut",
                        view.part().whole() ? view.planned() + " of " + wanted : Integer.toString(view.planned())),
                new Fact("rope in pieces", figures.total(book.pieces())),
                new Fact(
                        "waste",
                        figures.total(book.waste()) + ", "
                                + figures.percent(
                                        book.waste().mm(), book.drawn().mm(), 1) + " %")));
        if (!view.uncertain().isEmpty()) {
            facts.add(new Fact("scrap for certain", figures.total(book.scrap())));
            facts.add(new Fact("probably left, to measure", figures.total(view.probably())));
        }
        return facts;
    }

    /** As somebody walks past them. */
    private List<ReelDraw> fetched() {
        return view.draws().stream()
                .sorted(Comparator.comparing(draw -> view.reel(draw).where().place(), NaturalOrder.IDS))
                .toList();
    }

    private Fetch fetch(ReelDraw draw) {
        Reel reel = view.reel(draw);
        return new Fetch(
                reel.id(),
                view.rope(draw).name(),
                reel.lot(),
                reel.where().place(),
                new ReelWords(view, figures).mass(draw),
                Integer.toString(draw.cuts().size()),
                figures.bareTotal(view.book(draw).drawn()),
                figures.sentence(HeldWords.of(reel, view.problem().day())));
    }

    private List<Shortfall> shortfalls() {
        List<Shortfall> shortfalls = new ArrayList<>();
        ShortWork.of(view, unplanned -> isOfADayShown(unplanned.piece()))
                .forEach((short_, ids) -> shortfalls.add(new Shortfall(
                        String.join(", ", ids),
                        figures.length(short_.cut()) + " of " + short_.rope(),
                        figures.sentence(short_.why()),
                        figures.sentence(short_.help()))));
        return shortfalls;
    }

    /** Whether work left undone had to be cut by the day of these sheets. */
    private boolean isOfADayShown(String piece) {
        Piece asked = view.pieces().get(piece);
        return view.part().whole()
                || asked == null
                || !view.byId().days().lastFor(asked).isAfter(view.part().day());
    }

    private Set<String> plannedPieces() {
        return view.draws().stream()
                .flatMap(draw -> draw.cuts().stream())
                .map(Cut::piece)
                .collect(Collectors.toSet());
    }

    /** Order lines of which at least one piece is planned. */
    private List<CardWork> planned() {
        Set<String> cut = plannedPieces();
        return work.stream()
                .filter(line -> line.demanded().pieces().stream().anyMatch(piece -> cut.contains(piece.id())))
                .toList();
    }

    /** Thimbles, fittings, clips and twine for all pieces that are planned, each size on its own. */
    private List<Fact> picks() {
        Set<String> cut = plannedPieces();
        PickList picks = new PickList();
        for (CardWork line : planned()) {
            int pieces = (int) line.demanded().pieces().stream()
                    .filter(piece -> cut.contains(piece.id()))
                    .count();
            picks.add(line.assembly(), line.demanded(), pieces);
        }
        return picks.items().stream()
                .map(item -> new Fact(figures.sentence(item.words()), Integer.toString(item.count())))
                .toList();
    }
}
