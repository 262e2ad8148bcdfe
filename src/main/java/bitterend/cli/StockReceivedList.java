package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.day.Receipt;
import bitterend.exchange.ReceiptCsv;
import bitterend.exchange.ReceiptJson;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.report.FindingsPage;
import bitterend.report.ReceiptPage;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.rack.ReceiveList;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** All that a supplier's list says came in: shown, and booked as one event where that is asked for. */
record StockReceivedList(Terminal terminal, StockAccess at, StockNote note, PageFiles files, Asked asked) {
    /**
     * What is asked of a list.
     *
     * @param onOrder the order of reels of every row that names none; empty for none
     * @param freight what bringing the delivery cost, as it was typed; null where it was not
     * @param accept whether it is booked
     * @param sure whether what is set apart is booked, too
     */
    record Asked(String onOrder, @Nullable String freight, boolean accept, boolean sure) {}

    /** Books or shows what a file says; as an exit code. */
    int book(ShopNow now, Path list) {
        MoneyText money = now.shop().settings().money();
        Money bringing = TypedMoney.freight(asked.freight(), money);
        ReceiveList verb = new ReceiveList(at.desk(note), now);
        ReceiptCsv.Read read = verb.read(list, asked.onOrder());
        terminal.err().print(FindingsPage.text(read.findings(), terminal.ink()));
        if (read.findings().stream().anyMatch(finding -> finding.isError())) {
            return ExitCode.BAD_INPUT.number();
        }
        Set<String> said =
                asked.sure() ? read.rows().stream().map(row -> row.reel().id()).collect(Collectors.toSet()) : Set.of();
        Receipt receipt = verb.compare(read.rows(), said, bringing);
        Optional<Booking.Booked> booked = asked.accept()
                ? Optional.of(StockAccess.done(verb.accept(read.rows(), said, bringing)))
                : Optional.empty();
        long event = booked.map(each -> each.event().number()).orElse(0L);
        at.show(
                terminal,
                files,
                "Received",
                new Answer(
                        () -> new ReceiptJson(money).text(receipt, said, event),
                        () -> new ReceiptPage(at.units.figures(now.shop())).of(receipt)));
        booked.ifPresent(each -> {
            at.toldAsOne(terminal, each);
            each.event()
                    .movements()
                    .forEach(movement ->
                            at.say(terminal, at.page().label(movement.entry().after())));
        });
        return ExitCode.DONE.number();
    }
}
