package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import bitterend.market.Claims;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.stock.Delivery;

/** What suppliers delivered otherwise than it was ordered, for programs. */
public final class ClaimsJson {
    private final MoneyText money;

    public ClaimsJson(MoneyText money) {
        this.money = money;
    }

    public String text(Claims claims) {
        return new JsonTree()
                .with("format", "bitterend/claims/1")
                .with("reels", claims.reels())
                .with("claim", money.print(claims.claim()))
                .with(
                        "suppliers",
                        claims.suppliers().stream().map(this::supplier).toList())
                .text();
    }

    private JsonTree supplier(Claims.OfSupplier each) {
        return new JsonTree()
                .with("supplier", each.supplier())
                .with("shortBy", LengthText.exact(each.shortBy()))
                .with("beyond", LengthText.exact(each.beyond()))
                .with("paidForShort", money.print(each.paidForShort()))
                .with("claim", money.print(each.claim()))
                .with(
                        "usuallyLate",
                        each.usual().late().days() + (each.usual().late().working() ? " working days" : " days"))
                .with(
                        "usuallyLateBy",
                        switch (each.usual().source()) {
                            case OF_ALL -> "lateness of the shop";
                            case OF_SUPPLIER -> "lateness of the supplier";
                            case DELIVERIES -> each.usual().deliveries() + " deliveries";
                        })
                .with(
                        "deliveries",
                        each.deliveries().stream().map(this::delivery).toList());
    }

    private JsonTree delivery(Delivery came) {
        return new JsonTree()
                .with("event", came.event())
                .with("reel", came.reel())
                .with("onOrder", came.promised().order())
                .with("rope", came.rope())
                .with("expected", came.promised().expected().toString())
                .with("came", came.day().toString())
                .with("daysLate", came.daysLate())
                .with("ordered", came.promised().written().kept())
                .with("labelled", LengthText.exact(came.labelled()))
                .with("found", LengthText.exact(came.found()))
                .with("shortBy", LengthText.exact(came.shortBy()))
                .with("allowed", LengthText.exact(came.promised().allowed()))
                .with("beyond", LengthText.exact(came.beyond()))
                .with("price", money.print(came.promised().price()))
                .with("paid", money.print(came.paid()))
                .with("claim", money.print(came.paidFor(came.beyond())));
    }
}
