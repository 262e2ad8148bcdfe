package bitterend.work.orders;

import bitterend.exchange.OrderLine;
import bitterend.exchange.TableText;
import bitterend.exchange.WholeFile;
import bitterend.finding.Finding;
import bitterend.work.DraftShop;
import bitterend.work.ShopAccess;
import bitterend.work.ShopFound;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * The order book as somebody types in it. What is saved is the file as a person would have written it: only changed cells are
 * other than before. Each save keeps the version before it, and can be taken back whole.
 */
public final class EditOrders {
    /** The file of the orders. */
    public static final String FILE = "orders.csv";
    /** The file in its place. */
    public static final String WORKBOOK = "orders.xlsx";
    /** The folder in the shop where the versions before are kept. */
    public static final String BEFORE = "orders-before";

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HHmmss");
    private static final String ENDING = ".csv";

    /** One save at a time in this process. */
    static final Object SAVING = new Object();

    private final ShopAccess shop;

    public EditOrders(ShopAccess shop) {
        this.shop = shop;
    }

    /** The book as it was read, with the SHA-256 of the file, by which a save knows that nobody changed it meanwhile. */
    public record Book(TableText table, String digest) {}

    /**
     * What is to be saved.
     *
     * @param base the book that was looked at
     * @param changed by row of that book, the header being 0, the cells that are other now, by column
     * @param added rows below the last, each a cell for each column
     * @param columns names of columns behind the last; cells of them may be changed and added, too
     */
    public record Edit(
            Book base, Map<Integer, Map<Integer, String>> changed, List<List<String>> added, List<String> columns) {
        public Edit {
            changed = new TreeMap<>(changed);
            added = List.copyOf(added);
            columns = List.copyOf(columns);
        }

        /** In the columns that the book has. */
        public Edit(Book base, Map<Integer, Map<Integer, String>> changed, List<List<String>> added) {
            this(base, changed, added, List.of());
        }

        /** What makes a book of this text of a book: rows in their order, and new ones below them. */
        public static Edit between(Book base, String text) {
            TableText now = TableText.of(text);
            List<String> header = base.table().header();
            List<String> columns =
                    now.header().subList(header.size(), now.header().size());
            TableText widened = base.table().widened(columns);
            Map<Integer, Map<Integer, String>> changed = new TreeMap<>();
            for (int row = 1; row < widened.rows().size(); row++) {
                List<String> before = widened.cells(row);
                List<String> after = now.cells(row);
                for (int column = 0; column < after.size(); column++) {
                    if (column < before.size() && !after.get(column).equals(before.get(column))) {
                        changed.computeIfAbsent(row, any -> new TreeMap<>()).put(column, after.get(column));
                    }
                }
            }
            List<List<String>> added = new ArrayList<>();
            for (int row = widened.rows().size(); row < now.rows().size(); row++) {
                added.add(now.cells(row));
            }
            return new Edit(base, changed, added, columns);
        }

        /** The same of a book that has its new columns already. */
        Edit widened() {
            return new Edit(new Book(base.table().widened(columns), base.digest()), changed, added);
        }

        /** Whether nothing would be other than before. */
        public boolean isEmpty() {
            return changed.values().stream().allMatch(Map::isEmpty) && added.isEmpty();
        }
    }

    /** What became of an edit. */
    public sealed interface Saved {
        /**
         * It is in the file.
         *
         * @param merged whether somebody else had changed other cells meanwhile; theirs stay, too
         * @param findings what the files say of it now
         */
        record Written(boolean merged, List<Finding> findings) implements Saved {}

        /**
         * Somebody else changed the same cells, or took their rows out; nothing was written.
         *
         * @param places which, in words
         */
        record Conflict(List<String> places) implements Saved {}

        /** Nothing is other than before. */
        record Nothing() implements Saved {}

        /** The file cannot be read as a table; nothing was written. */
        record Unreadable() implements Saved {}
    }

    /** The book as it is; nothing when the file cannot be read. */
    public Optional<Book> read() {
        return TableText.find(shop.folder(), FILE).map(found -> new Book(found.table(), found.digest()));
    }

    /** Whether the orders are in a workbook, which is changed where it was made. */
    public boolean isWorkbook() {
        return !Files.exists(shop.folder().resolve(FILE))
                && Files.exists(shop.folder().resolve(WORKBOOK));
    }

    /**
     * An edit as it is looked at.
     *
     * @param onTop the same edit of the book as it is now
     * @param places where somebody else has changed the same meanwhile, in words: saved, the edit takes the place of theirs
     */
    public record Looked(Edit onTop, List<String> places) {
        public Looked {
            places = List.copyOf(places);
        }
    }

    /** The edit on top of the book as it is now, whatever others have done meanwhile; nothing when the file cannot be read. */
    public Optional<Looked> look(Edit edit) {
        return read().map(book -> {
            BookMerge merged = BookMerge.of(book, edit);
            return new Looked(merged.edit(), merged.conflicts());
        });
    }

    /** What the files of the shop would say of it, and the lines as they would be; nothing is written. */
    public ShopFound check(Edit edit) {
        return new DraftShop(shop)
                .with(Map.of(FILE, BookMerge.of(edit.base(), edit).table().text()));
    }

    /** The lines of a checked edit that can be made. */
    public static List<OrderLine> lines(ShopFound checked) {
        return checked.found().map(now -> now.shop().orders()).orElse(List.of());
    }

    /** Saves it. */
    public Saved save(Edit edit, String who) {
        synchronized (SAVING) {
            return saved(edit, who);
        }
    }

    private Saved saved(Edit edit, String who) {
        Optional<Book> now = read();
        if (now.isEmpty()) {
            return new Saved.Unreadable();
        }
        if (edit.isEmpty()) {
            return new Saved.Nothing();
        }
        BookMerge merged = BookMerge.of(now.get(), edit);
        if (!merged.conflicts().isEmpty()) {
            return new Saved.Conflict(merged.conflicts());
        }
        if (merged.edit().isEmpty()) {
            return new Saved.Nothing();
        }
        write(merged.table().text(), who);
        return new Saved.Written(
                !now.get().digest().equals(edit.base().digest()), shop.read().findings());
    }

    /** What became of taking a save back. */
    public enum TakenBack {
        /** The version before it is the book again. */
        DONE,
        /** The last version before is another, or the book is not what was looked at: nothing was taken back. */
        CHANGED,
        /** There is no version before this one. */
        NONE
    }

    /**
     * Takes the last save back whole. The book as it is now is kept as a version, too.
     *
     * @param version the version before that is to be the book again, as {@link #before} calls it: the last one
     * @param digest of the book that was looked at
     */
    public TakenBack takeBack(String version, String digest, String who) {
        synchronized (SAVING) {
            return takenBack(version, digest, who);
        }
    }

    private TakenBack takenBack(String version, String digest, String who) {
        List<Path> before = versions();
        if (before.isEmpty()) {
            return TakenBack.NONE;
        }
        boolean looked = read().filter(book -> book.digest().equals(digest)).isPresent();
        if (!looked || !name(before.get(before.size() - 1)).equals(version)) {
            return TakenBack.CHANGED;
        }
        Path last = before.get(before.size() - 1);
        try {
            byte[] bytes = Files.readAllBytes(last);
            Path file = shop.folder().resolve(FILE);
            Files.write(
                    last.resolveSibling("before taking back " + now() + " " + UUID.randomUUID() + ".txt"),
                    Files.readAllBytes(file));
            WholeFile.write(file, bytes);
            Files.move(last, last.resolveSibling(last.getFileName() + ".taken-back-by-" + plain(who)));
            return TakenBack.DONE;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The versions before, the oldest first. */
    public List<String> before() {
        return versions().stream().map(EditOrders::name).toList();
    }

    private List<Path> versions() {
        Path folder = shop.folder().resolve(BEFORE);
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static String name(Path version) {
        String name = String.valueOf(version.getFileName());
        return name.substring(0, name.length() - ENDING.length());
    }

    /** The version before is kept first; if that cannot be done nothing is written. */
    void write(String text, String who) {
        Path file = shop.folder().resolve(FILE);
        Path folder = shop.folder().resolve(BEFORE);
        String when = now();
        try {
            Files.createDirectories(folder);
            Path kept = folder.resolve(when + " " + plain(who) + ENDING);
            for (int again = 2; Files.exists(kept); again++) {
                kept = folder.resolve(when + "-" + again + " " + plain(who) + ENDING);
            }
            Files.copy(file, kept);
            byte[] old = Files.readAllBytes(file);
            boolean marked = old.length > 2 && old[0] == (byte) 0xEF && old[1] == (byte) 0xBB && old[2] == (byte) 0xBF;
            WholeFile.write(file, marked ? "\ufeff" + text : text);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private String now() {
        return MOMENT.withZone(ZoneId.systemDefault()).format(shop.clock().instant());
    }

    private static String plain(String who) {
        return who.replaceAll("[^\\p{L}\\p{N} ._-]", "_");
    }
}
