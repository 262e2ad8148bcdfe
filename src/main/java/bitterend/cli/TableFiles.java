package bitterend.cli;

import bitterend.exchange.WholeFile;
import bitterend.report.table.DataTable;
import bitterend.report.table.TableBook;
import bitterend.report.table.TableCsv;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Files for spreadsheets that the tables of an answer are written to, each where asked for. Neither replaces a file. */
final class TableFiles {
    @Option(
            names = "--xlsx",
            paramLabel = "FILE",
            converter = Xlsx.class,
            description = "Write the tables as a workbook, too; a new file.")
    private @Nullable Path xlsx;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            converter = Csv.class,
            description = "Write the first of them as CSV, too; a new file.")
    private @Nullable Path csv;

    /** Writes the files that were asked for, and tells where. */
    void write(Terminal terminal, Supplier<List<DataTable>> tables) {
        if (xlsx == null && csv == null) {
            return;
        }
        List<DataTable> all = tables.get();
        if (xlsx != null) {
            create(terminal, xlsx, TableBook.bytes(all));
        }
        if (csv != null) {
            create(terminal, csv, TableCsv.text(all.get(0)).getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Writes the first of these as a new file, CSV or a workbook by its ending. */
    static void create(Terminal terminal, Path file, List<DataTable> tables) {
        boolean csv = file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
        create(
                terminal,
                file,
                csv ? TableCsv.text(tables.get(0)).getBytes(StandardCharsets.UTF_8) : TableBook.bytes(tables));
    }

    private static void create(Terminal terminal, Path file, byte[] bytes) {
        if (!WholeFile.create(file, bytes)) {
            throw new UncheckedIOException(new FileAlreadyExistsException(file.toString()));
        }
        PageFiles.tell(terminal, file);
    }

    static Path fresh(String text, String ending) {
        Path file = PageFiles.named(text, ending);
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new TypeConversionException("found " + text + ", which is there already; expected a new file");
        }
        return file;
    }

    static final class Xlsx implements ITypeConverter<Path> {
        @Override
        public Path convert(String text) {
            return fresh(text, ".xlsx");
        }
    }

    static final class Csv implements ITypeConverter<Path> {
        @Override
        public Path convert(String text) {
            return fresh(text, ".csv");
        }
    }
}
