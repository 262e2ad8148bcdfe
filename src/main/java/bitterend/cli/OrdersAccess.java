package bitterend.cli;

import bitterend.exchange.OrdersJson;
import bitterend.report.page.Wording;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.orders.Desk;
import java.util.Optional;
import java.util.function.BiFunction;
import picocli.CommandLine.Mixin;

/** The shop whose ordered pieces are decided about, who decides and why. */
final class OrdersAccess {
    @Mixin
    StockAccess at = new StockAccess();

    @Mixin
    StockNote note = new StockNote();

    /** The shop with the reels of its ledger; nothing when it has errors. */
    Optional<ShopNow> read(Terminal terminal) {
        return at.shop().readOrComplain(terminal);
    }

    /** Where a shop's orders are decided about. */
    Desk desk(ShopNow now) {
        return new Desk(now.at(), now.book(), note.caller(at));
    }

    /** Books something and tells what follows from it. */
    int book(Terminal terminal, BiFunction<Desk, ShopNow, Booking> verb) {
        Optional<ShopNow> read = read(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : told(terminal, verb.apply(desk(read.get()), read.get())))
                .number();
    }

    private ExitCode told(Terminal terminal, Booking booking) {
        if (booking instanceof Booking.Refused refused) {
            terminal.err().println("error: " + refused.why() + ". Nothing was booked.");
            return ExitCode.BAD_INPUT;
        }
        Booking.Booked booked = (Booking.Booked) booking;
        if (at.common.json) {
            terminal.out().print(OrdersJson.booked(booked.event().number(), booked.told()));
        } else {
            booked.told().forEach(line -> terminal.out().println(Wording.sentence(line + ".")));
            terminal.out().println("Event " + booked.event().number() + ".");
        }
        return ExitCode.DONE;
    }
}
