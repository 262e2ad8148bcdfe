package bitterend.cli;

import bitterend.catalogue.BenchTools;
import bitterend.day.Found;
import bitterend.day.OrdersTold;
import bitterend.day.Part;
import bitterend.exchange.NewBench;
import bitterend.exchange.NewShop;
import bitterend.exchange.OrdersJson;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.exchange.QuoteJson;
import bitterend.exchange.QuoteRequestFile;
import bitterend.finding.Findings;
import bitterend.front.TradePages;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.strategy.EffortLevel;
import bitterend.stock.LedgerPlace;
import bitterend.stock.Paid;
import bitterend.store.ServedLedgerPlace;
import bitterend.store.SqliteLedgerPlace;
import bitterend.work.BeginShop;
import bitterend.work.Booking;
import bitterend.work.NamedPlan;
import bitterend.work.Plans;
import bitterend.work.ShopAccess;
import bitterend.work.ShopLedgerPlace;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.WhichPlan;
import bitterend.work.imports.ImportSheets;
import bitterend.work.imports.TakeOver;
import bitterend.work.orders.AskOrders;
import bitterend.work.plans.DayQuestion;
import bitterend.work.plans.PlanDay;
import bitterend.work.plans.PlanSearch;
import bitterend.work.plans.PostPlan;
import bitterend.work.plans.PrintSheets;
import bitterend.work.plans.WhichSheets;
import bitterend.work.rack.ArriveReel;
import bitterend.work.rack.BeginLedger;
import bitterend.work.rack.CorrectReel;
import bitterend.work.rack.LookAfterLedger;
import bitterend.work.rack.RackDesk;
import bitterend.work.trade.AdviseReels;
import bitterend.work.trade.PriceRequest;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A second front beside the command line: it calls the verbs and answers as JSON. No rule is in it. */
public final class PlainFront {
    private final ShopAccess at;
    private final LocalDate day;
    private final String who;

    PlainFront(Path shop, LocalDate day, String who) {
        Clock clock = Clock.systemUTC();
        LedgerPlace place = new ShopLedgerPlace(
                shop, new SqliteLedgerPlace(shop, clock), loft -> new ServedLedgerPlace(loft, shop, clock));
        at = new ShopAccess(shop, place, clock);
        this.day = day;
        this.who = who;
    }

    private ShopNow now() {
        return at.read().found().orElseThrow();
    }

    private MoneyText money() {
        return now().shop().settings().money();
    }

    /** A new shop with an example, at the usual rate. */
    static BeginShop.Result begin(Path folder, String name) {
        MoneyText euro = new MoneyText("EUR", 2);
        NewBench bench = new NewBench(BenchTools.METRIC, List.of());
        return new BeginShop(folder)
                .begin(new NewShop(
                        name, Units.METRIC, euro, euro.parse("45").value().orElseThrow(), bench, "", List.of(), true));
    }

    void open() {
        new BeginLedger(at).begin(at.readFiles().found().orElseThrow().shop(), who);
    }

    /** Plans the day, held to no plan or to one of a number; {@code planner} is whose plan it is. */
    void plan(int from, String planner) {
        plan(from, false, planner);
    }

    /** Calls every issued sheet back and plans its work anew. */
    void planAnew(int from) {
        plan(from, true, Who.of(null));
    }

    private void plan(int from, boolean withdraw, String planner) {
        Plans plans = at.plans(new Findings());
        PlanDay verb = new PlanDay(now(), plans);
        Kept held = from == 0 ? null : plans.read(from, new Findings()).orElseThrow();
        PlanDay.Request request = new PlanDay.Request(day, held, null, withdraw, null);
        DayQuestion question = ((PlanDay.Asked.Ready) verb.ask(request)).question();
        EffortLevel level = EffortLevel.REPRODUCIBLE;
        PlanSearch search = PlanSearch.of(level, level.time(), 0);
        verb.keep(verb.plan(question, search, Watcher.NOBODY), planner);
    }

    /** The reels whose sheets of a plan are out. */
    Set<String> issuedReels(int plan) {
        return at.plans(new Findings()).issuedReels(plan);
    }

    PrintSheets.Sheets issue() {
        Plans plans = at.plans(new Findings());
        PrintSheets.Result result = new PrintSheets(now(), plans)
                .print(new PrintSheets.Request(
                        new NamedPlan(plans).orInForce(null, new Findings()).orElseThrow(),
                        new WhichSheets.All(),
                        who));
        return ((PrintSheets.Result.Printed) result).sheets();
    }

    PostPlan.Result post(String reel) {
        Plans plans = at.plans(new Findings());
        Part part = new Part(List.of(reel), List.of(), Found.AS_PLANNED);
        WhichPlan.Meant meant = WhichPlan.at(now(), plans).of(null, part, new Findings());
        return new PostPlan(now(), plans)
                .post(new PostPlan.Request(((WhichPlan.Meant.One) meant).plan(), part, act -> act.by(who)));
    }

    /** Brings a sheet of the shop's own into its files. */
    TakeOver.Result takeOver(Path sheet, Map<String, String> answers) {
        ImportSheets.Result looked = new ImportSheets(at).look(new ImportSheets.Request(sheet, answers));
        return new TakeOver(at).take((ImportSheets.Result.Looked) looked, who);
    }

    /** Says that a reel is of another rope. */
    Booking correct(String reel, String rope) {
        CorrectReel.RopeOf said = new CorrectReel.RopeOf(
                rope, at.readFiles().found().orElseThrow().shop());
        return new CorrectReel(new RackDesk(at, act -> act.by(who), ""))
                .correct(
                        reel,
                        new CorrectReel.Correction(
                                said, null, new CorrectReel.Papers(null, null, null, null), null, Paid.NOT_SAID))
                .booking();
    }

    /** Carries the ledger to the server that the shop names, or from there into a file. */
    void carry(LedgerPlace.Where where) {
        new LookAfterLedger(at).carry(where);
    }

    /** Books in a reel that another loft of the server sent. */
    Booking arrive(String reel, String newId) {
        return new ArriveReel(new RackDesk(at, act -> act.by(who), ""), now().shop()).book(reel, newId);
    }

    String orders() {
        OrdersTold told = new AskOrders(now(), day).status();
        return OrdersJson.status(day, told.orders(), told.changes(), told.spares(), told.uses());
    }

    String quote(String order) {
        PriceRequest.Result result = new PriceRequest(now())
                .price(
                        QuoteRequestFile.ofOrder(now().shop(), order, day).orElseThrow(),
                        day,
                        Duration.ofSeconds(20),
                        Watcher.NOBODY);
        return new QuoteJson(money()).forTheFile(((PriceRequest.Result.Priced) result).quote());
    }

    String buy() {
        AdviseReels.Result result = new AdviseReels(now())
                .advise(
                        new AdviseReels.Request(
                                day,
                                Duration.ofSeconds(20),
                                0,
                                1,
                                now().shop().settings().spending()),
                        Watcher.NOBODY);
        return TradePages.json(now().shop(), (AdviseReels.Result.Advised) result);
    }
}
