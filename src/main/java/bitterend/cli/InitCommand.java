package bitterend.cli;

import bitterend.catalogue.BenchTools;
import bitterend.exchange.AnswerJson;
import bitterend.exchange.NewBench;
import bitterend.exchange.NewRope;
import bitterend.exchange.NewShop;
import bitterend.exchange.TypedFid;
import bitterend.finding.CommandWord;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Units;
import bitterend.report.FindingsPage;
import bitterend.work.BeginShop;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code init SHOP}: a new shop folder. */
@Command(
        name = "init",
        header = "Makes a new shop folder to put your own figures into.",
        description = {
            "",
            "Writes shop.json with every setting at its usual value, ropes.csv with examples",
            "of your kinds of rope, and orders.csv and reels.csv with every column there is.",
            "The folder must be empty or not there yet; nothing is overwritten. On a",
            "terminal it asks what is not said: units, currency, how days are typed, bench",
            "tools, ropes.",
            ""
        },
        sortOptions = false)
final class InitCommand implements Callable<Integer> {
    private static final MoneyText EURO = new MoneyText("EUR", 2);
    private static final List<NewRope> USUAL_ROPES = List.of(NewRope.LAID);

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "SHOP", description = "The folder to make, such as my-shop.")
    private Path folder = Path.of("");

    @Option(names = "--name", paramLabel = "NAME", description = "Name of the shop as printed; else the folder's.")
    private @Nullable String name;

    @Option(names = "--units", paramLabel = "SYSTEM", description = "metric or imperial. Default: metric.")
    private @Nullable Units units;

    @Option(
            names = "--currency",
            paramLabel = "CODE",
            converter = CurrencyText.class,
            description = "Its code by ISO 4217, such as EUR or USD. Default: EUR.")
    private @Nullable MoneyText money;

    @Option(
            names = "--locale",
            paramLabel = "PLACE",
            converter = LocaleText.class,
            description = "Language and country by which days and figures are typed, such as de-DE or en-GB. Default:"
                    + " 2026-03-05 and 12.5 alone.")
    private @Nullable String locale;

    @Option(
            names = "--ropes",
            paramLabel = "KINDS",
            converter = RopesText.class,
            description = "Kinds of rope to begin with, an example of each: laid, braid, plaited, hmpe, wire, webbing."
                    + " Default: laid.")
    private @Nullable List<NewRope> ropes;

    @Option(
            names = "--labour",
            paramLabel = "MONEY",
            defaultValue = "45",
            description = "What an hour of work at the bench costs. Default: ${DEFAULT-VALUE}.")
    private String labour = "45";

    @Option(
            names = "--bench-tools",
            paramLabel = "TOOLS",
            description = "metric or inch: the fids that splicers measure with. Default: as the units.")
    private @Nullable BenchTools tools;

    @Option(
            names = "--fid",
            paramLabel = "FID",
            converter = FidText.class,
            description = "A fid of your own, such as '12 mm: 95 mm + 165 mm': rope, short and long section.")
    private List<TypedFid> fids = List.of();

    @Option(
            names = "--example",
            description = "With orders, reels and offers to try the commands on: orders and rope are invented.")
    private boolean example;

    @Mixin
    private CommonOptions common = new CommonOptions();

    InitCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {

        ShopQuestions questions = new ShopQuestions(terminal);
        boolean asks = !common.json;
        Units printed = units != null ? units : asks ? questions.units(Units.METRIC) : Units.METRIC;
        MoneyText currency = money != null ? money : asks ? questions.money(EURO) : EURO;
        String typed = locale != null ? locale : asks ? questions.locale() : "";
        Parsed<Money> rate = currency.parse(labour);
        if (rate.value().isEmpty()) {
            terminal.err()
                    .println("error: --labour: found \"" + labour + "\", expected "
                            + rate.refusal().orElseThrow());
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        NewBench bench = bench(printed, questions);
        List<NewRope> kinds = ropes != null ? ropes : asks ? questions.ropes(USUAL_ROPES) : USUAL_ROPES;
        return make(new NewShop(shopName(), printed, currency, rate.value().get(), bench, typed, kinds, example))
                .number();
    }

    private ExitCode make(NewShop shop) {
        if (new BeginShop(folder).begin(shop) instanceof BeginShop.Result.NotBegun not) {
            terminal.err().print(FindingsPage.text(not.why(), terminal.ink()));
            terminal.err().println("Nothing was written.");
            return ExitCode.BAD_INPUT;
        }
        if (common.json) {
            terminal.out().print(AnswerJson.written(folder));
        } else {
            tell(shop);
        }
        return ExitCode.DONE;
    }

    private void tell(NewShop shop) {
        terminal.out()
                .println("New shop " + shop.name() + " in " + folder
                        + ". Its figures are starting values; put in your own:");
        terminal.out()
                .println("  shop.json   labour at " + shop.money().print(shop.labour())
                        + " an hour; allowances of a cut; prices");
        terminal.out()
                .println("              splicers measure with "
                        + shop.bench().tools().word()
                        + " tools; if not: \"benchTools\": \""
                        + other(shop.bench().tools()).word() + "\"");
        if (!shop.bench().fids().isEmpty()) {
            terminal.out()
                    .println("  splices.json  the fids of your own, "
                            + shop.bench().fids().size());
        }
        terminal.out()
                .println("  ropes.csv   your ropes and what a metre costs; "
                        + (shop.ropes().size() == 1
                                ? shop.ropes().get(0).id() + " is an example"
                                : "the rows are examples"));
        terminal.out().println("  orders.csv  what is ordered" + (example ? "; the rows are an example" : ""));
        terminal.out().println("  reels.csv   what is on the rack" + (example ? "; the rows are an example" : ""));
        terminal.out().println("  about-the-files.txt  a line on every setting and column");
        String typed = CommandWord.of(folder.toString());
        terminal.out().println("Then: bitterend check " + typed);
        terminal.out().println("      bitterend plan " + typed);
    }

    private static BenchTools other(BenchTools tools) {
        return tools == BenchTools.METRIC ? BenchTools.INCH : BenchTools.METRIC;
    }

    /** As it was typed; else as a person answers, who is not asked on the way to another program. */
    private NewBench bench(Units printed, ShopQuestions questions) {
        BenchTools usual = printed == Units.METRIC ? BenchTools.METRIC : BenchTools.INCH;
        if (tools == null && fids.isEmpty() && !common.json) {
            return questions.answered(usual);
        }
        return new NewBench(tools != null ? tools : usual, fids);
    }

    /** A place on the command line. */
    static final class LocaleText extends Typed.Value<String> {
        LocaleText() {
            super(NewShop::locale);
        }
    }

    /** Kinds of rope on the command line. */
    static final class RopesText extends Typed.Value<List<NewRope>> {
        RopesText() {
            super(NewRope::several);
        }
    }

    /** A fid on the command line. */
    static final class FidText extends Typed.Value<TypedFid> {
        FidText() {
            super(TypedFid::parse);
        }
    }

    private String shopName() {
        return name != null
                ? name
                : String.valueOf(folder.toAbsolutePath().normalize().getFileName());
    }
}
