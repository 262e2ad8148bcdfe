package bitterend.cli;

import bitterend.exchange.AnswerJson;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.exchange.WholeFile;
import bitterend.finding.Findings;
import bitterend.front.SheetPapers;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.page.Wording;
import bitterend.report.sheet.Paper;
import bitterend.report.sheet.TagPage;
import bitterend.work.NamedPlan;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import bitterend.work.plans.PrintSheets;
import bitterend.work.plans.PrintSheets.Result;
import bitterend.work.plans.PrintSheets.Sheets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
            "PLAN is the shop folder, or a plan file that lies anywhere. The sheets are those",
            "of today: the reels that must be cut on the day of the plan, with all that is",
            "on them, and those that are issued. The reels of later days are promises, and",
            "planned again by their day: --day, --reel or --all print them, too.",
            "",
            "Writes one HTML file that opens without a network and prints on A4 and Letter;",
            "with --pdf, --csv or --tags that instead, or as well with --html; with --cards",
            "the splice cards. The files lie in that folder: sheet.html, sheet.pdf,",
            "sheet.csv, tags.html, cards.html, cards.pdf. A preview says \"not issued\" on",
            "every page; --issue writes down that these sheets are out, once. Whatever",
            "happened since, a sheet can be printed again: what changed is at its top.",
            ""
        },
        sortOptions = false)
final class SheetCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "PLAN", description = "The shop folder, or a plan file.")
    private Path plan = Path.of("");

    @Option(names = "--plan", paramLabel = "PLAN", description = "The number of a plan. Default: the plan in force.")
    private @Nullable String number;

    @Mixin
    private SheetChoice choice = new SheetChoice();

    @Option(names = "--html", description = "Write sheet.html, as without any of these.")
    private boolean html;

    @Option(names = "--pdf", description = "Write sheet.pdf.")
    private boolean pdf;

    @Option(names = "--csv", description = "Write sheet.csv: one row for every mark.")
    private boolean csv;

    @Option(
            names = "--tags",
            description = "Write tags.html: one for every piece, every assembly of several, every coil that is kept.")
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
    private SheetIssuing issuing = new SheetIssuing();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    SheetCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        boolean inShop = Files.isDirectory(plan);
        if (inShop ? shop != null : number != null) {
            terminal.err()
                    .println(
                            inShop
                                    ? "error: --shop: is for a plan file; " + plan + " is a shop folder itself"
                                    : "error: --plan: numbers a plan of a shop folder; " + plan + " is a plan file");
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        ShopArgument at = ShopArgument.in(shop != null ? shop : inShop ? plan : beside(plan));
        Findings findings = new Findings();
        Plans plans = at.access().plans(findings);
        Optional<Kept> kept =
                inShop ? new NamedPlan(plans).orInForce(number, findings) : new NamedPlan(plans).file(plan, findings);
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        Optional<ShopNow> read = kept.isEmpty() ? Optional.empty() : at.readOrComplain(terminal);
        return (kept.isEmpty() || read.isEmpty() ? ExitCode.BAD_INPUT : print(read.get(), plans, kept.get())).number();
    }

    private static Path beside(Path file) {
        return Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
    }

    private ExitCode print(ShopNow now, Plans plans, Kept kept) {
        Figures figures = units.figures(now.shop());
        Result result =
                new PrintSheets(now, plans).print(new PrintSheets.Request(kept, choice.which(), issuing.issuer()));
        if (result instanceof Result.NoSuchSheets none) {
            terminal.err().println("error: " + choice.refusal(none));
            return ExitCode.BAD_COMMAND_LINE;
        }
        if (result instanceof Result.NotLetThrough refused) {
            return new GateTold(terminal, now.at().folder()).tell(refused.why());
        }
        if (result instanceof Result.NotIssued not) {
            not.reasons().forEach(reason -> terminal.err().println("error: " + reason));
            terminal.err().println("Nothing was issued.");
            return ExitCode.STOCK_CHANGED;
        }
        Sheets sheets = ((Result.Printed) result).sheets();
        SheetChoice.ofAnotherDay(sheets.plan().number(), sheets.plan().plan().day(), new DayOption().of(now.shop()))
                .ifPresent(terminal.err()::println);
        if (sheets.chosen().unasked()) {
            terminal.err().println(Wording.sentence(SheetChoice.unasked(sheets.chosen(), issuing.issuer() != null)));
        }
        sheets.issued().ifPresent(issued -> terminal.err().println(SheetIssuing.told(issued, sheets)));
        write(now, sheets, figures);
        return ExitCode.DONE;
    }

    /** The HTML sheet, unless something else is asked for; each file is written whole and then named. */
    private void write(ShopNow now, Sheets sheets, Figures figures) {
        Path folder = Files.isDirectory(plan) ? plan : beside(plan);
        SheetPapers papers = new SheetPapers(now, sheets, figures);
        String of = choice.suffix();
        List<Path> files = new ArrayList<>();
        if (csv) {
            files.add(file(folder.resolve("sheet" + of + ".csv"), papers.csv()));
        }
        if (tags) {
            files.add(file(folder.resolve("tags" + of + ".html"), papers.tags(label, paper)));
        }
        if (cards) {
            if (html || !pdf) {
                files.add(file(folder.resolve("cards" + of + ".html"), papers.cards()));
            }
            if (pdf) {
                files.add(file(folder.resolve("cards" + of + ".pdf"), papers.cardsPdf(paper)));
            }
        } else {
            if (html || !(pdf || csv || tags)) {
                files.add(file(folder.resolve("sheet" + of + ".html"), papers.sheet()));
            }
            if (pdf) {
                files.add(file(folder.resolve("sheet" + of + ".pdf"), papers.sheetPdf(paper)));
            }
        }
        tell(files);
    }

    private static Path file(Path file, byte[] content) {
        WholeFile.write(file, content);
        return file;
    }

    private void tell(List<Path> files) {
        if (common.json) {
            terminal.out().print(AnswerJson.written(files));
        } else {
            files.forEach(terminal.out()::println);
        }
    }
}
