package bitterend.exchange;

import bitterend.demand.EndWork;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.quoting.BuildUp;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Neighbour;
import bitterend.quoting.PartPrices;
import bitterend.quoting.PlanShares;
import bitterend.quoting.Quote;
import bitterend.quoting.RopeQuote;
import bitterend.quoting.WasteBasis;
import bitterend.quoting.WasteView;
import bitterend.quoting.sharing.Factor;
import bitterend.quoting.sharing.Stability;
import java.time.LocalDate;
import java.util.List;

/** A quote as JSON, exact and for programs: for the file, with all that stands behind it. */
public final class QuoteJson {
    static final String FORMAT = "bitterend/quote/1";

    private final MoneyText money;
    private final QuotedJson quoted;

    public QuoteJson(MoneyText money) {
        this.money = money;
        quoted = new QuotedJson(money);
    }

    /** Format {@code bitterend/quote/1}: for the file. */
    public String forTheFile(Quote quote) {
        return inside(quote).text();
    }

    /** The same as an object of another document. */
    public JsonTree inside(Quote quote) {
        return QuotedJson.head(FORMAT, quote)
                .with(
                        "lines",
                        quote.lines().stream()
                                .map(line -> inside(line, quote.policy().parts()))
                                .toList())
                .with("total", money.print(quote.total()))
                .with("made", quote.made())
                .with("byArrangementSince", quote.request().given().delivery().why())
                .with("ropes", quote.ropes().stream().map(this::rope).toList())
                .with("orders", MarketJson.orders(quote.bill(), money, "reels"))
                .with(
                        "neighbours",
                        quote.neighbours().stream().map(this::neighbour).toList())
                .with("variations", quoted.variations(quote, any -> true))
                .with("notPriced", QuotedJson.lacking(quote))
                .with("accepted", quote.request().given().accepted())
                .with("cutShort", quote.isCutShort());
    }

    /** Format {@code bitterend/plan-shares/1}: what each order of a day caused. */
    public String shares(List<PlanShares.OrderShare> shares) {
        return new JsonTree()
                .with("format", "bitterend/plan-shares/1")
                .with(
                        "orders",
                        shares.stream()
                                .map(share -> new JsonTree()
                                        .with("ropes", share.ropes())
                                        .with("order", share.order())
                                        .with("pieces", share.pieces())
                                        .with("cut", LengthText.exact(share.cut()))
                                        .with("rope", money.print(share.worth()))
                                        .with("share", money.print(share.share()))
                                        .with("byDualPrices", share.proven()))
                                .toList())
                .text();
    }

    private JsonTree inside(LineQuote quoted, PartPrices prices) {
        return this.quoted
                .line(quoted)
                .with("ownRope", quoted.line().ownRope())
                .with("cut", LengthText.exact(quoted.line().cut()))
                .with("sample", LengthText.exact(quoted.line().sample()))
                .with("drawn", LengthText.exact(quoted.drawn()))
                .with("freightInRope", money.print(quoted.within().rope()))
                .with("freightInWaste", money.print(quoted.within().waste()))
                .with("minutes", quoted.line().minutes())
                .with(
                        "work",
                        quoted.line().demanded().work().stream()
                                .map(end -> new JsonTree()
                                        .with("end", end.name())
                                        .with("minutes", quoted.line().minutes(end)))
                                .toList())
                .with("shareOfCuttingAlone", money.print(quoted.alone()))
                .with(
                        "parts",
                        quoted.line().parts().stream()
                                .map(part -> part(part, prices))
                                .toList())
                .with("items", quoted.buildUp().items().stream().map(this::item).toList());
    }

    private JsonTree part(EndWork.Picked part, PartPrices prices) {
        JsonTree tree = new JsonTree()
                .with("item", part.item())
                .with("rope", part.rope().equals(Diameter.NONE) ? "" : DiameterText.exact(part.rope()))
                .with("count", part.count());
        prices.each(part).ifPresent(each -> tree.with("each", money.print(each)));
        return tree;
    }

    private JsonTree item(BuildUp.Item item) {
        return new JsonTree().with("item", item.kind().words()).with("amount", money.print(item.amount()));
    }

    private JsonTree rope(RopeQuote rope) {
        JsonTree waste = new JsonTree();
        for (WasteBasis basis : WasteBasis.values()) {
            waste.with(basis.word(), view(rope.waste().of(basis)));
        }
        return new JsonTree()
                .with("rope", rope.rope())
                .with("lines", rope.lines())
                .with("pieces", rope.shares().problem().pieces().size())
                .with("finished", LengthText.exact(rope.finished()))
                .with("cut", LengthText.exact(rope.book().pieces()))
                .with("cutLoss", LengthText.exact(rope.book().cutLoss()))
                .with("scrap", LengthText.exact(rope.book().scrap()))
                .with("drawn", LengthText.exact(rope.book().drawn()))
                .with("pricePerMetre", money.exact(rope.price()))
                .with("ropeInPieces", money.exact(rope.worth()))
                .with("costAlone", money.exact(rope.shares().cost()))
                .with("provenAlone", money.exact(rope.shares().proven()))
                .with("waste", waste)
                .with("charged", rope.charged().basis().word())
                .with("chargedTotal", money.exact(rope.charged().total()))
                .with("factor", rope.shares().factor().map(Factor::printed).orElse(""))
                .with("stableSplit", word(rope.shares().stability()))
                .with("buying", new QuoteBuyingJson(money).buying(rope.buying()));
    }

    private static String word(Stability stability) {
        if (stability instanceof Stability.Stable) {
            return "stable";
        }
        return stability instanceof Stability.NoneExists ? "none exists" : "not known";
    }

    private JsonTree view(WasteView view) {
        if (view instanceof WasteView.Span span) {
            JsonTree tree = new JsonTree()
                    .with("low", money.exact(span.low()))
                    .with("middle", money.exact(span.middle()))
                    .with("high", money.exact(span.high()))
                    .with("samples", span.samples());
            return span.weeks().mondays().isEmpty()
                    ? tree
                    : tree.with(
                                    "weeks",
                                    span.weeks().mondays().stream()
                                            .map(LocalDate::toString)
                                            .toList())
                            .with("ofSeason", span.weeks().ofSeason())
                            .with("outOfWeeks", span.weeks().outOf());
        }
        return new JsonTree().with("notKnown", ((WasteView.NotKnown) view).reason());
    }

    private JsonTree neighbour(Neighbour neighbour) {
        return new JsonTree()
                .with("line", neighbour.line())
                .with("asked", variant(neighbour.asked()))
                .with("better", variant(neighbour.better()));
    }

    private JsonTree variant(Neighbour.Variant variant) {
        return new JsonTree()
                .with("finished", LengthText.exact(variant.finished().exact()))
                .with("quantity", variant.quantity())
                .with("waste", money.exact(variant.waste()))
                .with("ropeInPieces", money.exact(variant.worth()));
    }
}
