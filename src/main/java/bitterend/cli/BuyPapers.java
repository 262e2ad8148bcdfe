package bitterend.cli;

import bitterend.buying.steady.SteadyVerdict;
import bitterend.exchange.WholeFile;
import bitterend.report.BuyPictures;
import bitterend.report.Figures;
import bitterend.report.page.Document;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Files that a buying study is written to, each where asked for. */
final class BuyPapers {
    @Mixin
    final PageFiles files = new PageFiles();

    @Mixin
    final TableFiles tables = new TableFiles();

    @Option(
            names = "--pictures",
            paramLabel = "FOLDER",
            description = "Write its pictures as SVG files: cost, lengths.")
    private @Nullable Path pictures;

    /** Writes what was asked for, and tells where. */
    void write(Document page, List<SteadyVerdict> verdicts, Figures figures, Terminal terminal) {
        files.write(terminal, page);
        if (pictures != null) {
            draw(verdicts, figures, pictures, terminal);
        }
    }

    private static void draw(List<SteadyVerdict> verdicts, Figures figures, Path folder, Terminal terminal) {
        try {
            Files.createDirectories(folder);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        Set<String> taken = new HashSet<>();
        for (SteadyVerdict verdict : verdicts) {
            new BuyPictures(figures, verdict).all().forEach((name, picture) -> {
                String free = free(name, taken);
                Path file = folder.resolve(free);
                WholeFile.write(file, picture);
                String rope = free.equals(name)
                        ? ""
                        : ", of " + verdict.study().rope().id();
                terminal.err().println("written: " + file + rope);
            });
        }
    }

    /** A name that no picture of this run has yet, case apart: ropes {@code A/B} and {@code A_B} come to the same one. */
    static String free(String name, Set<String> taken) {
        int dot = name.lastIndexOf('.');
        String free = name;
        for (int next = 2; !taken.add(free.toLowerCase(Locale.ROOT)); next++) {
            free = name.substring(0, dot) + "-" + next + name.substring(dot);
        }
        return free;
    }
}
