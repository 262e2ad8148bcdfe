package bitterend.report;

import bitterend.catalogue.Rope;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.CutPlan;
import bitterend.packing.DrawPrice;
import bitterend.packing.LengthBook;
import bitterend.packing.ReelDraw;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Where the rope goes in length, per cent and money, then what the plan costs and what is proven of it. */
final class TotalsBlock {
    private final PlanView view;
    private final Figures figures;

    TotalsBlock(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
    }

    void write(Writing page) {
        page.heading("Where the rope goes");
        page.table(whereItGoes(view.book()));
        page.gap();
        page.table(byRope());
        page.heading("What the day costs");
        page.table(whatItCosts());
        page.gap();
        page.paragraph("At the price of new rope the pieces are worth " + figures.money(view.worth(LengthBook::pieces))
                + ", the waste " + figures.money(view.worth(LengthBook::waste)) + "."
                + (view.uncertain().isEmpty() ? "" : " Rope that is only probably there counts as used up."));
        view.firstFit().ifPresent(other -> page.paragraph(new FirstFitWords(view, figures).of(other)));
        page.heading("What is proven");
        proof(page, new Proof(view, figures));
    }

    /** What leaves the rack, what is done for it, and the sum. */
    private TableRows whatItCosts() {
        CutPlan plan = view.plan();
        Cost draws = plan.draws().stream().map(ReelDraw::cost).reduce(Cost.ZERO, Cost::plus);
        Cost fetching = plan.draws().stream().map(this::fetching).reduce(Cost.ZERO, Cost::plus);
        TableRows table =
                new TableRows(Column.words(""), Column.figure(figures.currency().currency()));
        table.row(
                "rope used up, as it is worth on the rack",
                figures.bare(draws.minus(fetching).rounded()));
        table.row("fetching and opening reels", figures.bare(fetching.rounded()));
        Cost across = plan.cost().minus(draws);
        if (!across.equals(Cost.ZERO)) {
            table.row("orders split over lots, pieces moved since an earlier plan", figures.bare(across.rounded()));
        }
        table.row("what the day costs", figures.bare(plan.cost().rounded()));
        return table;
    }

    /** Fetching a reel, opening a full one, and cutting off runs that give no piece. */
    private Cost fetching(ReelDraw draw) {
        long aside = draw.runs().stream().filter(run -> run.cuts().isEmpty()).count();
        return DrawPrice.fixedCost(view.problem(), view.reel(draw))
                .plus(view.problem().prices().handling().times(aside));
    }

    private void proof(Writing page, Proof proof) {
        page.paragraph(proof.sentence());
        if (proof.rows().isEmpty()) {
            return;
        }
        page.gap();
        String money = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("ropes"),
                Column.figure("with splits\nand moves\n" + money),
                Column.figure("cannot cost\nless than"),
                Column.figure("avoidable\nat most"),
                Column.figure("as rope\n" + figures.unit()),
                Column.figure("gap\n%"));
        proof.rows()
                .forEach(row ->
                        table.row(row.ropes(), row.cost(), row.bound(), row.avoidable(), row.metres(), row.gap()));
        page.table(table);
    }

    private TableRows whereItGoes(LengthBook book) {
        TableRows table = new TableRows(
                Column.words(""),
                Column.figure("length\n" + figures.unit()),
                Column.figure("of the rope\ndrawn, %"),
                Column.figure("worth new\n" + figures.currency().currency()));
        part(table, "in pieces", book, LengthBook::pieces);
        part(table, "cut loss", book, LengthBook::cutLoss);
        part(table, "lead trim", book, LengthBook::leadTrim);
        part(table, "flaws cut out", book, LengthBook::flaws);
        part(table, view.uncertain().isEmpty() ? "scrap" : "scrap for certain", book, LengthBook::scrap);
        part(table, "drawn in all", book, LengthBook::drawn);
        part(table, "of that, waste", book, LengthBook::waste);
        beside(table, "kept as remnants", book, LengthBook::kept);
        beside(table, "left on these reels", book, LengthBook::left);
        probably(table);
        beside(table, "inner wraps", book, LengthBook::innerWraps);
        beside(table, "on these reels before", book, LengthBook::before);
        return table;
    }

    private void probably(TableRows table) {
        if (!view.uncertain().isEmpty()) {
            table.row("of that, probably: measure", figures.bareTotal(view.probably()), "", "");
        }
    }

    private void part(TableRows table, String name, LengthBook book, Function<LengthBook, Length> part) {
        table.row(
                name,
                figures.bareTotal(part.apply(book)),
                figures.percent(part.apply(book).mm(), book.drawn().mm(), 1),
                figures.bare(view.worth(part).rounded()));
    }

    private void beside(TableRows table, String name, LengthBook book, Function<LengthBook, Length> part) {
        table.row(
                name,
                figures.bareTotal(part.apply(book)),
                "",
                figures.bare(view.worth(part).rounded()));
    }

    private record RopeSum(int reels, int pieces, LengthBook book, Cost cost) {
        static final RopeSum NONE = new RopeSum(0, 0, LengthBook.EMPTY, Cost.ZERO);

        RopeSum plus(ReelDraw draw, LengthBook drawn) {
            return new RopeSum(reels + 1, pieces + draw.cuts().size(), book.plus(drawn), cost.plus(draw.cost()));
        }
    }

    private TableRows byRope() {
        Map<String, RopeSum> sums = new TreeMap<>(NaturalOrder.IDS);
        for (ReelDraw draw : view.plan().draws()) {
            Rope rope = view.rope(draw);
            sums.put(rope.id(), sums.getOrDefault(rope.id(), RopeSum.NONE).plus(draw, view.book(draw)));
        }
        TableRows table = new TableRows(
                Column.words("rope"),
                Column.figure("reels"),
                Column.figure("pieces"),
                Column.figure("in pieces\n" + figures.unit()),
                Column.figure("waste\n" + figures.unit()),
                Column.figure("waste\n%"),
                Column.figure("cost\n" + figures.currency().currency()));
        sums.forEach((rope, sum) -> table.row(
                rope,
                Integer.toString(sum.reels()),
                Integer.toString(sum.pieces()),
                figures.bareTotal(sum.book().pieces()),
                figures.bareTotal(sum.book().waste()),
                figures.percent(sum.book().waste().mm(), sum.book().drawn().mm(), 1),
                figures.bare(sum.cost().rounded())));
        return table;
    }
}
