package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.Settings;
import bitterend.exchange.StockJson;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.StockPage;
import bitterend.report.page.Document;
import bitterend.report.page.Wording;
import bitterend.stock.Event;
import bitterend.stock.Movement;
import bitterend.work.Booking;
import bitterend.work.PlanAfterwards;
import bitterend.work.ShopAccess;
import bitterend.work.rack.RackDesk;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The shop whose ledger is used, and who uses it. */
final class StockAccess {
    @Parameters(index = "0", paramLabel = "SHOP", description = "The shop folder.")
    Path folder = Path.of("");

    @Option(
            names = "--who",
            paramLabel = "NAME",
            converter = Typed.Words.class,
            description = "Who books this. Default: the name you are logged in as.")
    @Nullable
    String who;

    @Mixin
    UnitsOption units = new UnitsOption();

    @Mixin
    CommonOptions common = new CommonOptions();

    /** The shop. */
    ShopArgument shop() {
        return ShopArgument.in(folder);
    }

    /** The way to the shop. */
    ShopAccess access() {
        return ShopArgument.access(folder);
    }

    /** Where deeds at the rack are booked. */
    RackDesk desk(StockNote note) {
        return new RackDesk(access(), note.caller(this), note.text);
    }

    Clock clock() {
        return Clock.systemUTC();
    }

    String who() {
        return Who.of(who);
    }

    /** Pages in the units of the shop where its settings can be read, else metric. */
    StockPage page() {
        return new StockPage(figures(), ZoneId.systemDefault());
    }

    /** Figures in those units. */
    Figures figures() {
        Optional<Settings> settings = access().settings();
        return new Figures(
                units.of(settings.map(Settings::units).orElse(Units.METRIC)),
                settings.map(Settings::money).orElse(MoneyText.NO_CURRENCY));
    }

    /** Warns, as of a new id that looks like one that is there. */
    static void warn(Terminal terminal, String warning) {
        terminal.err().println("warning: " + warning);
    }

    /** Prints what was booked, and what follows from it; what was refused goes to {@link Faults}. */
    int booked(Terminal terminal, Booking booking) {
        Booking.Booked booked = done(booking);
        Event event = booked.event();
        boolean fact = event.movements().isEmpty();
        int code = fact && !common.json ? ExitCode.DONE.number() : booked(terminal, event.movements());
        if (fact) {
            tell(
                    terminal,
                    "Booked as event " + event.number() + "; taken back with: bitterend stock undo SHOP "
                            + event.number());
        }
        booked.told().forEach(line -> tell(terminal, line));
        tellOfThePlan(terminal, event.movements());
        return code;
    }

    /** What was booked may keep the plan in force from being posted off these reels. */
    void tellOfThePlan(Terminal terminal, List<Movement> movements) {
        new PlanAfterwards(access()).booked(movements).forEach(line -> tell(terminal, line));
    }

    void tell(Terminal terminal, String line) {
        say(terminal, Wording.sentence(line) + "\n");
    }

    /** Tells of several reels that were booked as one event. */
    void toldAsOne(Terminal terminal, Booking.Booked booked) {
        long event = booked.event().number();
        String reels = FindingsPage.count(booked.event().movements().size(), "reel");
        say(
                terminal,
                "Booked as event " + event + ", " + reels + ". Taken back whole: bitterend stock undo SHOP " + event
                        + "\n");
        booked.told().forEach(line -> tell(terminal, line));
        tellOfThePlan(terminal, booked.event().movements());
    }

    /** What was booked; what was refused goes to {@link Faults}. */
    static Booking.Booked done(Booking booking) {
        if (booking instanceof Booking.Refused refused) {
            throw Faults.of(refused);
        }
        return (Booking.Booked) booking;
    }

    /** Prints movements as they were booked. */
    int booked(Terminal terminal, List<Movement> movements) {
        terminal.out()
                .print(common.json ? StockJson.movements(movements) : text(terminal, page().movements(movements)));
        return ExitCode.DONE.number();
    }

    /** A page of stock as text. */
    static String text(Terminal terminal, Document page) {
        return page.text(terminal.ink());
    }

    /** As {@link PageFiles#show}, for a page of stock: under a title where it is set on paper. */
    int show(Terminal terminal, PageFiles files, String title, Answer answer) {
        Document page = files.page(common.json, answer);
        terminal.out().print(common.json ? answer.json().get() : text(terminal, page));
        terminal.out().flush();
        String shop = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
        files.write(terminal, page.titled("Stock", title, shop));
        return ExitCode.DONE.number();
    }

    /** Says something beside the result, unless the result is for a program. */
    void say(Terminal terminal, String text) {
        (common.json ? terminal.err() : terminal.out()).print(text);
    }
}
