package bitterend.report;

import bitterend.buying.CurveTrial;
import bitterend.catalogue.Rope;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** What a coil of one rope is worth today and why, with the curve drawn; beside it a curve that the shop has of its own. */
public final class CoilValuePage {
    /** Parts of the usual reel that are shown. */
    private static final long[] PARTS = {40, 20, 10, 5, 3, 2, 1};

    private final Figures figures;
    private final BuyWords words;

    public CoilValuePage(Figures figures) {
        this.figures = figures;
        words = new BuyWords(figures, List.of());
    }

    /**
     * A curve that the shop has of its own.
     *
     * @param curve what it says
     * @param typed whether the shop typed it; else it was learned from the past once and is not used
     */
    public record Own(StockValue curve, boolean typed) {}

    /** The page of one rope. */
    public Document of(Rope rope, CoilValue today, Optional<Own> own) {
        Writing page = new Writing();
        page.heading("What a coil of " + rope.name() + " is worth");
        page.paragraph(known(today));
        page.paragraph(costs(today));
        page.paragraph(kept(today));
        own.ifPresent(curve -> page.paragraph(
                curve.typed()
                        ? "The shop typed a curve of its own for this rope, and plans use that one."
                        : "A curve was learned from the past once. It is stale, since it knows nothing of the coils that"
                                + " are on the rack today, and it is not used."));
        page.gap();
        page.table(table(today, own));
        page.picture(new CoilPicture(words).of(rope.id(), today));
        return page.document();
    }

    /** What the shop's own curve costs. */
    public Document trial(CurveTrial.Found found, int weeks) {
        Writing page = new Writing();
        boolean cheaper = found.dearer().millis() < 0;
        Cost size = cheaper ? Cost.ZERO.minus(found.dearer()) : found.dearer();
        page.paragraph((found.isClear()
                        ? "The shop's own curve is " + (cheaper ? "cheaper" : "dearer") + " than the coil curve: "
                        : "The shop's own curve and the coil curve cannot be told apart: ")
                + figures.money(size) + (cheaper ? " less" : " more") + " in " + weeks
                + " weeks, with an error of " + figures.money(found.error()) + ", on " + found.scenarios()
                + " scenarios drawn from the past; what is on the rack at the end is valued by the coil curve.");
        return page.document();
    }

    private String known(CoilValue today) {
        PastCuts past = today.past();
        return past.source() == PastCuts.Source.HISTORY
                ? "Known from " + past.source().words() + ": " + past.pieces() + " pieces in " + past.weeks()
                        + " weeks, " + figures.length(past.weekly()) + " a week."
                : "Known from " + past.source().words() + ": " + figures.length(past.weekly())
                        + " a week. With fewer than " + PastCuts.ENOUGH
                        + " past pieces nobody has shown that this saves anything over cutting coils first.";
    }

    private String costs(CoilValue today) {
        return "On the rack this morning: " + figures.length(today.rack()) + " in coils. A coil costs "
                + RatioText.percent(today.terms().interest()) + " of its price a year and "
                + figures.money(today.terms().room()) + " a week for its room. A metre cut elsewhere costs "
                + words.perLength(today.own()) + " " + words.perLengthUnit()
                + ", the scrap, interest and room of a reel in it; new it costs "
                + words.perLength(today.terms().price()) + ".";
    }

    private String kept(CoilValue today) {
        return today.keepFrom()
                .map(from -> "Coils of " + figures.length(from) + " and more are kept; shorter ones are scrap, since "
                        + (from.isLongerThan(today.terms().floor()) ? "they" : "the shop keeps none below and they")
                        + " save less than they cost until they are used.")
                .orElse("No coil is worth its room: there is so much on the rack that another would wait too long.");
    }

    private TableRows table(CoilValue today, Optional<Own> own) {
        TableRows table = own.isPresent()
                ? new TableRows(
                        coil(), worth(), share("today"), share("on an empty\nrack"), share("the shop's\nown curve"))
                : new TableRows(coil(), worth(), share("today"), share("on an empty\nrack"));
        CoilValue empty = today.on(Length.ZERO);
        TreeSet<Length> lengths = new TreeSet<>();
        today.keepFrom().ifPresent(lengths::add);
        for (long part : PARTS) {
            lengths.add(new Length(Math.max(1, today.terms().reel().mm() / part)));
        }
        for (Length length : lengths) {
            String[] cells = {
                figures.bare(length),
                words.bare(today.of(length)),
                percent(today, today, length),
                percent(today, empty, length)
            };
            table.row(own.map(curve -> with(cells, percent(today, curve.curve(), length)))
                    .orElse(cells));
        }
        return table;
    }

    private Column coil() {
        return Column.figure("coil, " + figures.unit());
    }

    private Column worth() {
        return Column.figure("worth,\n" + figures.currency().currency());
    }

    private static Column share(String of) {
        return Column.figure("% of price\n" + of);
    }

    private static String[] with(String[] cells, String last) {
        String[] all = java.util.Arrays.copyOf(cells, cells.length + 1);
        all[cells.length] = last;
        return all;
    }

    private String percent(CoilValue today, StockValue curve, Length length) {
        long price = today.terms().price().of(length).millis();
        return words.percent(
                price == 0 ? Ratio.ZERO : new Ratio(curve.of(length).millis(), price));
    }
}
