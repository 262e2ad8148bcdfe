package bitterend.cli;

import bitterend.day.OpenWork;
import bitterend.day.OrdersTold;
import bitterend.day.RackToday;
import bitterend.exchange.OrderedPieces;
import bitterend.exchange.Shop;
import bitterend.packing.PackingProblem;
import bitterend.report.Figures;
import bitterend.report.OrderWords;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.stock.Ledger;
import bitterend.store.SqliteLedger;
import bitterend.work.AskOrders;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;

/** How things stand with the orders of a shop, for the pages that say so. */
final class OrdersNow {
    private OrdersNow() {}

    /** How far every order has come, and what is to be told of the pieces that are cut. */
    static OrdersTold of(ShopArgument shop, Shop read, LocalDate day) {
        AskOrders question = question(shop, read, day, PlannedPieces.of(shop.folder));
        if (!SqliteLedger.isKeptIn(shop.folder)) {
            return question.withoutLedger();
        }
        try (Ledger ledger = SqliteLedger.openToRead(shop.folder)) {
            return question.of(ledger);
        }
    }

    /** What is to be told of the pieces that are cut: nothing in a shop without a ledger. */
    private static OrdersTold ofCuts(ShopArgument shop, Shop read, LocalDate day) {
        if (!SqliteLedger.isKeptIn(shop.folder)) {
            return OrdersTold.NOTHING;
        }
        try (Ledger ledger = SqliteLedger.openToRead(shop.folder)) {
            return question(shop, read, day, Map.of()).ofCuts(ledger);
        }
    }

    private static AskOrders question(ShopArgument shop, Shop read, LocalDate day, Map<String, String> planned) {
        PackingProblem open = new OpenWork(read.problem(day), shop.rack().orElse(RackToday.NONE)).fresh();
        return new AskOrders(OrderedPieces.book(read), open, planned);
    }

    /** What changed of one cut piece, or that it is spare; a line each, usually none. */
    static Document about(ShopArgument shop, Shop read, String piece, Figures figures) {
        OrdersTold told = ofCuts(shop, read, read.day().orElseGet(() -> LocalDate.now(ZoneId.systemDefault())));
        Writing page = new Writing();
        new OrderWords(figures, shop.folder.toString())
                .first(told.about(piece))
                .forEach(words -> page.paragraph(words + "."));
        return page.document();
    }

    /** What stands at the top of a sheet, a sentence each; usually nothing. */
    static List<String> sentences(ShopArgument shop, Shop read, LocalDate day, Figures figures) {
        return new OrderWords(figures, shop.folder.toString()).first(ofCuts(shop, read, day));
    }

    /** What stands at the top of a page: what changed after cutting, and what is spare; usually nothing. */
    static Document top(ShopArgument shop, Shop read, LocalDate day, Figures figures) {
        return new OrderWords(figures, shop.folder.toString()).top(ofCuts(shop, read, day));
    }
}
