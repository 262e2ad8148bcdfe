package bitterend.serve;

import bitterend.work.ShopAccess;
import bitterend.work.ShopFound;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The shop as it is, read again only when one of its files has changed: people and other programs work on them, too. */
final class Shelf {
    /** Files of the page alone, which say nothing of the shop. */
    private static final String OWN = ".serve-";

    private final ShopAccess shop;
    private List<String> seen = List.of();
    private @Nullable ShopFound found;

    Shelf(ShopAccess shop) {
        this.shop = shop;
    }

    ShopAccess access() {
        return shop;
    }

    synchronized ShopFound read() {
        List<String> now = state();
        ShopFound kept = found;
        if (kept == null || !now.equals(seen)) {
            kept = shop.read();
            found = kept;
            seen = now;
        }
        return kept;
    }

    /** What tells one state of the shop from another. */
    String mark() {
        return String.join("\n", state());
    }

    private List<String> state() {
        List<String> state = new ArrayList<>(files());
        state.add(shop.ledgerState());
        return state;
    }

    /** Name, size and time of each file; the ledger's journal shows that somebody is writing. */
    private List<String> files() {
        try (Stream<Path> files = Files.list(shop.folder())) {
            return files.filter(file -> !file.getFileName().toString().startsWith(OWN))
                    .sorted()
                    .map(Shelf::mark)
                    .toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static String mark(Path file) {
        try {
            BasicFileAttributes read = Files.readAttributes(file, BasicFileAttributes.class);
            return file.getFileName() + " " + read.size() + " " + read.lastModifiedTime();
        } catch (IOException fault) {
            return file.getFileName() + " gone";
        }
    }
}
