package bitterend.cli;

import bitterend.exchange.WholeFile;
import bitterend.report.page.Document;
import bitterend.report.sheet.DocumentPaper;
import bitterend.report.sheet.Paper;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Files that a page is written to beside the terminal, each where asked for. */
final class PageFiles {
    @Option(names = "--html", paramLabel = "FILE", converter = Html.class, description = "Write the page as HTML, too.")
    private @Nullable Path html;

    @Option(names = "--pdf", paramLabel = "FILE", converter = Pdf.class, description = "Write the page as PDF, too.")
    private @Nullable Path pdf;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "A4",
            description = "A4 or Letter, for PDF. Default: ${DEFAULT-VALUE}.")
    private Paper paper = Paper.A4;

    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec command;

    /** Whether a file was asked for. */
    boolean isAsked() {
        return html != null || pdf != null;
    }

    /** The HTML file that was asked for. */
    Optional<Path> html() {
        return Optional.ofNullable(html);
    }

    /** Prints an answer for people, or for programs, and writes its page to the files that were asked for. */
    void show(Terminal terminal, boolean json, Answer answer) {
        Document page = page(json, answer);
        Document shown = json ? page : answer.screen().orElse(() -> page).get();
        terminal.out().print(json ? answer.json().get() : shown.text(terminal.ink()));
        terminal.out().flush();
        write(terminal, page);
    }

    /** The page of an answer; nothing where nobody is shown it. */
    Document page(boolean json, Answer answer) {
        boolean unseen = json || answer.screen().isPresent();
        return unseen && !isAsked() ? Document.EMPTY : answer.page().get();
    }

    /**
     * An answer in its two forms, each made only where it is asked for.
     *
     * @param json for programs
     * @param page for people
     * @param screen for people at the terminal, where that is less than the page
     */
    record Answer(Supplier<String> json, Supplier<Document> page, Optional<Supplier<Document>> screen) {
        /** The same everywhere. */
        Answer(Supplier<String> json, Supplier<Document> page) {
            this(json, page, Optional.empty());
        }
    }

    /** Writes the files that were asked for, and tells where. */
    void write(Terminal terminal, Document page) {
        DocumentPaper paged = new DocumentPaper();
        if (html != null) {
            WholeFile.write(html, paged.html(page));
            tell(terminal, html);
        }
        if (pdf != null) {
            WholeFile.write(pdf, paged.pdf(page, paper));
            tell(terminal, pdf);
        }
    }

    static void tell(Terminal terminal, Path file) {
        terminal.err().println(String.format(Locale.ROOT, "written: %s", file));
    }

    /** The same on the shop's own size of paper, where the command line names none. */
    void write(Terminal terminal, Document page, String usual) {
        boolean named =
                command != null && command.commandLine().getParseResult().hasMatchedOption("--paper");
        if (!named && !usual.isEmpty()) {
            paper = Paper.valueOf(usual.toUpperCase(Locale.ROOT));
        }
        write(terminal, page);
    }

    /** A file with the ending of what is written to it, so that no slip of the hand replaces orders.csv by a page. */
    static Path named(String text, String ending) {
        if (!text.toLowerCase(Locale.ROOT).endsWith(ending)) {
            throw new TypeConversionException("found \"" + text + "\", expected a file that ends in " + ending);
        }
        return new NewFile().convert(text);
    }

    static final class Html implements ITypeConverter<Path> {
        @Override
        public Path convert(String text) {
            return named(text, ".html");
        }
    }

    static final class Pdf implements ITypeConverter<Path> {
        @Override
        public Path convert(String text) {
            return named(text, ".pdf");
        }
    }
}
