package bitterend.cli;

import bitterend.buying.LearnedValue;
import bitterend.buying.Learning;
import bitterend.buying.Study;
import bitterend.exchange.Shop;
import bitterend.exchange.ValuesJson;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.report.BuyValuePage;
import bitterend.report.page.Document;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code value SHOP --from-history}: learns what remnants are worth. */
@Command(
        name = "value",
        header = "Learns from the past what a coil on the rack is worth.",
        description = {
            "",
            "Lives through weeks drawn from history.csv with and without a coil of each",
            "length: its worth is what it saves. Half of the scenarios teach, the other half",
            "say whether the learned curve helps. --write keeps the curves in values.json,",
            "the file as it was in values.old.json; plans then use them.",
            ""
        },
        sortOptions = false)
final class ValueCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Option(names = "--from-history", required = true, description = "Learn from history.csv.")
    boolean fromHistory;

    @Option(names = "--write", description = "Keep the learned curves that do no harm in values.json.")
    private boolean write;

    @Mixin
    private StudyOptions options = new StudyOptions(100);

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
            return learn(read.get(), size.get(), interrupt).number();
        }
    }

    private ExitCode learn(Shop read, Study.Size size, Interrupt interrupt) {
        Map<String, LearnedValue> kept = new TreeMap<>(read.supplies().learned());
        Map<String, LearnedValue> learned = new TreeMap<>();
        List<Study> studies = BuyStudy.studies(read, size, options.ropes(), read::risingValue);
        if (studies.isEmpty()) {
            terminal.err().println("error: " + BuyStudy.NOTHING);
            return ExitCode.BAD_INPUT;
        }
        Document pages = Document.EMPTY;
        for (Study study : studies) {
            Optional<Learning.Lesson> lesson = lesson(study, interrupt);
            if (lesson.isPresent()) {
                Document page =
                        new BuyValuePage(units.figures(read)).of(study, read.risingValue(study.rope()), lesson.get());
                tell(page);
                pages = pages.then(page);
                learned.put(study.rope().id(), lesson.get().value());
                if (!lesson.get().harms()) {
                    kept.put(study.rope().id(), lesson.get().value());
                }
            }
        }
        if (common.json) {
            terminal.out().print(ValuesJson.text(learned));
        }
        files.write(
                terminal,
                pages.titled("Stock", "What coils are worth", read.settings().name()));
        if (write && !interrupt.isAsked()) {
            ValuesJson.write(shop.folder, kept);
            terminal.err().println("written: " + shop.folder.resolve(ValuesJson.NAME));
        }
        return ExitCode.DONE;
    }

    private Optional<Learning.Lesson> lesson(Study study, Interrupt interrupt) {
        terminal.err()
                .println(study.rope().id() + ": learning from " + study.weeks().size() + " weeks");
        int threads = Runtime.getRuntime().availableProcessors();
        return new Learning(study, all(study), new StudyStrategy(), threads, interrupt::isAsked).learn();
    }

    /** Any size may be bought. */
    private static bitterend.buying.Option all(Study study) {
        return study.options().get(study.options().size() - 1);
    }

    private void tell(Document page) {
        if (!common.json) {
            terminal.out().println(page.text(terminal.ink()));
        }
    }
}
