package bitterend.cli;

import bitterend.day.OpenWork;
import bitterend.day.RackToday;
import bitterend.exchange.OrderedPieces;
import bitterend.exchange.OrdersJson;
import bitterend.exchange.Shop;
import bitterend.packing.PackingProblem;
import bitterend.stock.Ledger;
import bitterend.work.Booking;
import bitterend.work.Desk;
import bitterend.work.ShopNow;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import picocli.CommandLine.Mixin;

/** The shop whose ordered pieces are decided about, who decides and why. */
final class OrdersAccess {
    @Mixin
    StockAccess at = new StockAccess();

    @Mixin
    StockNote note = new StockNote();

    /** The shop with the reels of its ledger; nothing when it has errors. */
    Optional<ShopNow> read(Terminal terminal) {
        return shop().readOrComplain(terminal);
    }

    private ShopArgument shop() {
        ShopArgument shop = new ShopArgument();
        shop.folder = at.folder;
        return shop;
    }

    /** What is still to be cut today, by what the ledger says when it is asked. */
    Function<Ledger.Stock, PackingProblem> open(Shop read, DayOption day) {
        return stock -> new OpenWork(read.problem(day.of(read)), RackToday.of(stock)).fresh();
    }

    /** Books something and tells what follows from it. */
    int book(Terminal terminal, BiFunction<Desk, Shop, Booking> verb) {
        Optional<Shop> read = read(terminal).map(ShopNow::shop);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Booking booking =
                verb.apply(new Desk(at.access(), OrderedPieces.book(read.get()), note.caller(at)), read.get());
        return told(terminal, booking).number();
    }

    private ExitCode told(Terminal terminal, Booking booking) {
        if (booking instanceof Booking.Refused refused) {
            terminal.err()
                    .println("error: " + Faults.typed(refused.why(), at.folder.toString()) + ". Nothing was booked.");
            return ExitCode.BAD_INPUT;
        }
        Booking.Booked booked = (Booking.Booked) booking;
        if (at.common.json) {
            terminal.out().print(OrdersJson.booked(booked.event().number(), booked.told()));
        } else {
            booked.told().forEach(line -> terminal.out().println(line + "."));
            terminal.out().println("Event " + booked.event().number() + ".");
        }
        return ExitCode.DONE;
    }
}
