package bitterend.cli;

import bitterend.exchange.WholeFile;
import bitterend.report.sheet.Paper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Files that a page is written to beside the terminal, each where asked for. */
final class PageFiles {
    @Option(names = "--html", paramLabel = "FILE", description = "Write the page as HTML, too.")
    private @Nullable Path html;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write the page as PDF, too.")
    private @Nullable Path pdf;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "A4",
            description = "A4 or Letter, for PDF. Default: ${DEFAULT-VALUE}.")
    private Paper paper = Paper.A4;

    /** Whether a file was asked for. */
    boolean isAsked() {
        return html != null || pdf != null;
    }

    /** Writes what was asked for; the files that were written. */
    List<Path> write(Supplier<String> asHtml, Function<Paper, byte[]> asPdf) {
        List<Path> written = new ArrayList<>();
        if (html != null) {
            WholeFile.write(html, asHtml.get());
            written.add(html);
        }
        if (pdf != null) {
            WholeFile.write(pdf, asPdf.apply(paper));
            written.add(pdf);
        }
        return written;
    }
}
