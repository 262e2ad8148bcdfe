package bitterend.exchange;

import static bitterend.exchange.form.Codec.ANY;
import static bitterend.exchange.form.Codec.ID;
import static bitterend.exchange.form.Codec.TEXT;
import static bitterend.exchange.form.Codec.WHOLE_NUMBER;

import bitterend.catalogue.Rope;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Form;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.measure.MoneyText;
import bitterend.packing.Arrival;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.Prices;
import bitterend.packing.ShopCalendar;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/** The part of a plan file that keeps what the plan was made from, both ways: ledger, settings, ropes, reels and pieces. */
final class FactsForm {
    private static final Codec<Integer> COUNTED = Codec.whole(1, 999_999_999);

    private static final Arrival IN_THE_HOUSE = new Arrival("", LocalDate.MIN, LocalDate.MIN);

    /** No count is kept of a reel without a ledger. */
    private static final long NO_LEDGER = -1;

    private final MoneyText money;
    private final LocalDate day;
    private final Findings findings;

    FactsForm(MoneyText money, LocalDate day, Findings findings) {
        this.money = money;
        this.day = day;
        this.findings = findings;
    }

    PlanFacts facts(Members<PlanFacts> facts) {
        return facts.among(each -> (PlanFacts.Whole) each, this::whole);
    }

    private PlanFacts.Whole whole(Members<PlanFacts.Whole> facts) {
        PlanFacts.LedgerMark ledger =
                facts.mayBeObject("ledger", PlanFacts.Whole::ledger, FactsForm::ledger, PlanFacts.LedgerMark.NONE);
        ShopCalendar calendar = facts.object("calendar", each -> each.problem().calendar(), FactsForm::calendar);
        Prices prices = facts.object("prices", each -> each.problem().prices(), this::prices);
        Map<String, Rope> ropes = byId(
                facts.list("ropes", each -> List.copyOf(each.problem().ropes().values()), this::rope));
        Map<String, StockValue> values = values(facts, ropes.keySet());
        List<Counted> reels = facts.list("reels", FactsForm::reels, reel(ropes));
        Map<String, Long> movements = new HashMap<>();
        reels.stream()
                .filter(each -> each.movements() != NO_LEDGER)
                .forEach(each -> movements.put(each.reel().id(), each.movements()));
        Map<String, Arrival> arrivals = new HashMap<>();
        reels.stream()
                .filter(each -> !each.coming().equals(IN_THE_HOUSE))
                .forEach(each -> arrivals.put(each.reel().id(), each.coming()));
        List<PieceForm.Alike> pieces = facts.list(
                "pieces", each -> PieceForm.alike(each.problem().pieces()), new PieceForm(ropes.keySet())::alike);
        LocalDate until = facts.mayBe("until", each -> each.problem().horizon().until(), Codec.DAY, LocalDate.MAX);
        int later =
                facts.mayBe("later", each -> each.problem().horizon().later(), Codec.whole(0, Integer.MAX_VALUE), 0);
        LocalDate asked = facts.mayBe("asked", each -> each.problem().horizon().asked(), Codec.DAY, until);
        List<Horizon.Waiting> waiting =
                facts.mayBeList("waiting", each -> each.problem().horizon().waiting(), FactsForm::waiting);
        return new PlanFacts.Whole(
                ledger,
                movements,
                new PackingProblem(
                        day,
                        ropes,
                        PieceForm.each(pieces),
                        reels.stream().map(Counted::reel).toList(),
                        values,
                        prices,
                        facts.list("pins", each -> each.problem().pins(), FactsForm::pin),
                        facts.free("earlier", each -> each.problem().earlier(), TEXT.orElse("")),
                        calendar,
                        new Horizon(until, later, asked.isBefore(until) ? until : asked, waiting),
                        arrivals,
                        facts.mayBeFree("customers", each -> each.problem().customers(), TEXT.orElse(""))));
    }

    private static PlanFacts.LedgerMark ledger(Members<PlanFacts.LedgerMark> ledger) {
        return new PlanFacts.LedgerMark(
                ledger.is("id", PlanFacts.LedgerMark::id, TEXT),
                ledger.written("head", PlanFacts.LedgerMark::head, TEXT, ""));
    }

    /** What waits, by itself. */
    static JsonTree tree(Horizon.Waiting waiting) {
        return Members.tree(FactsForm::waiting, waiting);
    }

    private static Horizon.Waiting waiting(Members<Horizon.Waiting> waiting) {
        return new Horizon.Waiting(
                waiting.is("rope", Horizon.Waiting::rope, ID),
                waiting.mayBeValues("pieces", Horizon.Waiting::pieces, ANY),
                waiting.mayBe("until", Horizon.Waiting::until, Codec.DAY, LocalDate.MAX),
                waiting.mayBe("order", Horizon.Waiting::order, TEXT, ""),
                waiting.mayBeList("lines", Horizon.Waiting::lines, FactsForm::line));
    }

    private static Horizon.Line line(Members<Horizon.Line> line) {
        return new Horizon.Line(
                line.is("line", Horizon.Line::line, TEXT),
                line.mayBe("due", Horizon.Line::due, Codec.DAY, LocalDate.MAX),
                line.is("pieces", Horizon.Line::pieces, COUNTED),
                line.mayBeValues("undone", Horizon.Line::undone, ANY));
    }

    private static ShopCalendar calendar(Members<ShopCalendar> calendar) {
        return calendar.whole(CalendarJson::tree, CalendarJson::read);
    }

    private Rope rope(Members<Rope> rope) {
        return rope.whole(
                each -> RopeForm.tree(each, money),
                entry -> new RopesJson(money, findings).ropes(List.of(entry)).get(0));
    }

    private static Map<String, Rope> byId(List<Rope> ropes) {
        Map<String, Rope> byId = new TreeMap<>();
        ropes.forEach(rope -> byId.put(rope.id(), rope));
        return byId;
    }

    private Map<String, StockValue> values(Members<PlanFacts.Whole> facts, Set<String> ropes) {
        Map<String, StockValue> values = new TreeMap<>();
        List<OfRope> list = facts.list(
                "values",
                each -> each.problem().values().entrySet().stream()
                        .map(value -> new OfRope(value.getKey(), value.getValue()))
                        .toList(),
                this::value);
        list.forEach(value -> values.put(value.rope(), value.value()));
        if (!values.keySet().equals(ropes)) {
            facts.error("values", "a value for each of the ropes");
        }
        return values;
    }

    /** The curve of a rope. */
    private record OfRope(String rope, StockValue value) {}

    private OfRope value(Members<OfRope> value) {
        return new OfRope(value.is("rope", OfRope::rope, ID), value.among(OfRope::value, new ValueForm(money)::value));
    }

    /** A reel, how many movements it had had, and when it comes if it is not in the house. */
    private record Counted(Reel reel, long movements, Arrival coming) {}

    private static List<Counted> reels(PlanFacts.Whole facts) {
        return facts.problem().reels().stream()
                .map(reel -> new Counted(
                        reel,
                        facts.movements().getOrDefault(reel.id(), NO_LEDGER),
                        facts.problem().arrivals().getOrDefault(reel.id(), IN_THE_HOUSE)))
                .toList();
    }

    private Form<Counted> reel(Map<String, Rope> ropes) {
        ReelsCsv rows =
                new ReelsCsv(new Ropes(List.copyOf(ropes.values()), ropes.keySet(), true, RopesJson.NAME), findings);
        Map<String, String> places = new HashMap<>();
        return reel -> new Counted(
                reel.among(
                        Counted::reel,
                        each -> each.whole(FactsForm::cells, entry -> {
                            Reel read = rows.recorded(entry.fields(), Readings::plannedReel);
                            entry.fields().once("reel", read.id(), places);
                            return read;
                        })),
                reel.mayBe("movements", Counted::movements, WHOLE_NUMBER, NO_LEDGER),
                reel.mayBeObject("coming", Counted::coming, FactsForm::coming, IN_THE_HOUSE));
    }

    private static Arrival coming(Members<Arrival> coming) {
        return new Arrival(
                coming.is("order", Arrival::order, ID),
                coming.is("expected", Arrival::expected, Codec.DAY),
                coming.is("countedFrom", Arrival::from, Codec.DAY));
    }

    private static JsonTree cells(Reel reel) {
        JsonTree tree = new JsonTree();
        ReelsText.cells(reel).forEach(tree::with);
        return tree;
    }

    private Prices prices(Members<Prices> prices) {
        return new Prices(
                price(prices, RulePrice.OPENING.member(), Prices::opening),
                price(prices, RulePrice.CHANGING.member(), Prices::changing),
                price(prices, RulePrice.HANDLING.member(), Prices::handling),
                price(prices, RulePrice.SPLIT_ORDER.member(), Prices::splitOrder),
                price(prices, RulePrice.MOVED_PIECE.member(), Prices::movedPiece),
                // older plans have one; since the coil curve none does
                price(prices, "ageCredit", Prices::ageCredit));
    }

    private Cost price(Members<Prices> prices, String name, Function<Prices, Cost> part) {
        Cost cost = prices.is(name, part, PlanForm.cost(money));
        if (cost.millis() < 0) {
            prices.error(name, "an amount of money not below nothing");
        }
        return cost.millis() < 0 ? Cost.ZERO : cost;
    }

    private static Pin pin(Members<Pin> pin) {
        String piece = pin.is("piece", Pin::piece, ANY);
        String reel = pin.is("reel", Pin::reel, ANY);
        int issued = pin.mayBe("issued", Pin::issued, COUNTED, 0);
        int step = pin.mayBe("step", Pin::step, COUNTED, 0);
        return new Pin(
                piece,
                reel,
                issued,
                step,
                step > 0 ? pin.written("behind", Pin::behind, Codec.whole(0, 999_999_999), 0) : 0,
                pin.mayBe("heldFor", Pin::heldFor, ANY, ""));
    }
}
