package bitterend.report;

import bitterend.buying.steady.SteadyStudy;
import bitterend.buying.steady.SteadyVerdict;
import bitterend.buying.steady.Way;
import bitterend.buying.steady.WayFound;
import bitterend.buying.steady.WayFound.Standing;
import bitterend.measure.Length;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.ArrayList;
import java.util.List;

/** What a study found of one rope. */
final class BuyRopeBlock {
    private final Figures figures;
    private final SteadyVerdict verdict;
    private final StudyFigures words;

    BuyRopeBlock(Figures figures, SteadyVerdict verdict) {
        this.figures = figures;
        this.verdict = verdict;
        words = new StudyFigures(figures, verdict);
    }

    /** What to do, what makes that doubtful, the figures, the pictures. */
    void write(Writing page) {
        page.heading("Which reels of " + verdict.study().rope().name() + " to keep");
        page.paragraph(act());
        page.paragraph(demand());
        page.paragraph("From the order to the rack: " + words.leads() + ".");
        cautions().forEach(page::caution);
        page.tableApart(table());
        folded().forEach(page::paragraph);
        BuyStudyPage.notBought(verdict.study(), figures).forEach(page::paragraph);
        new BuyPictures(figures, verdict).all().values().forEach(page::picture);
    }

    private String act() {
        WayFound advised = verdict.advised();
        Way.Rule usual = advised.way().usual();
        StringBuilder text = new StringBuilder("Keep ")
                .append(words.sizes(advised))
                .append(". When less than ")
                .append(figures.wholeUp(usual.point()))
                .append(" is there and on order, waiting pieces taken off, order ")
                .append(reels(usual.reels()))
                .append(" of ")
                .append(words.words().size(usual.size().offer()));
        if (advised.way().hasStopgap()) {
            Way.Rule stopgap = advised.way().rules().get(1);
            text.append("; when less than ")
                    .append(figures.wholeUp(stopgap.point()))
                    .append(" is there or comes before it could, ")
                    .append(reels(stopgap.reels()))
                    .append(" of ")
                    .append(words.words().size(stopgap.size().offer()));
        }
        text.append(". An order lasts ")
                .append(words.words().tenths(verdict.weekTenths(usual.order().mm())))
                .append(" weeks. A ")
                .append(figures.units() == bitterend.measure.Units.METRIC ? "metre" : "foot")
                .append(" that is used costs ")
                .append(words.byLength(advised.byMetre().value()))
                .append(' ')
                .append(figures.currency().currency())
                .append("; ")
                .append(words.words().percent(advised.year().scrapShare()))
                .append(" % is scrap.");
        verdict.worst().ifPresent(worst -> text.append(" The wrong choice, ")
                .append(words.sizes(worst))
                .append(", costs ")
                .append(figures.money(worst.moreAYear()))
                .append(
                        advised.standing() != WayFound.Standing.TIE
                                ? " more in a year."
                                : " more in a year than the cheapest."));
        return text.toString();
    }

    private static String reels(int count) {
        return count + (count == 1 ? " reel" : " reels");
    }

    private String demand() {
        SteadyStudy study = verdict.study();
        long growth = study.demand().shape().growth();
        return "Of the " + study.demand().past().count() + " weeks recorded: "
                + figures.length(study.weekly()) + " a week at the level of today; "
                + (study.demand().shape().season()
                        ? "it follows the season"
                        : "no season is seen, so any week may come at any time")
                + "; "
                + (study.demand().shape().trend()
                        ? "the last year is " + figures.percent(Math.abs(growth - 1_000), 1_000, 0)
                                + (growth > 1_000 ? " % above" : " % below") + " the one before."
                        : "no trend is seen.");
    }

    private TableRows table() {
        String money = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("Reels"),
                Column.figure("order\nbelow,\n" + figures.wholeUnit()),
                Column.figure("at a\ntime"),
                Column.figure("weeks\nthere"),
                Column.figure("cash\ntied up,\n" + money),
                Column.figure("late\nof 100"),
                Column.figure("cost,\n" + words.words().perLengthUnit()),
                Column.figure("more,\n" + words.words().perLengthUnit()));
        for (WayFound found : shown()) {
            table.row(
                    words.sizes(found) + mark(found),
                    words.points(found),
                    words.numbers(found),
                    words.weeks(found.stock()),
                    words.tied(found),
                    words.late(found),
                    words.cost(found),
                    words.more(found));
        }
        return table;
    }

    /** All but the ties, of which the advised one alone is shown. */
    private List<WayFound> shown() {
        return verdict.found().stream()
                .filter(found -> found.standing() != Standing.TIE || found.equals(verdict.advised()))
                .toList();
    }

    private List<String> folded() {
        List<String> ties = verdict.found().stream()
                .filter(found -> !shown().contains(found))
                .map(words::sizes)
                .toList();
        if (!verdict.tellsTies()) {
            return ties.isEmpty()
                    ? List.of()
                    : List.of("Too few scenarios to tell ties; these may cost as little: " + String.join("; ", ties)
                            + ".");
        }
        return ties.isEmpty()
                ? List.of()
                : List.of(ties.size() + (ties.size() == 1 ? " more way ties: " : " more ways tie: ")
                        + String.join("; ", ties) + ".");
    }

    private static String mark(WayFound found) {
        return switch (found.standing()) {
            case CHOSEN -> ",\ncheapest";
            case TIE -> ",\ntie";
            case DEARER -> "";
            case LATE -> ",\nnot: late";
            case TOO_MUCH -> ",\nnot: too much";
        };
    }

    private List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        if (!verdict.isMet()) {
            cautions.add("no way to buy keeps to what the shop asks; the nearest is named.");
        }
        if (verdict.isThin()) {
            cautions.add("only " + verdict.study().demand().past().count()
                    + " weeks of history, less than half a year; seasons are not in it.");
        }
        if (verdict.scenarios() < verdict.study().size().scenarios()) {
            cautions.add("stopped early: intervals are wider than asked for.");
        }
        List<Length> unheld = verdict.study().unheld();
        if (!unheld.isEmpty()) {
            cautions.add("no offered reel holds " + unheld.size() + " past "
                    + (unheld.size() == 1 ? "piece" : "pieces") + ", the longest " + figures.length(unheld.get(0))
                    + "; left out.");
        }
        return cautions;
    }
}
