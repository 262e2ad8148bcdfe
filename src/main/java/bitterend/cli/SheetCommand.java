package bitterend.cli;

import bitterend.exchange.AnswerJson;
import bitterend.exchange.MeasuredRows;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanJson;
import bitterend.exchange.Shop;
import bitterend.exchange.WholeFile;
import bitterend.finding.Findings;
import bitterend.packing.PackingProblem;
import bitterend.packing.check.Fault;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.PlanView;
import bitterend.report.sheet.CardPage;
import bitterend.report.sheet.CardWork;
import bitterend.report.sheet.CutList;
import bitterend.report.sheet.Paper;
import bitterend.report.sheet.Sheet;
import bitterend.report.sheet.SheetMaker;
import bitterend.report.sheet.SheetPage;
import bitterend.report.sheet.SheetPdf;
import bitterend.report.sheet.TagPage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code sheet PLAN}: what the cutter holds in the hand. */
@Command(
        name = "sheet",
        header = "Writes the cut sheets of a plan: HTML, PDF, CSV, tags.",
        description = {
            "",
            "PLAN is a plan.json, or the shop folder it lies in. Writes one HTML file that",
            "opens without a network and prints on A4 and Letter; with --pdf, --csv or --tags",
            "that instead, with --cards the splice cards. The files lie beside the plan:",
            "sheet.html, sheet.pdf, sheet.csv, tags.html, cards.html, cards.pdf. Exit code",
            "5 when the shop changed since it was planned.",
            ""
        },
        sortOptions = false)
final class SheetCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "PLAN", description = "plan.json, or the shop folder it lies in.")
    private Path plan = Path.of("");

    @Option(names = "--pdf", description = "Write sheet.pdf.")
    private boolean pdf;

    @Option(names = "--csv", description = "Write sheet.csv: one row for every mark.")
    private boolean csv;

    @Option(names = "--tags", description = "Write tags.html: one for every piece, and for every assembly of several.")
    private boolean tags;

    @Option(
            names = "--cards",
            description = "Write cards.html, with --pdf cards.pdf: a splice card for every order line.")
    private boolean cards;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "A4",
            description = "A4 or Letter, for PDF and tags. Default: ${DEFAULT-VALUE}.")
    private Paper paper = Paper.A4;

    @Option(
            names = "--label",
            paramLabel = "SIZE",
            converter = LabelText.class,
            defaultValue = "70x37",
            description = "Width x height of a label in mm, for tags. Default: ${DEFAULT-VALUE}.")
    private TagPage.Label label = TagPage.Label.USUAL;

    @Option(names = "--shop", paramLabel = "SHOP", description = "The shop folder, when the plan does not lie in it.")
    private @Nullable Path shop;

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    SheetCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Path file = Files.isDirectory(plan) ? plan.resolve("plan.json") : plan;
        Findings findings = new Findings();
        Optional<PlanDocument> document = PlanJson.read(file, findings);
        if (document.isEmpty()) {
            terminal.err().print(new FindingsPage(terminal.ink()).text(findings.sorted()));
            return ExitCode.BAD_INPUT.number();
        }
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
        ShopArgument at = new ShopArgument();
        at.folder = shop == null ? folder : shop;
        Optional<Shop> read = at.readOrComplain(terminal);
        return (read.isEmpty() ? ExitCode.BAD_INPUT : checked(at, read.get(), document.get(), folder)).number();
    }

    private ExitCode checked(ShopArgument at, Shop read, PlanDocument document, Path folder) {
        List<String> changes = PlanOfShop.changes(document, read, at.rack());
        if (!changes.isEmpty()) {
            changes.forEach(change -> terminal.err().println("error: since this was planned, " + change));
            terminal.err().println("Plan again: bitterend plan " + at.folder);
            return ExitCode.STOCK_CHANGED;
        }
        PackingProblem problem = PlanOfShop.problem(document, read, at.rack());
        List<Fault> faults = PlanOfShop.faults(document, problem);
        if (!faults.isEmpty()) {
            faults.forEach(fault -> terminal.err().println("error: the plan is not sound: " + fault));
            return ExitCode.BAD_INPUT;
        }
        write(read, problem, document, folder);
        return ExitCode.DONE;
    }

    /** The HTML sheet, unless something else is asked for; each file is written whole and then named. */
    private void write(Shop read, PackingProblem problem, PlanDocument document, Path folder) {
        Figures figures = units.figures(read);
        PlanView view = PlanViews.of(read, problem, document.plan(), figures.units());
        List<CardWork> work = cardWork(read, MeasuredRows.words(folder));
        String made = PlanOfShop.made(document);
        if (csv) {
            tell(folder.resolve("sheet.csv"), CutList.csv(view).getBytes(StandardCharsets.UTF_8));
        }
        if (tags) {
            tell(folder.resolve("tags.html"), bytes(new TagPage(view, figures, work).html(label, paper)));
        }
        if (cards) {
            CardPage page = new CardPage(view, figures, work, made);
            tell(folder.resolve(pdf ? "cards.pdf" : "cards.html"), pdf ? page.pdf(paper) : bytes(page.html()));
        } else if (pdf || !(csv || tags)) {
            Sheet sheet = new SheetMaker(view, figures, work).sheet(made);
            SheetPage page = new SheetPage();
            if (pdf) {
                tell(folder.resolve("sheet.pdf"), new SheetPdf(page).pdf(sheet, paper));
            } else {
                tell(folder.resolve("sheet.html"), bytes(page.html(sheet)));
            }
        }
    }

    private static List<CardWork> cardWork(Shop read, Map<String, String> measured) {
        return read.orders().stream()
                .map(line -> new CardWork(line.assembly(), line.demanded(), measured))
                .toList();
    }

    private static byte[] bytes(String html) {
        return html.getBytes(StandardCharsets.UTF_8);
    }

    private void tell(Path file, byte[] content) {
        WholeFile.write(file, content);
        if (common.json) {
            terminal.out().print(AnswerJson.written(file));
        } else {
            terminal.out().println(file);
        }
    }
}
