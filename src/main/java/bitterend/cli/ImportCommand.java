package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.ImportJson;
import bitterend.exchange.mapping.Question;
import bitterend.exchange.mapping.SheetPreview;
import bitterend.finding.CommandWord;
import bitterend.finding.Finding;
import bitterend.front.ImportPage;
import bitterend.report.FindingsPage;
import bitterend.report.page.Wording;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.work.imports.ImportSheets;
import bitterend.work.imports.ImportSheets.Request;
import bitterend.work.imports.ImportSheets.Result.Looked;
import bitterend.work.imports.ImportSheets.Result.Unreadable;
import bitterend.work.imports.TakeOver;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code import SHOP FILE}: a loft's own sheet into the files of its shop. */
@Command(
        name = "import",
        header = "Brings your own sheet of orders, reels or ropes into the shop.",
        description = {
            "",
            "FILE is a workbook (.xlsx) or text with commas, semicolons or tabs. Shown is",
            "what each column is taken for, what is asked, and what becomes of each row;",
            "nothing is written without --accept. Answers are kept in the shop by the",
            "headings of the sheet: the next one like it asks nothing. Rows are known again",
            "by order and line, by reel, or by rope; what changes is shown first.",
            ""
        },
        sortOptions = false)
final class ImportCommand implements Callable<Integer> {
    private static final String NOTHING = "Nothing was written.";

    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Parameters(index = "1", arity = "0..1", paramLabel = "FILE", description = "The sheet, such as orders.xlsx.")
    private @Nullable Path file;

    @Option(
            names = "--answer",
            paramLabel = "ANSWER",
            description = "An answer to a question, such as days=day-first, or what a heading is, such as"
                    + " 'Sailmaker=left out'. May be given many times.")
    private List<String> typed = List.of();

    @Option(names = "--ask", description = "Ask here, one question after the other.")
    private boolean ask;

    @Option(names = "--accept", description = "Write it. The files as they were are kept.")
    private boolean accept;

    @Option(names = "--back", description = "Take the last import back whole, instead of a FILE.")
    private boolean back;

    @Option(names = "--who", paramLabel = "NAME", description = "Who does it. Default: the login.")
    private @Nullable String who;

    @Mixin
    private PageFiles files = new PageFiles();

    /** Every command has it; here it is refused as idle, for lengths are printed as they are written. */
    @Mixin
    @SuppressWarnings("UnusedVariable")
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    ImportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Path named = file;
        if (back == (named != null)) {
            throw new Contradictory("name a FILE to import, or --back to take the last import back");
        }
        return (named == null ? takeBack() : look(named, answers())).number();
    }

    private Map<String, String> answers() {
        Map<String, String> answers = new TreeMap<>();
        for (String each : typed) {
            int at = each.lastIndexOf('=');
            if (at <= 0) {
                throw new Contradictory("--answer: found \"" + each + "\", expected a question, = and its answer");
            }
            answers.put(each.substring(0, at).strip(), each.substring(at + 1).strip());
        }
        return answers;
    }

    private ExitCode look(Path named, Map<String, String> answers) {
        ImportSheets verb = new ImportSheets(shop.access());
        ImportSheets.Result result = verb.look(new Request(named, answers));
        while (ask && result instanceof Looked looked && !looked.isAnswered()) {
            if (!answered(looked, answers)) {
                break;
            }
            result = verb.look(new Request(named, answers));
        }
        if (result instanceof Unreadable unreadable) {
            return complain(unreadable.findings());
        }
        return show((Looked) result, named);
    }

    /** Asks what is open; false when no answer will come. */
    private boolean answered(Looked looked, Map<String, String> answers) {
        for (SheetPreview sheet : looked.sheets()) {
            for (Question question : sheet.understood().questions()) {
                Optional<String> answer = ask(question);
                if (answer.isEmpty()) {
                    return false;
                }
                answers.put(question.id(), answer.get());
            }
        }
        return true;
    }

    private Optional<String> ask(Question question) {
        terminal.err().println(question.words());
        for (int at = 0; at < question.choices().size(); at++) {
            terminal.err().println("  " + (at + 1) + "  " + question.choices().get(at));
        }
        while (true) {
            String answer = terminal.asking().ask(question.open() ? "A number, or another answer: " : "A number: ");
            if (answer == null) {
                return Optional.empty();
            }
            String meant = chosen(question, answer.strip());
            if (question.takes(meant)) {
                return Optional.of(meant);
            }
            terminal.err()
                    .println("Expected a number from 1 to " + question.choices().size() + ".");
        }
    }

    private static String chosen(Question question, String answer) {
        boolean numbered = answer.matches("[0-9]{1,2}")
                && Integer.parseInt(answer) >= 1
                && Integer.parseInt(answer) <= question.choices().size();
        return numbered ? question.choices().get(Integer.parseInt(answer) - 1) : answer;
    }

    private ExitCode show(Looked looked, Path named) {
        TakeOver.Result taken = accept ? new TakeOver(shop.access()).take(looked, Who.of(who)) : null;
        List<String> written = taken instanceof TakeOver.Result.Done done ? done.files() : List.of();
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> ImportJson.text(looked.sheets(), looked.skipped(), written),
                        () -> ImportPage.of(looked.sheets(), looked.skipped())));
        String command =
                "bitterend import " + CommandWord.of(shop.folder.toString()) + " " + CommandWord.of(named.toString());
        if (taken == null) {
            say(NOTHING + next(looked, command));
            return looked.hasWrong() ? ExitCode.NOT_ALL_PLANNED : ExitCode.DONE;
        }
        return told(taken, looked);
    }

    /** What can be done now; nothing where no row could be written. */
    private static String next(Looked looked, String command) {
        if (!looked.isAnswered()) {
            return " Answer by options, or one by one: " + command + " --ask";
        }
        boolean idle =
                looked.sheets().stream().allMatch(sheet -> sheet.changes().isEmpty());
        return idle ? "" : " To write it: " + command + " --accept";
    }

    private ExitCode told(TakeOver.Result taken, Looked looked) {
        if (taken instanceof TakeOver.Result.Done done) {
            String kept = ImportPage.lastTime(looked.sheets());
            say("Written: " + String.join(", ", done.files()) + ". " + (kept.isEmpty() ? "" : kept + " ")
                    + "To take it back: bitterend import " + CommandWord.of(shop.folder.toString()) + " --back");
        } else if (taken instanceof TakeOver.Result.Nothing) {
            say("All of it is there as it is in the sheet. " + NOTHING);
        } else if (taken instanceof TakeOver.Result.Changed changed) {
            return refused("somebody changed " + String.join(", ", changed.files()) + " meanwhile; look again.");
        } else {
            return refused("there are questions to answer first.");
        }
        return looked.hasWrong() ? ExitCode.NOT_ALL_PLANNED : ExitCode.DONE;
    }

    private ExitCode takeBack() {
        TakeOver.Result taken = new TakeOver(shop.access()).back(Who.of(who));
        if (taken instanceof TakeOver.Result.Done done) {
            if (common.json) {
                terminal.out().print(ImportJson.text(List.of(), List.of(), done.files()));
            } else {
                terminal.out().println("As before the last import: " + String.join(", ", done.files()) + ".");
            }
            return ExitCode.DONE;
        }
        return refused(
                taken instanceof TakeOver.Result.Changed changed
                        ? String.join(", ", changed.files()) + " changed since the last import."
                        : "there is no import to take back.");
    }

    private void say(String words) {
        terminal.err().println(Wording.sentence(words));
    }

    private ExitCode refused(String why) {
        say("error: " + why + " " + NOTHING);
        return ExitCode.BAD_INPUT;
    }

    private ExitCode complain(List<Finding> findings) {
        terminal.err().print(FindingsPage.text(findings, terminal.ink()));
        terminal.err().println(FindingsPage.summary(findings) + ": nothing was written.");
        return ExitCode.BAD_INPUT;
    }
}
