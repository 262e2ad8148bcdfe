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
import java.util.Set;
import java.util.TreeSet;

/** What a coil of one rope is worth today and why, with the curve drawn; beside it a curve that the shop has of its own. */
public final class CoilValuePage {
    /** Parts of the usual reel that are shown. */
    private static final long[] PARTS = {40, 20, 10, 5, 3, 2, 1};

    private static final String STALE =
            "A curve was learned from the past once. It is stale, since it knows nothing of the"
                    + " coils that are on the rack today, and it is not used.";

    private final Figures figures;
    private final BuyWords words;
    private final CoilWords coilWords;

    public CoilValuePage(Figures figures) {
        this.figures = figures;
        words = new BuyWords(figures, List.of());
        coilWords = new CoilWords(figures);
    }

    /**
     * A curve that the shop has of its own.
     *
     * @param curve what it says
     * @param typed whether the shop typed it; else it was learned from the past once and is not used
     */
    public record Own(StockValue curve, boolean typed) {
        private String name() {
            return typed ? "the shop's own curve" : "the stale curve";
        }
    }

    /**
     * What is known of one rope.
     *
     * @param rope the rope
     * @param today the coil curve that the plans of the day go by
     * @param rackNow metres of coils on the rack now; those of the curve unless it is of a plan made earlier that day
     * @param own a curve of the shop's own, if there is one
     */
    public record Coils(Rope rope, CoilValue today, Length rackNow, Optional<Own> own) {}

    /** The page of one rope. */
    public Document of(Coils coils) {
        Writing page = new Writing();
        CoilValue today = coils.today();
        page.heading("What a coil of " + coils.rope().name() + " is worth");
        page.paragraph(known(today));
        page.paragraph(onTheRack(coils) + costs(today));
        page.paragraph(
                coils.own().filter(Own::typed).map(own -> typed(own, today)).orElseGet(() -> kept(today)));
        coils.own().filter(own -> !own.typed()).ifPresent(stale -> page.paragraph(STALE));
        page.gap();
        page.table(table(today, coils.own()));
        page.picture(new CoilPicture(figures).of(coils.rope().id(), today));
        return page.document();
    }

    /** What the shop's own curve costs. */
    public Document trial(CurveTrial.Found found, Own own, int weeks) {
        Writing page = new Writing();
        Cost dearer = found.dearer();
        Cost size = dearer.millis() < 0 ? Cost.ZERO.minus(dearer) : dearer;
        String scenarios = found.scenarios() + " scenarios picked at random from the past";
        if (size.rounded().minor() == 0 && found.error().rounded().minor() == 0) {
            page.paragraph("With " + own.name() + " and with the coil curve the same is paid in " + weeks
                    + " weeks, on " + scenarios + ": there they decide alike.");
            return page.document();
        }
        boolean cheaper = dearer.millis() < 0;
        String which = Character.toUpperCase(own.name().charAt(0)) + own.name().substring(1);
        page.paragraph((found.isClear()
                        ? which + " is " + (cheaper ? "cheaper" : "dearer") + " than the coil curve: "
                        : which + " and the coil curve show no clear difference: ")
                + figures.money(size) + (cheaper ? " less" : " more") + " in " + weeks
                + " weeks, with an error of " + figures.money(found.error()) + ", on " + scenarios
                + "; what is on the rack at the end is valued by the coil curve.");
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

    private String onTheRack(Coils coils) {
        String morning = figures.length(coils.today().rack());
        return coils.rackNow().equals(coils.today().rack())
                ? "On the rack this morning: " + morning + " in coils. "
                : "On the rack this morning, when the first plan of the day was made: " + morning
                        + " in coils; all plans of the day value coils by that. Now: " + figures.length(coils.rackNow())
                        + ". ";
    }

    private String costs(CoilValue today) {
        return "A coil costs "
                + RatioText.percent(today.terms().interest()) + " of its price a year and "
                + figures.money(today.terms().room()) + " a week for its room. Rope cut elsewhere costs "
                + words.perLength(today.own()) + " " + words.perLengthUnit()
                + ", the scrap, interest and room of a reel in it; new it costs "
                + words.perLength(today.terms().price()) + ".";
    }

    private String typed(Own own, CoilValue today) {
        return "The shop typed a curve of its own for this rope, and plans use that one. "
                + coilWords.beside(own.curve()) + " The coil curve would keep "
                + today.keepFrom()
                        .map(from -> "them from " + figures.length(from) + " on.")
                        .orElse("none.");
    }

    private String kept(CoilValue today) {
        boolean above = lengths(today).stream()
                .anyMatch(length -> today.on(Length.ZERO)
                                .of(length)
                                .compareTo(today.terms().price().of(length))
                        > 0);
        return coilWords.kept(today)
                + (above ? " Above 100 %: a metre that is cut elsewhere costs more than a new one." : "");
    }

    private TableRows table(CoilValue today, Optional<Own> own) {
        TableRows table = own.map(curve -> new TableRows(
                        coil(),
                        worth(),
                        share("today"),
                        share("on an empty\nrack"),
                        share(curve.typed() ? "the shop's\nown curve" : "the stale\ncurve")))
                .orElseGet(() -> new TableRows(coil(), worth(), share("today"), share("on an empty\nrack")));
        CoilValue empty = today.on(Length.ZERO);
        for (Length length : lengths(today)) {
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

    private static Set<Length> lengths(CoilValue today) {
        Set<Length> lengths = new TreeSet<>();
        today.keepFrom().ifPresent(lengths::add);
        for (long part : PARTS) {
            lengths.add(new Length(Math.max(1, today.terms().reel().mm() / part)));
        }
        return lengths;
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
