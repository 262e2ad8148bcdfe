package bitterend.exchange;

import bitterend.buying.IdleReel;
import bitterend.buying.IdleRope;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.Cost;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import java.time.LocalDate;
import java.util.List;

/** Rope that nobody is likely to want, for programs. */
public final class IdleJson {
    private final MoneyText money;

    public IdleJson(MoneyText money) {
        this.money = money;
    }

    public String text(LocalDate day, IdleRope.Limits limits, List<IdleReel> idle) {
        return new JsonTree()
                .with("format", "bitterend/idle/1")
                .with("day", day.toString())
                .with("weeks", limits.weeks())
                .with("near", limits.near())
                .with("worth", money.print(idle.stream().map(IdleReel::worth).reduce(Cost.ZERO, Cost::plus)))
                .with(
                        "costsAYear",
                        money.print(idle.stream().map(IdleReel::holding).reduce(Cost.ZERO, Cost::plus)))
                .with("reels", idle.stream().map(this::tree).toList())
                .text();
    }

    private JsonTree tree(IdleReel each) {
        JsonTree tree = new JsonTree()
                .with("reel", each.reel().id())
                .with("rope", each.reel().rope())
                .with("place", each.reel().where().place())
                .with("length", LengthText.exact(each.reel().length()))
                .with("full", each.reel().full())
                .with("why", (Object)
                        each.why().stream().map(IdleReel.Why::words).toList());
        if (each.weeks() != IdleReel.NEVER) {
            tree.with("weeks", each.weeks());
        }
        if (!each.since().equals(LocalDate.MIN)) {
            tree.with("since", each.since().toString());
        }
        LocalDate useBy = each.reel().papers().useBy();
        return tree.with("useBy", useBy.equals(LocalDate.MAX) ? "" : useBy.toString())
                .with("worth", money.print(each.worth()))
                .with("costsAYear", money.print(each.holding()));
    }
}
