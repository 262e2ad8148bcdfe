package bitterend.work.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.store.SqliteLedgerPlace;
import bitterend.work.ShopAccess;
import bitterend.work.orders.EditOrders.Book;
import bitterend.work.orders.EditOrders.Edit;
import bitterend.work.orders.EditOrders.Saved;
import bitterend.work.orders.EditOrders.TakenBack;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Typing in the order book of the small demo loft: rows E-31/1, E-31/2, E-32/1, E-32/2; column 4 is the length, 7 the quantity. */
final class EditOrdersTest {
    private static final int LENGTH = 4;
    private static final int QUANTITY = 7;

    @TempDir
    private Path shop = Path.of("");

    private EditOrders verb = new EditOrders(access(Path.of("")));

    private static ShopAccess access(Path folder) {
        return new ShopAccess(folder, new SqliteLedgerPlace(folder, Clock.systemUTC()), Clock.systemUTC());
    }

    @BeforeEach
    void copyDemo() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data/eider-shed"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, shop.resolve(file.getFileName()));
            }
        }
        verb = new EditOrders(access(shop));
    }

    private String file() throws IOException {
        return Files.readString(shop.resolve(EditOrders.FILE));
    }

    private Book book() {
        return verb.read().orElseThrow();
    }

    @Test
    void save_changesThatCellAndKeepsTheVersionBefore() throws IOException {
        String before = file();
        Saved saved = verb.save(new Edit(book(), Map.of(1, Map.of(LENGTH, "29 m")), List.of()), "Ada/Bo");
        assertEquals(false, assertInstanceOf(Saved.Written.class, saved).merged());
        assertEquals(before.replace("BRAID-12,28 m", "BRAID-12,29 m"), file());
        assertEquals(1, verb.before().size());
        assertTrue(verb.before().get(0).endsWith("Ada_Bo"), verb.before().get(0));
        String version = verb.before().get(0);
        String digest = book().digest();
        assertEquals(TakenBack.CHANGED, verb.takeBack(version + "2", digest, "Bo"), "another version");
        assertEquals(TakenBack.CHANGED, verb.takeBack(version, "", "Bo"), "a book that nobody looked at");
        Files.writeString(shop.resolve(EditOrders.FILE), file().replace("LAID-14,6 m", "LAID-14,6.5 m"));
        assertEquals(TakenBack.CHANGED, verb.takeBack(version, digest, "Bo"), "typed into by hand meanwhile");
        assertTrue(file().contains("LAID-14,6.5 m"));
        assertEquals(TakenBack.DONE, verb.takeBack(version, book().digest(), "Bo"));
        assertEquals(before, file());
        assertEquals(List.of(), verb.before());
        assertEquals(TakenBack.NONE, verb.takeBack(version, book().digest(), "Bo"));
    }

    /** The same save sent again, by a program that has forgotten the first: it is in the file once. */
    @Test
    void saveThatIsThereAlready_writesNothing() throws IOException {
        Edit edit = new Edit(
                book(),
                Map.of(1, Map.of(LENGTH, "29 m")),
                List.of(List.of("E-40", "1", "", "LAID-14", "3 m", "whipped", "whipped", "1", "", "", "", "", "")));
        verb.save(edit, "Ada");
        String saved = file();
        assertInstanceOf(Saved.Nothing.class, new EditOrders(access(shop)).save(edit, "Ada"));
        assertEquals(saved, file());
        Edit other = new Edit(
                edit.base(),
                Map.of(),
                List.of(List.of("E-40", "1", "", "LAID-14", "4 m", "whipped", "whipped", "1", "", "", "", "", "")));
        assertEquals(
                List.of("E-40/1, which somebody else has added"),
                assertInstanceOf(Saved.Conflict.class, verb.save(other, "Bo")).places());
        assertEquals(saved, file());
    }

    /** Nothing that was typed is lost: it comes back in the book as it is by now, and saved again it goes. */
    @Test
    void editThatMeetsOthers_comesBackOnTopOfTheirs() throws IOException {
        Book looked = book();
        Files.writeString(
                shop.resolve(EditOrders.FILE),
                file().replace("E-31,1,", "E-30,1,yawl Knot,LAID-14,3 m,whipped,whipped,1,,,,,\nE-31,1,")
                        .replaceFirst("(?m)^E-31,2.*\n", "")
                        .replace("LAID-14,6 m", "LAID-14,6.5 m"));
        Edit edit = new Edit(
                looked,
                Map.of(1, Map.of(LENGTH, "29 m"), 2, Map.of(LENGTH, "12 m"), 3, Map.of(LENGTH, "7 m")),
                List.of());
        assertInstanceOf(Saved.Conflict.class, verb.save(edit, "Ada"));
        EditOrders.Looked onTop = verb.look(edit).orElseThrow();
        assertEquals(2, onTop.places().size(), onTop.places().toString());
        assertEquals(
                Map.of(2, Map.of(LENGTH, "29 m"), 3, Map.of(LENGTH, "7 m")),
                onTop.onTop().changed());
        assertEquals("E-31", onTop.onTop().added().get(0).get(0));
        assertInstanceOf(Saved.Written.class, verb.save(onTop.onTop(), "Ada"));
        assertTrue(
                file().contains("BRAID-12,29 m") && file().contains("BRAID-12,12 m") && file().contains("LAID-14,7 m"));
    }

    /** Somebody inserted a row above and changed another cell of the same row meanwhile. */
    @Test
    void saveThatMeetsOtherChanges_keepsBoth() throws IOException {
        Book looked = book();
        Files.writeString(
                shop.resolve(EditOrders.FILE),
                file().replace("E-31,1,", "E-30,1,yawl Knot,LAID-14,3 m,whipped,whipped,1,,,,,\nE-31,1,")
                        .replace("LAID-14,6 m", "LAID-14,6.5 m"));
        String theirs = file();
        Saved saved = verb.save(new Edit(looked, Map.of(3, Map.of(QUANTITY, "5")), List.of()), "Ada");
        assertTrue(assertInstanceOf(Saved.Written.class, saved).merged());
        assertEquals(theirs.replace("pin 100 mm,whipped,4,", "pin 100 mm,whipped,5,"), file());
    }

    @Test
    void saveThatMeetsTheSameCell_isRefusedAndSaysWhich() throws IOException {
        Book looked = book();
        Files.writeString(shop.resolve(EditOrders.FILE), file().replace("LAID-14,6 m", "LAID-14,6.5 m"));
        String theirs = file();
        Saved saved = verb.save(new Edit(looked, Map.of(3, Map.of(LENGTH, "7 m")), List.of()), "Ada");
        assertEquals(
                List.of("E-32/1, length, which is \"6.5 m\" by now"),
                assertInstanceOf(Saved.Conflict.class, saved).places());
        assertEquals(theirs, file());
        assertEquals(List.of(), verb.before());
    }

    @Test
    void rowThatIsGone_isAConflict() throws IOException {
        Book looked = book();
        Files.writeString(shop.resolve(EditOrders.FILE), file().replaceFirst("(?m)^E-32,1.*\n", ""));
        Saved saved = verb.save(new Edit(looked, Map.of(3, Map.of(LENGTH, "7 m")), List.of()), "Ada");
        assertEquals(1, assertInstanceOf(Saved.Conflict.class, saved).places().size());
    }

    @Test
    void nothingChanged_writesNothing() throws IOException {
        String before = file();
        assertInstanceOf(Saved.Nothing.class, verb.save(new Edit(book(), Map.of(), List.of()), "Ada"));
        assertEquals(before, file());
    }

    /** The same code as for the file says what is wrong, before anything is written. */
    @Test
    void check_saysWhatTheFilesWouldSay() throws IOException {
        String before = file();
        Edit edit = new Edit(
                book(),
                Map.of(1, Map.of(LENGTH, "28 q")),
                List.of(List.of("E-40", "1", "", "LAID-14", "3 m", "whipped", "whipped", "1", "", "", "", "", "")));
        assertTrue(verb.check(edit).findings().stream()
                .anyMatch(finding ->
                        finding.place().equals("row 2") && finding.field().equals("length")));
        assertEquals(
                1,
                EditOrders.lines(verb.check(edit)).stream()
                        .filter(line ->
                                line.assembly().ordered().source().order().equals("E-40"))
                        .count());
        assertEquals(before, file());
    }
}
