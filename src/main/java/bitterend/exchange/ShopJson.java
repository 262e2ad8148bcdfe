package bitterend.exchange;

import bitterend.buying.Spending;
import bitterend.catalogue.BenchTools;
import bitterend.day.BenchHours;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.LocalForm;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.market.UsualLateness;
import bitterend.measure.Cost;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.ServiceShare;
import bitterend.measure.Units;
import bitterend.packing.Prices;
import bitterend.packing.ShopCalendar;
import bitterend.quoting.QuotePolicy;
import bitterend.stock.LoftAddress;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code shop.json}: units, currency, day, allowances of a cut, prices of the rules. */
final class ShopJson {
    static final String NAME = "shop.json";

    static final String FORMAT = "bitterend/shop/1";
    private static final Reading<BenchTools> BENCH_TOOLS = Readings.word(BenchTools.values(), BenchTools::word);
    private static final Pattern MINUTES = Pattern.compile("([0-9]{1,4})(?:[.]([0-9]))? *min");
    private static final Pattern CODE = Pattern.compile("\\b[A-Z]{3}\\b");
    private static final Pattern PER_HOUR = Pattern.compile("(.*?) */ *h");
    private static final Pattern SECONDS = Pattern.compile("([0-9]{1,5}) *s");
    private static final Pattern A_YEAR = Pattern.compile("(.*?) *(a year|/ *year)?");
    private static final long SECONDS_OF_AN_HOUR = 3600;
    private static final int MOST_WEEKS = 520;
    private static final int USUAL_ROOM_SECONDS = 8;
    static final String USUAL_ROOM = USUAL_ROOM_SECONDS + " s";
    /** Prices of an older curve. */
    private static final String SHARE = "shareAtKeepFrom";

    private static final List<String> GONE = List.of("ageCredit", "coilCharge");

    /** A currency code of three capital letters. */
    static final Codec<String> CURRENCY =
            new Codec<>(code -> code, ShopJson::currency, MoneyText.NO_CURRENCY.currency());

    private ShopJson() {}

    /** The settings as far as they can be read; nothing when the file cannot be used at all. */
    static Optional<Settings> read(InputFile file, Findings findings) {
        return JsonDocument.read(file, FORMAT, findings, ShopJson::settings);
    }

    /** Usual settings of no shop in particular, so that the other files can be looked at. */
    static Settings placeholder() {
        MoneyText money = MoneyText.NO_CURRENCY;
        Settings.Holding holding = new Settings.Holding(Settings.Holding.USUAL_INTEREST, Cost.ZERO);
        Length step = new Length(10);
        return new Settings(
                "?",
                Units.METRIC,
                money,
                LocalDate.MIN,
                ShopCalendar.USUAL,
                Prices.NONE,
                holding,
                new Settings.Cutting(step, step, step, step.fine(), step.fine()),
                new Settings.Bench(BenchTools.METRIC, "", BenchHours.NONE),
                QuotePolicy.usual(Money.ZERO),
                UsualLateness.USUAL,
                Settings.USUAL_BRAKE,
                Settings.USUAL_SERVICE,
                Spending.UNLIMITED,
                LocalForm.NONE,
                LoftAddress.NONE);
    }

    private static Settings settings(JsonObject shop) {
        Fields fields = shop.fields();
        Units units = fields.optional("units", Readings.word(Units.values(), Codec::word), Units.METRIC);
        MoneyText money = new MoneyText(
                fields.require("currency", ShopJson::currency, MoneyText.NO_CURRENCY.currency()),
                fields.optional("minorDigits", Readings.whole(0, 4), 2));
        Money labour = fields.require("labour", perHour(money), Money.ZERO);
        JsonObject prices = shop.object("prices");
        tellWhatWent(shop, prices);
        return new Settings(
                fields.require("name", Readings::text, "?"),
                units,
                money,
                fields.optional("day", Readings::day, LocalDate.MIN),
                CalendarJson.read(shop),
                prices(prices.fields(), money, labour),
                holding(fields, money, labour),
                cutting(shop.object("cutLoss"), shop.object("cutToNearest"), units),
                bench(shop, units),
                new QuotePolicyJson(money, labour)
                        .read(shop.object("quote"))
                        .with(LetterJson.read(shop.object("letter"))),
                fields.optional("lateness", CalendarJson::late, UsualLateness.USUAL),
                fields.optional("brake", Readings.whole(0, Settings.MOST_BRAKE), Settings.USUAL_BRAKE),
                fields.optional("service", ServiceShare::parse, Settings.USUAL_SERVICE),
                spending(fields, money),
                fields.optional("locale", LocalForm::of, LocalForm.NONE),
                loft(shop));
    }

    /** Where the ledger is. */
    static LoftAddress loft(JsonObject shop) {
        if (!shop.has("ledger")) {
            return LoftAddress.NONE;
        }
        Fields ledger = shop.object("ledger").fields();
        LoftAddress server = ledger.require("server", LoftAddress::server, LoftAddress.NONE);
        return server.of(ledger.require("loft", LoftAddress::loft, ""));
    }

    private static Settings.Bench bench(JsonObject shop, Units units) {
        Fields fields = shop.fields();
        return new Settings.Bench(
                fields.optional("benchTools", BENCH_TOOLS, usualTools(units)),
                fields.optional("code", EndText::partId, ""),
                BenchHoursJson.read(shop));
    }

    /** Unless a shop says otherwise its tools are of the system that it prints. */
    static BenchTools usualTools(Units units) {
        return units == Units.METRIC ? BenchTools.METRIC : BenchTools.INCH;
    }

    private static Prices prices(Fields fields, MoneyText money, Money labour) {
        return new Prices(
                price(fields, RulePrice.OPENING, money, labour),
                price(fields, RulePrice.CHANGING, money, labour),
                price(fields, RulePrice.HANDLING, money, labour),
                price(fields, RulePrice.SPLIT_ORDER, money, labour),
                price(fields, RulePrice.MOVED_PIECE, money, labour),
                Cost.ZERO);
    }

    private static Cost price(Fields fields, RulePrice price, MoneyText money, Money labour) {
        return fields.optional(price.member(), priceText(money, labour), seconds(price.seconds(), labour));
    }

    private static Reading<Cost> priceText(MoneyText money, Money labour) {
        return text -> {
            Matcher minutes = MINUTES.matcher(text);
            if (minutes.matches()) {
                return Parsed.of(seconds(secondsOf(minutes), labour));
            }
            Optional<Money> amount = moneyFor(text, money).parse(text).value();
            return amount.isPresent() && amount.get().minor() >= 0
                    ? Parsed.of(amount.get().fine())
                    : Parsed.refused("a price such as "
                            + example(money).print(new Money(250)) + ", or 3 min of labour; at most "
                            + example(money).most() + ", or 9999 min");
        };
    }

    private static int secondsOf(Matcher minutes) {
        String tenths = minutes.group(2);
        return Integer.parseInt(minutes.group(1)) * 60 + (tenths == null ? 0 : Integer.parseInt(tenths) * 6);
    }

    private static Reading<Money> perHour(MoneyText money) {
        return text -> {
            Matcher perHour = PER_HOUR.matcher(text);
            Optional<Money> amount = perHour.matches()
                    ? moneyFor(text, money).parse(perHour.group(1)).value()
                    : Optional.empty();
            return amount.isPresent() && amount.get().minor() >= 0
                    ? Parsed.of(amount.get())
                    : Parsed.refused("a rate such as 45 " + example(money).currency() + "/h; at most "
                            + example(money).most() + "/h");
        };
    }

    /** While the shop's currency is not known, any will do: one mistake in this file is not told again for every price. */
    static MoneyText moneyFor(String text, MoneyText money) {
        Matcher code = CODE.matcher(text);
        return !isKnown(money) && code.find() ? new MoneyText(code.group(), 2) : money;
    }

    /** Whether the shop's currency could be read. */
    static boolean isKnown(MoneyText money) {
        return !money.currency().equals(MoneyText.NO_CURRENCY.currency());
    }

    private static MoneyText example(MoneyText money) {
        return isKnown(money) ? money : new MoneyText("EUR", 2);
    }

    static Parsed<String> currency(String text) {
        return text.matches("[A-Z]{3}")
                ? Parsed.of(text)
                : Parsed.refused("a currency code of three capital letters, such as EUR");
    }

    /** One warning for what coils were valued by once. */
    private static void tellWhatWent(JsonObject shop, JsonObject prices) {
        JsonObject value = shop.object("value");
        Map<String, Fields> there = new LinkedHashMap<>();
        GONE.stream()
                .filter(name -> prices.fields().text(name).isPresent())
                .forEach(name -> there.put(name, prices.fields()));
        value.fields().text(SHARE).ifPresent(text -> there.put(SHARE, value.fields()));
        there.entrySet().stream().findFirst().ifPresent(first -> {
            List<String> others = there.keySet().stream().skip(1).toList();
            first.getValue()
                    .warning(
                            first.getKey(),
                            Readings.GONE + (others.isEmpty() ? "" : ", nor has " + String.join(", nor ", others)));
        });
    }

    private static Settings.Holding holding(Fields fields, MoneyText money, Money labour) {
        Ratio interest = fields.optional("interest", ShopJson::interest, Settings.Holding.USUAL_INTEREST);
        Cost room = fields.optional("room", roomText(money, labour), seconds(USUAL_ROOM_SECONDS, labour));
        if (!interest.isPositive() && room.millis() == 0) {
            fields.error(
                    "interest", "interest or room above 0: else nothing speaks against filling the rack with coils");
        }
        return new Settings.Holding(interest, room);
    }

    private static Spending spending(Fields fields, MoneyText money) {
        return new Spending(
                fields.optional("budget", text -> budget(text, money), Spending.ANY),
                fields.optional("mostWeeks", Readings.whole(1, MOST_WEEKS), Spending.FOREVER));
    }

    /** The most that is paid to suppliers at once. */
    static Parsed<Money> budget(String text, MoneyText money) {
        return moneyFor(text, money)
                .parse(text)
                .then(amount -> amount.minor() < 0
                        ? Parsed.refused("an amount from " + example(money).print(Money.ZERO) + " on")
                        : Parsed.of(amount));
    }

    private static Parsed<Ratio> interest(String text) {
        Matcher aYear = A_YEAR.matcher(text);
        return RatioText.parse(aYear.matches() ? aYear.group(1) : text)
                .then(ratio -> ratio.isNegative() || ratio.compareTo(Ratio.ONE) > 0
                        ? Parsed.refused("the interest of a year from 0 to 100 %, such as 12 %")
                        : Parsed.of(ratio));
    }

    /** What a coil and week costs, as money or as seconds of labour. */
    private static Reading<Cost> roomText(MoneyText money, Money labour) {
        return text -> {
            Matcher seconds = SECONDS.matcher(text);
            if (seconds.matches()) {
                return Parsed.of(seconds(Integer.parseInt(seconds.group(1)), labour));
            }
            Optional<Money> amount = moneyFor(text, money).parse(text).value();
            return amount.isPresent() && amount.get().minor() >= 0
                    ? Parsed.of(amount.get().fine())
                    : Parsed.refused("what a coil costs a week, such as "
                            + example(money).print(new Money(10)) + ", or 8 s of labour");
        };
    }

    /** Seconds at the labour rate, rounded up to 1/1000 minor unit. */
    private static Cost seconds(int seconds, Money labour) {
        return new Cost(-Math.floorDiv(-labour.fine().times(seconds).millis(), SECONDS_OF_AN_HOUR));
    }

    /** Defaults are common practice: hot cut 10 mm, between whippings 40 mm (FM 5-125 p. 2-2: 25-50 mm), wire 5 mm. */
    private static Settings.Cutting cutting(JsonObject loss, JsonObject toNearest, Units units) {
        boolean metric = units == Units.METRIC;
        FineLength halfInch = LengthText.parseFine("1/2 in").value().orElseThrow();
        return new Settings.Cutting(
                loss.fields().optional("fibre", Readings::allowance, new Length(10)),
                loss.fields().optional("whipped", Readings::allowance, new Length(40)),
                loss.fields().optional("wire", Readings::allowance, new Length(5)),
                toNearest.fields().optional("fibre", Readings::step, metric ? FineLength.ofMillimetres(10) : halfInch),
                toNearest.fields().optional("wire", Readings::step, metric ? FineLength.ofMillimetres(5) : halfInch));
    }
}
