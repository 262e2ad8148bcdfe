package bitterend.work.imports;

import bitterend.exchange.WholeFile;
import bitterend.work.FilesBefore;
import bitterend.work.ShopAccess;
import bitterend.work.imports.ImportSheets.Result.Looked;
import bitterend.work.orders.EditOrders;
import bitterend.work.orders.EditOrders.Book;
import bitterend.work.orders.EditOrders.Edit;
import bitterend.work.orders.EditOrders.Saved;
import bitterend.work.orders.EditOrders.TakenBack;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Takes over what an import was looked at for, and takes the last one back whole. */
public final class TakeOver {
    private final ShopAccess shop;
    private final FilesBefore log;

    public TakeOver(ShopAccess shop) {
        this.shop = shop;
        this.log = new FilesBefore(shop.folder(), shop.clock(), "import-before");
    }

    /** What became of it. */
    public sealed interface Result {
        /**
         * It is in the files.
         *
         * @param files their names
         */
        record Done(List<String> files) implements Result {
            public Done {
                files = List.copyOf(files);
            }
        }

        /** Every row is in the files as it is in the sheet. */
        record Nothing() implements Result {}

        /** Something is asked still; nothing was written. */
        record Asked() implements Result {}

        /**
         * Somebody changed files meanwhile; nothing was written.
         *
         * @param files which
         */
        record Changed(List<String> files) implements Result {
            public Changed {
                files = List.copyOf(files);
            }
        }
    }

    /** Takes it over: the files as they were are kept first. */
    public Result take(Looked looked, String who) {
        if (!looked.isAnswered()) {
            return new Result.Asked();
        }
        Map<String, String> texts = new TreeMap<>(looked.texts());
        texts.entrySet().removeIf(file -> file.getValue().equals(looked.based().get(file.getKey())));
        if (texts.isEmpty()) {
            return new Result.Nothing();
        }
        List<String> changed = texts.keySet().stream()
                .filter(file -> !ShopTexts.read(shop.folder(), file)
                        .equals(looked.based().get(file)))
                .toList();
        if (!changed.isEmpty()) {
            return new Result.Changed(changed);
        }
        return write(texts, looked.based().getOrDefault(EditOrders.FILE, ""), who);
    }

    /** Writes all of them or none: what was written is put back when a later one fails. */
    private Result write(Map<String, String> texts, String orders, String who) {
        Path before = log.begin(texts, who);
        List<String> written = new ArrayList<>();
        try {
            for (String file : ShopTables.ORDER) {
                if (texts.containsKey(file)) {
                    String text = texts.getOrDefault(file, "");
                    if (file.equals(EditOrders.FILE)) {
                        if (!saved(orders, text, who)) {
                            written.forEach(done -> log.restore(before, done));
                            return new Result.Changed(List.of(file));
                        }
                    } else {
                        WholeFile.write(shop.folder().resolve(file), text);
                    }
                    written.add(file);
                }
            }
        } catch (UncheckedIOException fault) {
            written.forEach(done -> log.restore(before, done));
            throw fault;
        }
        log.end(before, written);
        return new Result.Done(written);
    }

    /** Saves the orders on top of those that were looked at; false where they are others by now. */
    private boolean saved(String base, String text, String who) {
        EditOrders orders = new EditOrders(shop);
        Optional<Book> book = orders.read().filter(read -> read.table().text().equals(base));
        return book.isPresent() && orders.save(Edit.between(book.get(), text), who) instanceof Saved.Written;
    }

    /**
     * An import that can be taken back.
     *
     * @param name when it was taken over, and by whom
     * @param files what it wrote
     */
    public record Last(String name, List<String> files) {
        public Last {
            files = List.copyOf(files);
        }
    }

    /** The last import that was not taken back. */
    public Optional<Last> last() {
        return log.last()
                .map(folder -> new Last(
                        String.valueOf(folder.getFileName()),
                        List.copyOf(log.written(folder).keySet())));
    }

    /** Takes the last import back whole, unless somebody changed one of its files since. */
    public Result back(String who) {
        Optional<Path> last = log.last();
        if (last.isEmpty()) {
            return new Result.Nothing();
        }
        Path folder = last.get();
        List<String> changed = log.changedSince(folder);
        if (!changed.isEmpty()) {
            return new Result.Changed(changed);
        }
        List<String> files = List.copyOf(log.written(folder).keySet());
        if (files.contains(EditOrders.FILE) && !takeBackOrders(who)) {
            return new Result.Changed(List.of(EditOrders.FILE));
        }
        files.stream().filter(file -> !file.equals(EditOrders.FILE)).forEach(file -> log.restore(folder, file));
        log.takenBack(folder);
        return new Result.Done(files);
    }

    /** Takes the save of the orders back; false where the version before it is not there. */
    private boolean takeBackOrders(String who) {
        EditOrders orders = new EditOrders(shop);
        List<String> versions = orders.before();
        return !versions.isEmpty()
                && orders.read()
                        .filter(book -> orders.takeBack(versions.get(versions.size() - 1), book.digest(), who)
                                == TakenBack.DONE)
                        .isPresent();
    }
}
