package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Rope;
import bitterend.market.Bill;
import bitterend.market.NewOrder;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.RatioText;
import bitterend.quoting.Letter;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What each supplier is told that is ordered: the shop and its address, our numbers, reels, prices, freight, days. Nothing is sent. */
public final class NewOrderPage {
    private final Figures figures;
    private final Catalogue catalogue;

    public NewOrderPage(Figures figures, Catalogue catalogue) {
        this.figures = figures;
        this.catalogue = catalogue;
    }

    /** The orders, one below the other. */
    public Document of(String shop, Letter letter, NewOrder order) {
        Writing page = new Writing();
        for (Bill.Order each : order.bill().orders()) {
            page.heading("Order of " + Wording.printable(shop) + " to "
                    + ReorderPage.supplierName(each.supplier().name()));
            one(page, shop, letter, order, each);
        }
        return page.document();
    }

    private void one(Writing page, String shop, Letter letter, NewOrder order, Bill.Order each) {
        TableRows facts = new TableRows(Column.words(""), Column.words(""));
        fact(
                facts,
                "to",
                Stream.of(
                        each.supplier().name(),
                        each.supplier().address(),
                        each.supplier().contact()));
        fact(
                facts,
                "from",
                Stream.concat(Stream.of(shop), Stream.concat(letter.address().stream(), Stream.of(letter.contact()))));
        fact(facts, "day", Stream.of(order.day().toString()));
        page.table(facts);
        page.paragraph("We order:");
        List<NewOrder.Line> lines = order.of(each.supplier().name());
        page.table(lines(lines));
        page.paragraph(sum(each));
        lines.forEach(line -> terms(line).forEach(page::paragraph));
        order.bill().objections().stream()
                .filter(objection -> ofSupplier(objection, each.supplier().name()))
                .map(this::objection)
                .forEach(page::caution);
    }

    private static void fact(TableRows table, String what, Stream<String> words) {
        String all =
                words.filter(each -> !each.isEmpty()).map(Wording::printable).collect(Collectors.joining("\n"));
        if (!all.isEmpty()) {
            table.row(what, all);
        }
    }

    private TableRows lines(List<NewOrder.Line> lines) {
        TableRows table = new TableRows(
                Column.words("our number"),
                Column.words("rope"),
                Column.figure("reels"),
                Column.figure("of"),
                Column.figure("each"),
                Column.figure("together"),
                Column.words("wanted on"));
        for (NewOrder.Line line : lines) {
            Money each = line.offer().terms().price().at(line.reels());
            table.row(
                    Wording.printable(line.number()),
                    Wording.printable(name(line.offer().rope())),
                    "" + line.reels(),
                    figures.written(line.offer().made().written()),
                    figures.money(each.fine()),
                    figures.money(each.times(line.reels()).fine()),
                    "" + line.expected());
        }
        return table;
    }

    private String name(String rope) {
        return catalogue
                        .findRope(rope)
                        .map(Rope::name)
                        .filter(name -> !name.isEmpty())
                        .orElse(rope) + " (" + rope + ")";
    }

    private String sum(Bill.Order each) {
        Bill.Freight freight = each.freight();
        String way = freight.free()
                ? "Carriage is paid by you from "
                        + figures.money(each.supplier().freight().freeFrom().fine()) + " on."
                : freight.sum().equals(Money.ZERO)
                        ? "No carriage was agreed."
                        : "Carriage as agreed " + figures.money(freight.sum().fine()) + ", together "
                                + figures.money(each.sum().fine()) + ".";
        return "Reels " + figures.money(each.goods().fine()) + ". " + way;
    }

    /** What must be said of a line beside its figures. */
    private List<String> terms(NewOrder.Line line) {
        String number = Wording.printable(line.number()) + ": ";
        Length allowed = line.offer().made().length().minus(line.offer().usable());
        Stream<String> length = allowed.isPositive()
                ? Stream.of("a reel may come shorter by "
                        + RatioText.percent(line.offer().made().tolerance()) + ", " + figures.length(allowed)
                        + ", and no more")
                : Stream.of("no reel may come shorter than this");
        Stream<String> lot = line.offer().made().oneLot() && line.reels() > 1
                ? Stream.of("all reels of one production run")
                : Stream.empty();
        String certificate = line.offer().made().certificate();
        Stream<String> papers = certificate.isEmpty()
                ? Stream.empty()
                : Stream.of("with certificate: " + Wording.printable(certificate)
                        + ", its number and the production run on each reel. A reel that comes without them is not"
                        + " cut for work that asks for a certificate");
        Stream<String> note = line.note().isEmpty() ? Stream.empty() : Stream.of(Wording.printable(line.note()));
        return List.of(number
                + Stream.of(length, lot, papers, note).flatMap(each -> each).collect(Collectors.joining("; ")) + ".");
    }

    private static boolean ofSupplier(Bill.Objection objection, String supplier) {
        if (objection instanceof Bill.Objection.BelowMinimumOrder below) {
            return below.supplier().name().equals(supplier);
        }
        if (objection instanceof Bill.Objection.CannotBeHad not) {
            return not.leftOut().offer().supplier().equals(supplier);
        }
        return objection instanceof Bill.Objection.BelowMinimum few
                ? few.offer().supplier().equals(supplier)
                : objection instanceof Bill.Objection.AboveSupply many
                        && many.offer().supplier().equals(supplier);
    }

    private String objection(Bill.Objection objection) {
        if (objection instanceof Bill.Objection.BelowMinimumOrder below) {
            return "Below the least that this supplier sends, "
                    + figures.money(below.supplier().minimumOrder().fine()) + ".";
        }
        if (objection instanceof Bill.Objection.CannotBeHad not) {
            return Wording.printable(not.leftOut().offer().id()) + " cannot be had by offers.csv: "
                    + switch (not.leftOut().why()) {
                        case JOINED -> "its reels may be joined";
                        case NO_LONGER_VALID -> "the offer is over";
                        case NOTHING_LEFT -> "nothing is left";
                        case SUPPLY_BELOW_MINIMUM -> "fewer are left than the least that is sent";
                    } + ".";
        }
        if (objection instanceof Bill.Objection.BelowMinimum few) {
            return Wording.printable(few.offer().id()) + ": fewer than the least of "
                    + few.offer().terms().minimum() + " reels.";
        }
        Bill.Objection.AboveSupply many = (Bill.Objection.AboveSupply) objection;
        return Wording.printable(many.offer().id()) + ": more than the "
                + FindingsPage.count(many.offer().terms().supply(), "reel") + " there are.";
    }
}
