package bitterend.report;

import bitterend.buying.steady.SteadyStudy;
import bitterend.buying.steady.SteadyVerdict;
import bitterend.buying.steady.WayFound;
import bitterend.market.LeftOut;
import bitterend.market.Offer;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.stream.Stream;

/** Which reels to keep on the rack of a shop that goes on as it did: all ropes on one page, then each rope. */
public final class BuyStudyPage {
    private final Figures figures;
    private final List<SteadyVerdict> verdicts;

    private BuyStudyPage(Figures figures, List<SteadyVerdict> verdicts) {
        this.figures = figures;
        this.verdicts = verdicts;
    }

    /** The ropes on one page, then each by itself, then how the figures came about. */
    public static Document of(String shop, List<SteadyVerdict> verdicts, Figures figures) {
        Writing page = new Writing();
        page.title("", "Which reels to keep on the rack", shop);
        if (!verdicts.isEmpty()) {
            new BuyStudyPage(figures, verdicts).write(page);
        }
        return page.document();
    }

    private void write(Writing page) {
        StudyAssumed assumed = new StudyAssumed(figures, verdicts);
        page.paragraph(assumed.when());
        page.tableApart(overview());
        page.paragraph(assumed.reading());
        verdicts.forEach(verdict -> new BuyRopeBlock(figures, verdict).write(page));
        page.heading("What these figures rest on");
        assumed.plan().forEach(page::paragraph);
        page.heading("What was not looked at");
        page.paragraph(StudyAssumed.NOT_LOOKED_AT);
    }

    private TableRows overview() {
        String money = figures.currency().currency();
        boolean metric = figures.units() == bitterend.measure.Units.METRIC;
        TableRows table = new TableRows(
                Column.words("Rope"),
                Column.words("Reels to keep"),
                Column.figure("order\nbelow,\n" + figures.wholeUnit()),
                Column.figure("at a\ntime"),
                Column.figure("weeks\nthere"),
                Column.figure("cash\ntied up,\n" + money),
                Column.figure("late\nof 100"),
                Column.figure("cost,\n" + money + (metric ? "/m" : "/ft")),
                Column.figure("wrong\nchoice,\n" + money + "\na year"));
        for (SteadyVerdict verdict : verdicts) {
            WayFound advised = verdict.advised();
            StudyFigures words = new StudyFigures(figures, verdict);
            table.row(
                    verdict.study().rope().id(),
                    words.sizes(advised) + (verdict.isMet() ? "" : ", not as asked"),
                    words.points(advised),
                    words.numbers(advised),
                    words.weeks(advised.stock()),
                    words.tied(advised),
                    words.late(advised),
                    words.cost(advised),
                    verdict.worst().map(words::aYear).orElse("-"));
        }
        return table;
    }

    /** Ropes of which no offer can supply the shop, a sentence each. */
    public static List<String> unsupplied(List<SteadyStudy> studies, Figures figures) {
        return studies.stream()
                .map(study -> study.rope().id() + ": no offer can supply the shop. "
                        + String.join(" ", notBought(study, figures)))
                .toList();
    }

    /** Offers that are no way to supply the shop, a sentence each. */
    public static List<String> notBought(SteadyStudy study, Figures figures) {
        BuyWords words = new BuyWords(
                figures,
                Stream.concat(study.offers().stream(), study.leftOut().stream().map(LeftOut::offer))
                        .toList());
        Stream<String> noWay = study.notBought().stream()
                .map(each -> "Left out is " + words.size(each.offer()) + name(words, each.offer())
                        + switch (each.why()) {
                            case TOO_SHORT -> ": the longest past piece does not fit.";
                            case TOO_FEW -> ": there are fewer reels of it than a year uses.";
                        });
        Stream<String> notHad = study.leftOut().stream()
                .map(each -> "Left out is " + words.size(each.offer()) + name(words, each.offer()) + ": "
                        + BuyingWords.why(each) + ".");
        return Stream.concat(noWay, notHad).toList();
    }

    private static String name(BuyWords words, Offer offer) {
        return words.size(offer).contains(offer.id()) ? "" : " (" + offer.id() + ")";
    }
}
