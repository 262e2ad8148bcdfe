package bitterend.exchange;

import bitterend.buying.steady.Figure;
import bitterend.buying.steady.LeadTime;
import bitterend.buying.steady.SteadyStudy;
import bitterend.buying.steady.SteadyVerdict;
import bitterend.buying.steady.Way;
import bitterend.buying.steady.WayFound;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.IntStream;

/** What a study of {@code buy} answers to other programs. */
public final class BuyJson {
    private final MoneyText money;

    public BuyJson(MoneyText money) {
        this.money = money;
    }

    /** {@code {"format": "bitterend/buy-study/3", ...}}: every way to buy, for each rope. */
    public String study(List<SteadyVerdict> verdicts) {
        return new JsonTree()
                .with("format", "bitterend/buy-study/3")
                .with("ropes", verdicts.stream().map(this::verdict).toList())
                .text();
    }

    private JsonTree verdict(SteadyVerdict verdict) {
        SteadyStudy study = verdict.study();
        return new JsonTree()
                .with("rope", study.rope().id())
                .with("day", study.day().toString())
                .with("seed", study.size().seed())
                .with("fromRack", study.start().today())
                .with("warmUpWeeks", study.warmUp())
                .with("weeks", study.size().weeks())
                .with("pastWeeks", study.demand().past().count())
                .with("season", study.demand().shape().season())
                .with("growth", RatioText.exact(new Ratio(study.demand().shape().growth(), 1_000)))
                .with("weekly", LengthText.exact(study.weekly()))
                .with("service", RatioText.exact(study.goal().service()))
                .with("mostWeeks", study.goal().mostWeeks())
                .with("scenarios", verdict.scenarios())
                .with("reporting", verdict.reporting())
                .with("advised", verdict.advised().way().offers())
                .with(
                        "ways",
                        verdict.found().stream()
                                .map(found -> way(verdict, found))
                                .toList())
                .with(
                        "notBought",
                        study.notBought().stream()
                                .map(each -> new JsonTree()
                                        .with("offer", each.offer().id())
                                        .with("why", Codec.word(each.why())))
                                .toList())
                .with("leftOut", MarketJson.leftOut(study.leftOut()));
    }

    private JsonTree way(SteadyVerdict verdict, WayFound found) {
        return new JsonTree()
                .with(
                        "rules",
                        IntStream.range(0, found.points().size())
                                .mapToObj(i -> rule(
                                        found.way().rules().get(i),
                                        found.points().get(i)))
                                .toList())
                .with("standing", Codec.word(found.standing()))
                .with("costPerMetre", ends(found.byMetre(), millis -> money.exact(new Cost(millis))))
                .with("morePerMetre", ends(found.more(), millis -> money.exact(new Cost(millis))))
                .with(
                        "late",
                        ends(found.late(), late -> RatioText.exact(new Ratio(late, SteadyVerdict.PER_TEN_THOUSAND))))
                .with("there", ends(found.stock(), mm -> LengthText.exact(new Length(mm))))
                .with("weeksThereTenths", verdict.weekTenths(found.stock().value()))
                .with("tied", ends(found.tied(), millis -> money.exact(new Cost(millis))))
                .with("usedAYear", LengthText.exact(found.year().used()))
                .with("scrapAYear", LengthText.exact(found.year().scrap()))
                .with("reelTenthsAYear", found.year().reelTenths())
                .with("coilTenths", found.year().coilTenths());
    }

    private static JsonTree rule(Way.Rule rule, Figure point) {
        LeadTime lead = rule.size().lead();
        return new JsonTree()
                .with("offer", rule.size().offer().id())
                .with("leadDays", lead.days())
                .with("leadSpread", lead.spread())
                .with("usuallyLate", lead.late())
                .with("below", ends(point, mm -> LengthText.exact(new Length(mm))))
                .with("reels", rule.reels());
    }

    private static JsonTree ends(Figure figure, LongFunction<String> text) {
        return new JsonTree()
                .with("value", text.apply(figure.value()))
                .with("low", figure.known() ? text.apply(figure.low()) : "")
                .with("high", figure.known() ? text.apply(figure.high()) : "");
    }
}
