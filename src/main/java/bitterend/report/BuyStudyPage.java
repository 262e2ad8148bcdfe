package bitterend.report;

import bitterend.buying.Result;
import bitterend.buying.Standing;
import bitterend.buying.Study;
import bitterend.buying.Verdict;
import bitterend.measure.Length;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which reels suit work like that of the past, as text. */
public final class BuyStudyPage {
    private final Figures figures;
    private final Verdict verdict;
    private final BuyWords words;

    /** The page of one rope. */
    public BuyStudyPage(Figures figures, Verdict verdict) {
        this.figures = figures;
        this.verdict = verdict;
        words = new BuyWords(
                figures,
                Stream.concat(verdict.study().options().stream(), verdict.study().tooShort().stream())
                        .flatMap(option -> option.offers().stream())
                        .distinct()
                        .toList());
    }

    /** The pages of several ropes as one. */
    public static Document of(String shop, List<Verdict> verdicts, Figures figures) {
        Writing page = new Writing();
        page.title("Buying", "Which reels to buy", shop);
        verdicts.forEach(verdict -> new BuyStudyPage(figures, verdict).write(page));
        return page.document();
    }

    /** The page by itself. */
    public Document document() {
        Writing page = new Writing();
        write(page);
        return page.document();
    }

    /** What to do, what makes that doubtful, the figures, the pictures, and how the figures came about. */
    void write(Writing page) {
        page.heading("Which reels of " + verdict.study().rope().name() + " to buy");
        page.paragraph(act());
        cautions().forEach(page::caution);
        page.tableApart(table());
        new BuyPictures(figures, verdict).all().values().forEach(page::picture);
        notes().forEach(page::paragraph);
    }

    /** One paragraph to act on. */
    String act() {
        Result chosen = verdict.chosen();
        Result simplest = verdict.simplest();
        Result worst = verdict.worst();
        StringBuilder text = new StringBuilder("Buy ")
                .append(words.option(simplest.option()))
                .append(". For work like that of the ")
                .append(verdict.study().weeks().size())
                .append(" weeks recorded, a " + unitWord() + " in a piece costs ")
                .append(words.perLength(simplest.byMetre()))
                .append(' ')
                .append(words.perLengthUnit().replaceAll("/.*", ""))
                .append(", and in eight scenarios of ten between ")
                .append(words.perLength(simplest.usual().low()))
                .append(" and ")
                .append(words.perLength(simplest.usual().high()))
                .append("; ")
                .append(words.percent(simplest.perScenario().wasteShare()))
                .append(" % is wasted.");
        if (!simplest.equals(chosen)) {
            text.append(" The cheapest in the scenarios that choose was ")
                    .append(words.option(chosen.option()))
                    .append(", but there is no clear difference.");
        }
        List<Result> others = verdict.ties().stream()
                .filter(result -> !result.equals(simplest) && !result.equals(chosen))
                .toList();
        if (!others.isEmpty()) {
            text.append(" As good, as far as this shows: ")
                    .append(others.stream()
                            .map(result -> words.option(result.option()))
                            .collect(Collectors.joining("; ")))
                    .append('.');
        }
        if (worst.standing() == Standing.DEARER) {
            text.append(" The wrong choice, ")
                    .append(words.option(worst.option()))
                    .append(", costs ")
                    .append(figures.money(worst.more().minus(simplest.more())))
                    .append(" more in ")
                    .append(weeks(verdict.study().size().weeks()))
                    .append('.');
        }
        return text.toString();
    }

    private String unitWord() {
        return figures.units() == bitterend.measure.Units.METRIC ? "metre" : "foot";
    }

    private TableRows table() {
        String money = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("Reels"),
                Column.figure(words.perLengthUnit()),
                Column.figure("8 in 10\nfrom - to"),
                Column.figure("waste\n%"),
                Column.figure("coils"),
                Column.figure("reels"),
                Column.figure("more,\n" + money),
                Column.figure("chance\n+/-"),
                Column.figure("history\n+/-"));
        for (Result result : verdict.results()) {
            table.row(
                    words.option(result.option()) + mark(result),
                    words.perLength(result.byMetre()),
                    words.perLength(result.usual().low()) + "\n- "
                            + words.perLength(result.usual().high()),
                    words.percent(result.perScenario().wasteShare()),
                    words.tenths(result.perScenario().coilTenths()),
                    words.tenths(result.perScenario().reelTenths()),
                    words.bare(result.more()),
                    words.bare(result.chance()),
                    result.history().millis() < 0 ? "?" : words.bare(result.history()));
        }
        return table;
    }

    private static String mark(Result result) {
        return switch (result.standing()) {
            case CHOSEN -> ",\nchosen";
            case TIE -> ",\ntie";
            case TIE_OF_THIN_HISTORY -> ",\ntie, thin history";
            case DEARER -> "";
        };
    }

    /** How the figures came about. */
    List<String> notes() {
        Study study = verdict.study();
        return List.of(
                verdict.scenarios() + " of " + study.size().scenarios() + " scenarios of "
                        + weeks(study.size().weeks()) + ", weeks of the past picked whole, seed "
                        + study.size().seed() + "; the same weeks for every choice. "
                        + (verdict.scenarios() - verdict.reporting()) + " of them chose, the other "
                        + verdict.reporting() + " report. The rack is empty at first; coils are carried on, and what is"
                        + " on the rack at the end is credited at its value.",
                "\"More\" is per scenario, against the chosen one; behind it are its standard errors. That of chance falls with"
                        + " more scenarios, that of history only with more weeks. Figures per scenario: "
                        + figures.length(verdict.chosen().perScenario().useful()) + " in pieces.",
                "Better packings of the weeks could have saved at most "
                        + words.percentAtMost(verdict.chosen().perScenario().gap())
                        + " % of the rope in the pieces; matched sets, certificates and substitutes are not looked at.");
    }

    /** What makes the answer doubtful. */
    List<String> cautions() {
        Study study = verdict.study();
        List<String> cautions = new ArrayList<>();
        if (verdict.isThin()) {
            cautions.add("only " + weeks(study.weeks().size())
                    + " of history, less than half a year; seasons are not in" + " it.");
        }
        if (verdict.weeksToSettle() > study.weeks().size()) {
            cautions.add("about " + verdict.weeksToSettle() + " weeks of history would settle it between the chosen and"
                    + " the rival that differs most clearly from it.");
        }
        if (verdict.scenarios() < study.size().scenarios()) {
            cautions.add("stopped early: errors are wider than asked for.");
        }
        if (!study.unheld().isEmpty()) {
            cautions.add("no offered reel holds " + study.unheld().size() + " past "
                    + (study.unheld().size() == 1 ? "piece" : "pieces") + ", the longest "
                    + figures.length(study.unheld().get(0)) + "; left out.");
        }
        if (!study.tooShort().isEmpty()) {
            Length longest = study.weeks().stream().flatMap(List::stream).reduce(Length.ZERO, Length::max);
            cautions.add("too short by itself for the longest past piece, " + figures.length(longest) + ": "
                    + study.tooShort().stream().map(words::option).collect(Collectors.joining("; ")) + ".");
        }
        return cautions;
    }

    private static String weeks(int count) {
        return count + (count == 1 ? " week" : " weeks");
    }
}
