package bitterend.exchange;

import bitterend.buying.Advice;
import bitterend.buying.Option;
import bitterend.buying.Purchase;
import bitterend.buying.Reorder;
import bitterend.buying.Result;
import bitterend.buying.Shortage;
import bitterend.buying.Verdict;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.Cost;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.RatioText;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the command {@code buy} answers to other programs. */
public final class BuyJson {
    private final MoneyText money;

    public BuyJson(MoneyText money) {
        this.money = money;
    }

    /**
     * {@code {"format": "bitterend/buy/1", ...}}: the best set, the next best, what cannot be had, where rope is short.
     *
     * @param day the day it was asked
     * @param until how far ahead it was looked where rope is short
     * @param ropes where it is
     */
    public String advice(Advice advice, LocalDate day, LocalDate until, List<Shortage> ropes) {
        List<JsonTree> unheld = new ArrayList<>();
        advice.unheld()
                .forEach(each -> unheld.add(new JsonTree()
                        .with("piece", each.piece())
                        .with("cut", LengthText.exact(each.cut()))
                        .with("why", each.why())));
        return new JsonTree()
                .with("format", "bitterend/buy/1")
                .with("best", purchase(advice.best()))
                .with("next", advice.next().stream().map(this::purchase).toList())
                .with("allCompared", advice.allCompared())
                .with("unheld", unheld)
                .with("late", advice.late())
                .with("shortage", ShortageJson.tree(day, until, ropes))
                .text();
    }

    /** {@code {"format": "bitterend/buy-study/1", ...}}: every way to buy, for each rope. */
    public String study(List<Verdict> verdicts, List<Reorder> hints) {
        return new JsonTree()
                .with("format", "bitterend/buy-study/1")
                .with("ropes", verdicts.stream().map(this::verdict).toList())
                .with("reorder", hints.stream().map(BuyJson::hint).toList())
                .text();
    }

    private JsonTree purchase(Purchase purchase) {
        List<JsonTree> lines = new ArrayList<>();
        purchase.lines()
                .forEach(line -> lines.add(new JsonTree()
                        .with("offer", line.offer().id())
                        .with("reels", line.reels())
                        .with("length", LengthText.exact(line.offer().made().length()))
                        .with("written", line.offer().made().written().text())
                        .with("oneLot", line.oneLot())
                        .with(
                                "orderBy",
                                line.orderBy().equals(LocalDate.MAX)
                                        ? ""
                                        : line.orderBy().toString())));
        return new JsonTree()
                .with("lines", lines)
                .with("cost", money.exact(purchase.cost()))
                .with("bound", money.exact(purchase.bound()))
                .with("paid", money.exact(purchase.paid()))
                .with("left", money.exact(purchase.left()))
                .with("unplanned", purchase.unplanned());
    }

    private JsonTree verdict(Verdict verdict) {
        return new JsonTree()
                .with("rope", verdict.study().rope().id())
                .with("seed", verdict.study().size().seed())
                .with("weeks", verdict.study().size().weeks())
                .with("pastWeeks", verdict.study().weeks().size())
                .with("scenarios", verdict.scenarios())
                .with("reporting", verdict.reporting())
                .with("weeksToSettle", verdict.weeksToSettle())
                .with("options", verdict.results().stream().map(this::result).toList());
    }

    private JsonTree result(Result result) {
        return new JsonTree()
                .with("offers", offers(result.option()))
                .with(
                        "standing",
                        result.standing().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .with("costPerMetre", money.exact(result.byMetre()))
                .with("low", money.exact(result.usual().low()) + "/m")
                .with("high", money.exact(result.usual().high()) + "/m")
                .with("useful", LengthText.exact(result.perScenario().useful()))
                .with("waste", LengthText.exact(result.perScenario().waste()))
                .with("coilTenths", result.perScenario().coilTenths())
                .with("reelTenths", result.perScenario().reelTenths())
                .with("gap", RatioText.exact(result.perScenario().gap()))
                .with("more", money.exact(result.more()))
                .with("errorOfChance", money.exact(result.chance()))
                .with("errorOfHistory", result.history().compareTo(Cost.ZERO) < 0 ? "" : money.exact(result.history()));
    }

    private static List<String> offers(Option option) {
        return option.offers().stream().map(offer -> offer.id()).toList();
    }

    private static JsonTree hint(Reorder hint) {
        return new JsonTree()
                .with("rope", hint.rope())
                .with("due", hint.isDue())
                .with("weeks", hint.weeks())
                .with("wanted", LengthText.exact(hint.wanted()))
                .with("there", LengthText.exact(hint.there()))
                .with("onOrder", LengthText.exact(hint.onOrder()));
    }
}
