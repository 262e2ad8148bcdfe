package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.after.AfterCalculation;
import bitterend.quoting.after.AfterLine;
import bitterend.quoting.after.Learned;
import bitterend.quoting.after.RopePrice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What jobs took against their quotes, for programs. */
public final class AfterJson {
    private final MoneyText money;

    public AfterJson(MoneyText money) {
        this.money = money;
    }

    /** Format {@code bitterend/quote-comparison/3}: quoted against posted, by rope, line and item. */
    public String comparison(AfterCalculation after) {
        return new JsonTree()
                .with("format", "bitterend/quote-comparison/3")
                .with("quote", after.quote())
                .with("orders", after.orders())
                .with("ropePrices", (Object) after.sources().stream()
                        .sorted()
                        .map(RopePrice.Source::words)
                        .toList())
                .with("tellsFreight", after.tellsFreight())
                .with("countedAsPlanned", after.asPlanned())
                .with("ropes", after.ropes().stream().map(AfterJson::rope).toList())
                .with("lines", after.lines().stream().map(this::line).toList())
                .text();
    }

    /** The same where nothing is compared yet: why not. */
    public String nothing(String why) {
        return new JsonTree()
                .with("format", "bitterend/quote-comparison/3")
                .with("notCompared", why)
                .text();
    }

    /** Format {@code bitterend/quote-learned/1}: where the quotes of all jobs were off. */
    public String learned(Learned learned) {
        return new JsonTree()
                .with("format", "bitterend/quote-learned/1")
                .with("jobs", learned.jobs())
                .with("ropes", learned.ropes().stream().map(this::rope).toList())
                .with("ends", learned.ends().stream().map(AfterJson::end).toList())
                .text();
    }

    private JsonTree rope(Learned.OfRope rope) {
        JsonTree tree = new JsonTree()
                .with("rope", rope.rope())
                .with("jobs", rope.jobs())
                .with("quoted", bill(rope.quoted()))
                .with("posted", bill(rope.posted()));
        rope.proposed().ifPresent(perMille -> tree.with("proposedWastePerMille", perMille));
        return tree;
    }

    private JsonTree bill(Learned.Bill bill) {
        return new JsonTree()
                .with("rope", money.print(bill.rope()))
                .with("waste", money.print(bill.waste()))
                .with("spoilage", money.print(bill.spoilage()))
                .with("wastePerMille", bill.wastePerMille());
    }

    private static JsonTree end(Learned.OfEnd end) {
        JsonTree tree = new JsonTree()
                .with("end", end.end())
                .with("termination", end.termination())
                .with("jobs", end.jobs())
                .with("made", end.made())
                .with("minutesQuoted", end.quoted())
                .with("minutesPosted", end.posted());
        end.proposed().ifPresent(minutes -> tree.with("proposedMinutesEach", minutes));
        return tree;
    }

    private static JsonTree rope(AfterCalculation.OfRope rope) {
        return new JsonTree()
                .with("rope", rope.rope())
                .with(
                        "quoted",
                        new JsonTree()
                                .with("pieces", rope.pieces().quoted())
                                .with(
                                        "piecesAndCutLoss",
                                        LengthText.exact(rope.taken().quoted()))
                                .with("drawn", LengthText.exact(rope.drawn().quoted())))
                .with(
                        "posted",
                        new JsonTree()
                                .with("pieces", rope.pieces().posted())
                                .with(
                                        "piecesAndCutLoss",
                                        LengthText.exact(rope.taken().posted()))
                                .with("drawn", LengthText.exact(rope.drawn().posted())));
    }

    private JsonTree line(AfterLine line) {
        JsonTree tree = new JsonTree()
                .with("line", line.quoted().name())
                .with("pieces", line.pieces().ordered())
                .with("good", line.pieces().good())
                .with("spoiled", line.pieces().spoiled())
                .with("scrap", LengthText.exact(line.rope().scrap()))
                .with("compared", line.pieces().isWhole());
        if (!line.pieces().isWhole()) {
            return tree;
        }
        Map<Kind, Money> posted = line.posted();
        List<JsonTree> items = new ArrayList<>();
        posted.forEach((kind, amount) -> items.add(new JsonTree()
                .with("item", AfterLine.words(kind))
                .with("quoted", money.print(line.quoted(kind)))
                .with("posted", money.print(amount))));
        return tree.with("minutesQuoted", line.quoted().allMinutes())
                .with("minutesPosted", line.work().minutes())
                .with("minutesBookedForPieces", line.pieces().timed())
                .with("items", items)
                .with("price", money.print(line.quoted().price()))
                .with("freightQuoted", money.print(line.freight()))
                .with(
                        "freightBooked",
                        money.print(line.rope().freight().booked().rounded()))
                .with("marginQuoted", money.print(line.quotedMargin()))
                .with("marginEarned", money.print(line.earned()));
    }
}
