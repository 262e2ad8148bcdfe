package bitterend.cli;

import bitterend.buying.CurveTrial;
import bitterend.buying.KnotValue;
import bitterend.buying.Study;
import bitterend.catalogue.Rope;
import bitterend.cli.PageFiles.Answer;
import bitterend.day.Morning;
import bitterend.exchange.CoilValuesJson;
import bitterend.exchange.Shop;
import bitterend.exchange.ShopValues;
import bitterend.exchange.ValuesJson;
import bitterend.finding.Findings;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.report.CoilValuePage;
import bitterend.report.FindingsPage;
import bitterend.report.page.Document;
import bitterend.stock.worth.CoilValue;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code value SHOP}: what coils are worth today, and what a curve of the shop's own costs. */
@Command(
        name = "value",
        header = "Shows what a coil on the rack is worth today, and why.",
        description = {
            "",
            "A coil is worth what it saves later, less interest and room until then; how",
            "long that is depends on the coils that are on the rack this morning. Prints",
            "and draws the curve of each rope. --from-history tries a curve that the shop",
            "has of its own in values.json against it, on weeks drawn from the past.",
            "--write takes curves that were learned from the past out of values.json; the",
            "file as it was stays in values.old.json.",
            ""
        },
        sortOptions = false)
final class ValueCommand implements Callable<Integer> {
    private static final int SCENARIOS = 16;

    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Mixin
    private DayOption day = new DayOption();

    @Option(names = "--from-history", description = "Try the shop's own curves on weeks drawn from history.csv.")
    boolean fromHistory;

    @Option(names = "--write", description = "Take stale curves, learned from the past once, out of values.json.")
    private boolean write;

    @Mixin
    private StudyOptions options = new StudyOptions(SCENARIOS);

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    ValueCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<Shop> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Optional<Study.Size> size = options.size(terminal);
        if (size.isEmpty()) {
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        try (Interrupt interrupt = Interrupt.listening()) {
            return show(read.get(), size.get(), interrupt).number();
        }
    }

    private ExitCode show(Shop read, Study.Size size, Interrupt interrupt) {
        List<CoilValuePage.Coils> coils = coils(read);
        CoilValuePage page = new CoilValuePage(units.figures(read));
        Document pages = Document.EMPTY;
        for (CoilValuePage.Coils each : coils) {
            pages = pages.with(page.of(each)).with(trial(read, each, size, interrupt));
        }
        Document whole =
                pages.titled("Stock", "What coils are worth", read.settings().name());
        Map<String, CoilValue> values = new TreeMap<>(bitterend.finding.NaturalOrder.IDS);
        coils.forEach(each -> values.put(each.rope().id(), each.today()));
        ShopValues own = read.supplies().values();
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> CoilValuesJson.text(values, own, read.settings().money()), () -> whole));
        if (write) {
            takeOut(own);
        }
        boolean all =
                read.leftOut().stream().noneMatch(finding -> finding.file().equals("ropes.json"));
        return all ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    /** The curves that the plans of the day go by: those of the morning, where one was made already. */
    private List<CoilValuePage.Coils> coils(Shop read) {
        LocalDate today = day.of(read);
        Findings findings = new Findings();
        Optional<PackingProblem> earlier = MorningPlan.inForce(shop.plans(findings));
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        return read.catalogue().ropes().stream()
                .filter(rope -> options.ropes().isEmpty() || options.ropes().contains(rope.id()))
                .map(rope -> {
                    CoilValue now = read.coilValue(rope, today);
                    CoilValue used = earlier.map(plan -> Morning.kept(now, rope.id(), today, plan))
                            .orElse(now);
                    return new CoilValuePage.Coils(
                            rope, used, now.rack(), own(read.supplies().values(), rope.id()));
                })
                .toList();
    }

    private static Optional<CoilValuePage.Own> own(ShopValues values, String rope) {
        KnotValue typed = values.typed().get(rope);
        KnotValue learned = values.learned().get(rope);
        return Optional.ofNullable(typed == null ? learned : typed)
                .map(curve -> new CoilValuePage.Own(curve, typed != null));
    }

    private Document trial(Shop read, CoilValuePage.Coils coils, Study.Size size, Interrupt interrupt) {
        return coils.own()
                .filter(own -> fromHistory)
                .flatMap(own -> trial(read, coils.rope(), own, size, interrupt)
                        .map(found -> new CoilValuePage(units.figures(read)).trial(found, own, size.weeks())))
                .orElse(Document.EMPTY);
    }

    private Optional<CurveTrial.Found> trial(
            Shop read, Rope rope, CoilValuePage.Own own, Study.Size size, Interrupt interrupt) {
        List<Study> studies = BuyStudy.studies(
                read, size, List.of(rope.id()), studied -> BuyStudy.coils(read, studied, day.of(read)));
        int threads = Runtime.getRuntime().availableProcessors();
        if (studies.isEmpty()) {
            terminal.err().println(rope.id() + ": " + BuyStudy.NOTHING);
            return Optional.empty();
        }
        return new CurveTrial(studies.get(0), new StudyStrategy(), threads, interrupt::isAsked)
                .of(BuyStudy.typed(read, own.curve(), rope));
    }

    /** The coil curve is made anew each morning: there is nothing of it to keep. */
    private void takeOut(ShopValues own) {
        if (own.learned().isEmpty()) {
            terminal.err()
                    .println(
                            "nothing to write: the coil curve is made anew every morning, and no stale curve is kept.");
            return;
        }
        String old = ValuesJson.write(shop.folder, own.typed());
        terminal.err()
                .println("written: " + shop.folder.resolve(ValuesJson.NAME) + ", without the stale "
                        + (own.learned().size() == 1 ? "curve of " : "curves of ")
                        + String.join(", ", own.learned().keySet()) + "; as it was: " + old);
    }
}
