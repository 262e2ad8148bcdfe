package bitterend.work.plans;

import bitterend.catalogue.Codes;
import bitterend.exchange.Shop;
import bitterend.exchange.ShopFolder;
import bitterend.finding.Finding;
import bitterend.measure.Units;
import java.util.List;
import java.util.stream.Stream;

/** What a reader of a plan must know of the work, such as first articles to measure, as far as it does not stop it. */
public final class PlanNotes {
    private PlanNotes() {}

    /** In these units, as far as its figures are not printed already. */
    public static List<Finding> of(Shop shop, Units units) {
        Stream<Finding> ofOrders = shop.orders().stream()
                .flatMap(order -> order.demanded().findings().stream())
                .map(finding -> finding.in(units));
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
