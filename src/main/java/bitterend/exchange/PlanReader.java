package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Sentence;
import bitterend.packing.Bound;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.Reason;
import bitterend.packing.ReelDraw;
import bitterend.packing.Rule;
import bitterend.packing.RunDraw;
import bitterend.packing.Undone;
import bitterend.packing.Unplanned;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads plan files. Whether a plan makes sense is for the checker to say: here only what cannot be read is told. */
final class PlanReader {
    private static final Pattern MILLISECONDS = Pattern.compile("([0-9]{1,15}) ms");
    private static final Pattern BY_CLASS = Pattern.compile("[0-9]{1,18}( [0-9]{1,18}){4}");
    private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,18}|-?[0-8][0-9]{18}");
    private static final Pattern SCALE = Pattern.compile("[1-9][0-9]{0,17}");

    private final Findings findings;
    private MoneyText money = MoneyText.NO_CURRENCY;

    PlanReader(Findings findings) {
        this.findings = findings;
    }

    /** The document; nothing when there is an error in it. */
    Optional<PlanDocument> read(InputFile file) {
        Findings own = new Findings();
        Optional<PlanDocument> document =
                JsonDocument.read(file, PlanJson.FORMAT, own, object -> document(object, own), PlanJson.OLDER);
        // What the shop was warned of when the plan was made is nothing to say of the plan.
        findings.addAll(own.sorted().stream().filter(Finding::isError).toList());
        return own.hasErrors() ? Optional.empty() : document;
    }

    private PlanDocument document(JsonObject object, Findings own) {
        boolean older = object.fields().text("format").orElse("").equals(PlanJson.OLDER);
        object.mayHave(PlanJson.LEFT_OUT, PlanJson.TO_MEASURE, "kept", "bounds", "effort");
        Fields fields = object.fields();
        money = new MoneyText(
                fields.require("currency", ShopJson::currency, MoneyText.NO_CURRENCY.currency()),
                fields.require("minorDigits", Readings.whole(0, 4), 2));
        PlanDocument.Made made = new PlanDocument.Made(
                fields.require("engine", Readings::text, "?"),
                whole(fields, "seed"),
                fields.optional("effort", Readings::text, ""),
                fields.require("time", PlanReader::milliseconds, Duration.ZERO),
                texts(object.object("inputs")),
                List.of());
        CutPlan plan = new CutPlan(
                fields.require("day", Readings::day, LocalDate.EPOCH),
                object.objects("draws").stream().map(this::draw).toList(),
                object.objects("unplanned").stream().map(PlanReader::unplanned).toList(),
                book(object.object("book")),
                cost(fields, "cost"),
                older
                        ? List.of()
                        : object.objects("bounds").stream().map(this::bound).toList());
        int number = fields.optional("number", Readings.whole(1, 999_999_999), 0);
        PlanFacts facts = older ? older(object) : new FactsForm(money, own).read(object.object("facts"), plan.day());
        return new PlanDocument(number, plan, money, made, facts);
    }

    private static PlanFacts older(JsonObject object) {
        return new PlanFacts.Older(
                movements(object.object("movements")), texts(object.object("moved")), texts(object.object("kept")));
    }

    static Map<String, String> texts(JsonObject members) {
        Map<String, String> texts = new LinkedHashMap<>();
        members.names().forEach(name -> texts.put(name, members.fields().require(name, Readings::text, "")));
        return texts;
    }

    private static Map<String, Long> movements(JsonObject movements) {
        Map<String, Long> byReel = new LinkedHashMap<>();
        movements.names().forEach(reel -> byReel.put(reel, whole(movements.fields(), reel)));
        return byReel;
    }

    private ReelDraw draw(JsonObject draw) {
        List<RunDraw> runs = draw.objects("runs").stream().map(PlanReader::run).toList();
        if (runs.isEmpty()) {
            draw.fields().error("runs", "a list of at least one run");
        }
        return new ReelDraw(
                draw.fields().require("reel", Readings::id, "?"),
                length(draw.fields(), "leadTrim"),
                runs,
                length(draw.fields(), "leftOnReel"),
                book(draw.object("book")),
                cost(draw.fields(), "cost"));
    }

    private static RunDraw run(JsonObject run) {
        Fields fields = run.fields();
        return new RunDraw(
                fields.require("run", Readings.whole(1, 999_999_999), 1),
                length(fields, "from"),
                length(fields, "to"),
                run.objects("cuts").stream().map(PlanReader::cut).toList(),
                length(fields, "left"),
                fields.require("rest", Readings.word(RunDraw.Rest.values(), PlanJson::word), RunDraw.Rest.SCRAP));
    }

    private static Cut cut(JsonObject cut) {
        Fields fields = cut.fields();
        return new Cut(fields.require("piece", PlanReader::anyText, "?"), length(fields, "from"), length(fields, "to"));
    }

    private static LengthBook book(JsonObject book) {
        List<Length> parts = PlanJson.BOOK.keySet().stream()
                .map(name -> length(book.fields(), name))
                .toList();
        return new LengthBook(
                parts.get(0),
                parts.get(1),
                parts.get(2),
                parts.get(3),
                parts.get(4),
                parts.get(5),
                parts.get(6),
                parts.get(7),
                parts.get(8));
    }

    private static Unplanned unplanned(JsonObject unplanned) {
        Fields fields = unplanned.fields();
        return new Unplanned(
                fields.require("piece", PlanReader::anyText, "?"),
                new Reason(
                        fields.require("rule", Readings.word(Rule.values(), PlanJson::word), Rule.PLANNED),
                        sentence(unplanned, "reason")),
                sentence(unplanned, "help"));
    }

    /** A plan of an older version keeps its sentences without their lengths: those are read in metres. */
    private static Sentence sentence(JsonObject unplanned, String name) {
        String words = unplanned.fields().optional(name, PlanReader::anyText, "");
        List<Length> lengths = new ArrayList<>();
        for (String text : unplanned.texts(name + "Lengths")) {
            LengthText.parse(text).value().ifPresentOrElse(lengths::add, () -> unplanned
                    .fields()
                    .error(name + "Lengths", "lengths such as 12500 mm"));
        }
        return Sentence.of(words, lengths);
    }

    private Bound bound(JsonObject bound) {
        Fields fields = bound.fields();
        return new Bound(
                bound.texts("ropes"),
                cost(fields, "best"),
                cost(fields, "root"),
                scale(fields),
                Undone.of(byClass(fields, "undone")),
                byClass(fields, "undonePrices"),
                bound.objects("duals").stream().map(PlanReader::dual).toList(),
                bound.has("cases") ? cases(bound.object("cases")) : Bound.Cases.NONE);
    }

    private Bound.Cases cases(JsonObject cases) {
        return new Bound.Cases(
                cases.objects("costs").stream()
                        .map(each -> new Bound.CostProof(
                                cost(each.fields(), "cost"), ProofReader.read(each.object("proof"))))
                        .toList(),
                cases.objects("least").stream()
                        .map(each -> new Bound.LeastProof(
                                each.fields().require("class", Readings.whole(1, Undone.CLASSES), 1),
                                whole(each.fields(), "weight"),
                                ProofReader.read(each.object("proof"))))
                        .toList());
    }

    private static Bound.Dual dual(JsonObject dual) {
        return new Bound.Dual(dual.texts("pieces"), whole(dual.fields(), "price"));
    }

    private static Length length(Fields fields, String name) {
        return fields.require(name, LengthText::parse, Length.ZERO);
    }

    private Cost cost(Fields fields, String name) {
        return fields.require(name, money::parseExact, Cost.ZERO);
    }

    /** What numbers of a proof are counted in: parts of a thousandth of a coin, one or more. */
    static long scale(Fields fields) {
        Reading<Long> reading = text -> SCALE.matcher(text).matches()
                ? Parsed.of(Long.parseLong(text))
                : Parsed.refused("a whole number from 1 on");
        return fields.require("scale", reading, 1L);
    }

    static long whole(Fields fields, String name) {
        Reading<Long> reading = text ->
                WHOLE.matcher(text).matches() ? Parsed.of(Long.parseLong(text)) : Parsed.refused("a whole number");
        return fields.require(name, reading, 0L);
    }

    /** A whole number for each class of urgency. */
    private static List<Long> byClass(Fields fields, String name) {
        Reading<List<Long>> reading = text -> BY_CLASS.matcher(text).matches()
                ? Parsed.of(Arrays.stream(text.split(" ")).map(Long::parseLong).toList())
                : Parsed.refused("five whole numbers, such as 0 36 0 0 5");
        return fields.require(name, reading, Bound.noPrices());
    }

    private static Parsed<Duration> milliseconds(String text) {
        Matcher milliseconds = MILLISECONDS.matcher(text);
        return milliseconds.matches()
                ? Parsed.of(Duration.ofMillis(Long.parseLong(milliseconds.group(1))))
                : Parsed.refused("a time such as 10000 ms");
    }

    static Parsed<String> anyText(String text) {
        return Parsed.of(text);
    }
}
