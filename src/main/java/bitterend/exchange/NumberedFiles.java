package bitterend.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Files of a folder that are called by a number, {@code 1.json} and so on, each written once and never again.
 *
 * @param folder the folder; it may not be there yet
 */
public record NumberedFiles(Path folder) {
    /** The numbers of all of them, lowest first. */
    public List<Integer> numbers() {
        return PlanFolder.numbered(folder);
    }

    /** Adds a file; whoever else does so at once gets the next number. */
    public void add(byte[] bytes) {
        try {
            Files.createDirectories(folder);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        int number = PlanFolder.next(numbers());
        while (!WholeFile.create(folder.resolve(number + ".json"), bytes)) {
            number++;
        }
    }
}
