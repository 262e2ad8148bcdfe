package bitterend.cli;

import bitterend.catalogue.Codes;
import bitterend.catalogue.CounterRule;
import bitterend.catalogue.Preparation;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.exchange.Shop;
import bitterend.exchange.ShopFolder;
import bitterend.finding.Finding;
import bitterend.measure.Ratio;
import bitterend.measure.Units;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.report.BeforeCut;
import bitterend.report.PlanView;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Gathers what a reader must know to follow a plan. */
final class PlanViews {
    private PlanViews() {}

    static PlanView of(Shop shop, PackingProblem problem, CutPlan plan, Units units) {
        return new PlanView(shop.settings().name(), problem, plan, beforeCut(shop, units), notes(shop));
    }

    private static Map<String, BeforeCut> beforeCut(Shop shop, Units units) {
        Map<String, BeforeCut> byRope = new TreeMap<>();
        for (Rope rope : shop.catalogue().ropes()) {
            byRope.put(rope.id(), beforeCut(shop.catalogue().splices(), rope, units));
        }
        return byRope;
    }

    private static BeforeCut beforeCut(SpliceBook splices, Rope rope, Units units) {
        Optional<Preparation> found = splices.findPreparation(rope);
        return new BeforeCut(
                found.map(each -> each.brief(rope)).orElse(""),
                found.map(each -> each.words(rope, units)).orElse(""),
                splices.bench().findCounter(rope).map(CounterRule::factor).orElse(Ratio.ONE),
                splices.bench().handlingLimit());
    }

    /** What the demand model has to say about the work, as far as it does not stop it. */
    private static List<Finding> notes(Shop shop) {
        Stream<Finding> ofOrders = shop.orders().stream().flatMap(order -> order.demanded().findings().stream());
        Stream<Finding> ofTheShop = liftsWithoutCode(shop) ? Stream.of(ShopFolder.noCode()) : Stream.empty();
        return Stream.of(shop.leftOut().stream(), ofOrders, ofTheShop)
                .flatMap(findings -> findings)
                .toList();
    }

    private static boolean liftsWithoutCode(Shop shop) {
        Codes codes = shop.catalogue().splices().codes();
        return shop.orders().stream()
                .map(order -> order.assembly().terms())
                .anyMatch(terms ->
                        terms.use().isLifting() && codes.holding(terms.code()).isEmpty());
    }
}
