package bitterend.exchange;

import bitterend.catalogue.Rope;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.measure.MoneyText;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.Prices;
import bitterend.packing.ShopCalendar;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** The part of a plan file that keeps what the plan was made from: the ledger, settings, ropes, reels and pieces. */
final class FactsForm {
    /** Older plans have one; since the coil curve none does. */
    private static final String AGE_CREDIT = "ageCredit";

    private static final Map<String, Function<Prices, Cost>> PRICES = prices();

    private final MoneyText money;
    private final Findings findings;

    FactsForm(MoneyText money, Findings findings) {
        this.money = money;
        this.findings = findings;
    }

    JsonTree tree(PlanFacts.Whole facts) {
        PackingProblem problem = facts.problem();
        JsonTree prices = new JsonTree();
        PRICES.forEach((name, price) -> prices.with(name, money.exact(price.apply(problem.prices()))));
        List<JsonTree> values = new ArrayList<>();
        problem.values().forEach((rope, value) -> values.add(new ValueForm(money).tree(rope, value)));
        JsonTree tree = new JsonTree();
        if (facts.ledger().isKept()) {
            tree.with(
                    "ledger",
                    new JsonTree()
                            .with("id", facts.ledger().id())
                            .with("head", facts.ledger().head()));
        }
        return tree.with("calendar", CalendarJson.tree(problem.calendar()))
                .with("prices", prices)
                .with(
                        "ropes",
                        problem.ropes().values().stream()
                                .map(rope -> RopeForm.tree(rope, money))
                                .toList())
                .with("values", values)
                .with(
                        "reels",
                        problem.reels().stream()
                                .map(reel -> reel(reel, facts.movements().get(reel.id())))
                                .toList())
                .with("pieces", PieceForm.trees(problem.pieces()))
                .with("pins", problem.pins().stream().map(FactsForm::pin).toList())
                .with("earlier", texts(problem.earlier()));
    }

    private static JsonTree reel(Reel reel, @org.jspecify.annotations.Nullable Long movements) {
        JsonTree tree = new JsonTree();
        ReelsText.cells(reel).forEach(tree::with);
        return movements == null ? tree : tree.with("movements", movements);
    }

    private static JsonTree pin(Pin pin) {
        JsonTree tree = new JsonTree().with("piece", pin.piece()).with("reel", pin.reel());
        if (pin.isIssued()) {
            tree.with("issued", pin.issued());
        }
        return pin.step() > 0 ? tree.with("step", pin.step()).with("behind", pin.behind()) : tree;
    }

    static JsonTree texts(Map<String, String> texts) {
        JsonTree tree = new JsonTree();
        texts.forEach(tree::with);
        return tree;
    }

    /** What stands there; the findings tell what could not be read. */
    PlanFacts.Whole read(JsonObject facts, LocalDate day) {
        List<Rope> ropes = new RopesJson(money, findings).ropes(facts.objects("ropes"));
        Map<String, Rope> byId = new TreeMap<>();
        ropes.forEach(rope -> byId.put(rope.id(), rope));
        Map<String, StockValue> values = new TreeMap<>();
        for (JsonObject value : facts.objects("values")) {
            values.put(value.fields().require("rope", Readings::id, "?"), new ValueForm(money).read(value));
        }
        if (!values.keySet().equals(byId.keySet())) {
            facts.fields().error("values", "a value for each of the ropes");
        }
        Map<String, Long> movements = new LinkedHashMap<>();
        List<Reel> reels = new ArrayList<>();
        Map<String, String> ids = new HashMap<>();
        ReelsCsv rows = new ReelsCsv(new Ropes(ropes, byId.keySet(), true), findings);
        for (JsonObject entry : facts.objects("reels")) {
            Reel reel = rows.recorded(entry.fields());
            reels.add(reel);
            entry.fields().once("reel", reel.id(), ids);
            if (entry.has("movements")) {
                movements.put(reel.id(), PlanReader.whole(entry.fields(), "movements"));
            }
        }
        PackingProblem problem = new PackingProblem(
                day,
                byId,
                PieceForm.read(facts.objects("pieces"), byId.keySet()),
                reels,
                values,
                prices(facts.object("prices")),
                facts.objects("pins").stream().map(FactsForm::pin).toList(),
                PlanReader.texts(facts.object("earlier")),
                calendar(facts.object("calendar")));
        return new PlanFacts.Whole(ledger(facts), movements, problem);
    }

    private static ShopCalendar calendar(JsonObject calendar) {
        return CalendarJson.read(calendar);
    }

    private static PlanFacts.LedgerMark ledger(JsonObject facts) {
        if (!facts.has("ledger")) {
            return PlanFacts.LedgerMark.NONE;
        }
        JsonObject ledger = facts.object("ledger");
        return new PlanFacts.LedgerMark(
                ledger.fields().require("id", Readings::text, "?"),
                ledger.fields().optional("head", Readings::text, ""));
    }

    private Prices prices(JsonObject prices) {
        Function<String, Cost> price = name -> {
            Cost cost = prices.fields().require(name, money::parseExact, Cost.ZERO);
            if (cost.millis() < 0) {
                prices.fields().error(name, "an amount of money not below nothing");
            }
            return cost.millis() < 0 ? Cost.ZERO : cost;
        };
        return new Prices(
                price.apply(RulePrice.OPENING.member()),
                price.apply(RulePrice.CHANGING.member()),
                price.apply(RulePrice.HANDLING.member()),
                price.apply(RulePrice.SPLIT_ORDER.member()),
                price.apply(RulePrice.MOVED_PIECE.member()),
                price.apply(AGE_CREDIT));
    }

    private static Pin pin(JsonObject pin) {
        return new Pin(
                pin.fields().require("piece", PlanReader::anyText, "?"),
                pin.fields().require("reel", PlanReader::anyText, "?"),
                pin.fields().optional("issued", Readings.whole(1, 999_999_999), 0),
                pin.fields().optional("step", Readings.whole(1, 999_999_999), 0),
                pin.fields().optional("behind", Readings.whole(0, 999_999_999), 0));
    }

    private static Map<String, Function<Prices, Cost>> prices() {
        Map<String, Function<Prices, Cost>> prices = new LinkedHashMap<>();
        prices.put(RulePrice.OPENING.member(), Prices::opening);
        prices.put(RulePrice.CHANGING.member(), Prices::changing);
        prices.put(RulePrice.HANDLING.member(), Prices::handling);
        prices.put(RulePrice.SPLIT_ORDER.member(), Prices::splitOrder);
        prices.put(RulePrice.MOVED_PIECE.member(), Prices::movedPiece);
        prices.put(AGE_CREDIT, Prices::ageCredit);
        return prices;
    }
}
