package bitterend.serve;

import bitterend.exchange.CountCsv;
import bitterend.exchange.CountCsv.Row;
import bitterend.exchange.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was counted so far, by whichever device: the list of {@code stock count --file}, in a file of the page, so that a count
 * goes on after the program was ended. Nothing of it is in the ledger before the count is accepted.
 */
final class CountDraft {
    /** Name of the file in the shop folder. */
    static final String NAME = ".serve-count.csv";

    private final Path file;

    CountDraft(Path shop) {
        file = shop.resolve(NAME);
    }

    synchronized List<Row> rows() {
        return Files.exists(file) ? CountCsv.read(file).rows() : List.of();
    }

    Optional<Row> of(String reel) {
        return rows().stream().filter(row -> row.counted().reel().equals(reel)).findFirst();
    }

    /** Writes down what was found of a reel; what was found of it before gives way. */
    synchronized void put(Row row) {
        List<Row> rows = without(row.counted().reel());
        rows.add(row);
        WholeFile.write(file, CountCsv.filled(rows));
    }

    /** What was written of a reel goes. */
    synchronized void remove(String reel) {
        WholeFile.write(file, CountCsv.filled(without(reel)));
    }

    private List<Row> without(String reel) {
        List<Row> rows = new ArrayList<>(rows());
        rows.removeIf(row -> row.counted().reel().equals(reel));
        return rows;
    }

    /** The count is over. */
    synchronized void end() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
