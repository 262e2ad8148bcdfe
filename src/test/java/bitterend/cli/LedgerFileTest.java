package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ledger as a file: backup, restore, head, what stands in its place; and what is typed about it. */
final class LedgerFileTest {
    @TempDir
    private Path folder = Path.of("");

    private String shop = "";
    private Path ledger = Path.of("");

    @BeforeEach
    void openShop() throws IOException {
        shop = TestShop.in(folder).path().toString();
        ledger = Path.of(shop, "stock.db");
        run(0, "stock", "open", shop);
    }

    @Test
    void backup_isRestoredWholeAndTheOtherIsKept() throws IOException {
        String before = rack();
        String copy = folder.resolve("monday.db").toString();
        String head = head(run(0, "stock", "backup", shop, copy));
        run(3, "stock", "backup", shop, copy);
        run(0, "stock", "condemn", shop, "R-104");
        Run restored = run(0, "stock", "restore", shop, copy, "--who", "Ada", "--note", "disk failed");
        assertEquals(before, rack());
        List<Path> aside = aside();
        assertEquals(1, aside.size(), aside.toString());
        assertTrue(restored.out().contains(aside.get(0).toString()), restored.out());
        run(0, "stock", "verify", shop, "--head", head);
        run(0, "stock", "restore", shop, aside.get(0).toString());
        assertFalse(rack().contains("\"R-104\",\n      \"gone\": false"));
        assertEquals(2, aside().size());
    }

    /** A crash in mid-write leaves a journal; played into a restored copy it would destroy it. */
    @Test
    void restore_putsAForeignJournalAside() throws IOException {
        String copy = folder.resolve("monday.db").toString();
        run(0, "stock", "backup", shop, copy);
        for (int i = 0; i < 30; i++) {
            run(0, "stock", "receive", shop, "N" + i, "DB12", "100 m");
        }
        Path journal = Path.of(shop, "stock.db-journal");
        Files.write(journal, journalOf(Files.readAllBytes(ledger)));
        run(0, "stock", "restore", shop, copy);
        assertFalse(Files.exists(journal));
        run(0, "stock", "verify", shop);
        assertFalse(rack().contains("N29"));
    }

    @Test
    void restoreOfWhatIsNoSoundLedger_changesNothing() throws IOException {
        byte[] before = Files.readAllBytes(ledger);
        Path text = Files.writeString(folder.resolve("text.db"), "reel,rope\n".repeat(1000));
        Path half = folder.resolve("half.db");
        Files.write(half, java.util.Arrays.copyOf(before, before.length / 2));
        run(3, "stock", "restore", shop, text.toString());
        run(3, "stock", "restore", shop, half.toString());
        run(3, "stock", "restore", shop, folder.resolve("nowhere.db").toString());
        assertArrayEquals(before, Files.readAllBytes(ledger));
        assertEquals(List.of(), aside());
    }

    @Test
    void backupOfAnotherLedger_isRefusedUnlessItIsMeant() throws IOException {
        String other = TestShop.in(Files.createDirectory(folder.resolve("other")))
                .path()
                .toString();
        run(0, "stock", "open", other);
        String copy = folder.resolve("other.db").toString();
        String head = head(run(0, "stock", "backup", other, copy));
        byte[] before = Files.readAllBytes(ledger);
        Run refused = run(3, "stock", "restore", shop, copy);
        assertTrue(refused.err().contains("is of another ledger (" + head), refused.err());
        assertArrayEquals(before, Files.readAllBytes(ledger));
        assertEquals(List.of(), aside());
        run(0, "stock", "restore", shop, copy, "--other-ledger");
        run(0, "stock", "verify", shop, "--head", head);
        assertEquals(1, aside().size());
    }

    @Test
    void ledgerThatIsALink_isReplacedWhereItLeads() throws IOException {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        Path file = Files.move(ledger, disk.resolve("rope.db"));
        Files.createSymbolicLink(ledger, file);
        String before = rack();
        String copy = folder.resolve("monday.db").toString();
        run(0, "stock", "backup", shop, copy);
        run(0, "stock", "condemn", shop, "R-104");
        run(0, "stock", "restore", shop, copy);
        assertTrue(Files.isSymbolicLink(ledger));
        assertEquals(before, rack());
        try (Stream<Path> files = Files.list(disk)) {
            assertEquals(2, files.count(), "the replaced ledger lies beside the file");
        }
        Files.delete(file);
        Run nowhere = run(3, "stock", "restore", shop, copy);
        assertTrue(nowhere.err().contains("leads nowhere"), nowhere.err());
    }

    @Test
    void lostOrDamagedLedger_isRestored() throws IOException {
        String before = rack();
        String copy = folder.resolve("monday.db").toString();
        run(0, "stock", "backup", shop, copy);
        Files.writeString(ledger, "rubbish");
        run(0, "stock", "restore", shop, copy);
        assertEquals(before, rack());
        Files.delete(ledger);
        run(0, "stock", "restore", shop, copy);
        assertEquals(before, rack());
    }

    @Test
    void backupThatCannotBeWritten_leavesNoFileBehind() throws IOException {
        Path nowhere = folder.resolve("no such folder").resolve("b.db");
        Run refused = Run.of("stock", "backup", shop, nowhere.toString());
        assertEquals(3, refused.code(), refused.err());
        assertTrue(refused.err().contains("there is no backup"), refused.err());
        assertTrue(refused.err().contains("there is no folder " + nowhere.getParent()), refused.err());
        try (Stream<Path> files = Files.walk(folder)) {
            assertEquals(
                    0, files.filter(file -> file.toString().contains("b.db")).count());
        }
    }

    @Test
    void printedHead_showsACutEndAnOlderCopyAndAnotherLedger() throws IOException {
        String copy = folder.resolve("monday.db").toString();
        run(0, "stock", "backup", shop, copy);
        run(0, "stock", "move", shop, "R-104", "bay 4");
        String head = head(run(0, "stock", "verify", shop));
        Files.delete(ledger);
        Files.copy(Path.of(copy), ledger);
        Run older = run(3, "stock", "verify", shop, "--head", head);
        assertTrue(older.err().contains("an older copy was put back"), older.err());
        run(0, "stock", "move", shop, "R-104", "bay 5");
        assertTrue(run(3, "stock", "verify", shop, "--head", head).err().contains("event 2 is not the one"));
        Files.delete(ledger);
        run(0, "stock", "open", shop);
        assertTrue(run(3, "stock", "verify", shop, "--head", head).err().contains("not the ledger of that head"));
        run(2, "stock", "verify", shop, "--head", "yesterday");
    }

    /** A lawful restore is no damage: the head of the ledger before it is told by the event and the file it is kept as. */
    @Test
    void headOfTheReplacedLedger_namesTheRestoreAndTheFile() throws IOException {
        String copy = folder.resolve("monday.db").toString();
        run(0, "stock", "backup", shop, copy);
        run(0, "stock", "move", shop, "R-104", "bay 4");
        run(0, "stock", "move", shop, "R-104", "bay 5");
        String head = head(run(0, "stock", "verify", shop));
        run(0, "stock", "restore", shop, copy, "--who", "Maren", "--note", "disk failed");
        Run told = run(3, "stock", "verify", shop, "--head", head);
        assertFalse(told.err().contains("damaged"), told.err());
        assertTrue(told.err().contains("replaced by event 2 (ledger restored)"), told.err());
        assertTrue(told.err().contains("by Maren: disk failed"), told.err());
        assertTrue(told.err().contains("stock.db-replaced-"), told.err());
        run(0, "stock", "verify", shop);
        String other = head.substring(0, head.length() - 16) + "0123456789abcdef";
        assertTrue(run(3, "stock", "verify", shop, "--head", other).err().contains("damaged"), "a head of no ledger");
    }

    @Test
    void headIsPrintedOnBackupAndExport() {
        String head = head(run(0, "stock", "verify", shop));
        assertEquals(
                head,
                head(run(0, "stock", "backup", shop, folder.resolve("b.db").toString())));
        assertEquals(head, head(run(0, "stock", "export", shop)));
    }

    @Test
    void danglingLinkOrUnreadableLedger_stopsWithASentence() throws IOException {
        Files.delete(ledger);
        Files.createSymbolicLink(ledger, folder.resolve("gone").resolve("stock.db"));
        for (String command : List.of("plan", "check", "lengths")) {
            Run run = run(3, command, shop);
            assertTrue(run.err().contains("a link that leads nowhere"), run.err());
        }
        run(3, "stock", "list", shop);
        run(3, "stock", "open", shop);
        Files.delete(ledger);
        Files.createDirectory(ledger);
        assertTrue(run(3, "plan", shop).err().contains("cannot be read"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "receive||DB12|10 m",
                "receive|../../x|DB12|10 m",
                "receive|new\nline|DB12|10 m",
                "receive|N-1|DB12|999999 m",
                "receive|N-1|DB12|0 m",
                "receive|N-1|DB12|10 m|--inner-wraps|-1 m",
                "receive|N-1|DB12|10 m|--use-by|+99999-01-01",
                "receive|N-1|DB12|10 m|--received|2026-13-01",
                "receive|N-1|DB12|10 m|--order|a/b|--owner|Ada",
                "receive|N-1|DB12|10 m|--lot|\u001b[2J",
                "receive|N-1|DB12|10 m|--tolerance|60 %",
                "receive|N-1|DB12|10 m|--tolerance|-1",
                "receive|N-1|DB12|10 m|--tolerance|1 %|--uncertainty|1 m",
                "receive|N-1|DB12|10 m|--owner|Ada",
                "receive|N-1|DB12|10 m|--flaws|2 m to 1 m: x",
                "receive|N-1|DB12|10 m|--flaws|1 m: \u001b[2J",
                "receive|N-1|DB12|10 m|--note|two\nlines",
                "split|R-104|1 m|",
                "split|R-104|1 m|../../x",
                "split|R-104|-1 m|R-9",
                "reserve|R-104|x\u001b[2Jy\nz",
                "move|R-104|\u202e\n",
                "count|R-104|999999 m",
                "count|R-104|60 m|--uncertainty|-5 m",
                "count|R-104|60 m|--who|a\nb",
                "correct|R-104",
                "correct|R-104|--use-by|tomorrow",
                "flaw|R-104|1 m: a; nothing",
                "send|R-104|two\nlofts",
                "verify|--head|x"
            })
    void valueThatNoFileMayHold_isABadCommandLineAndBooksNothing(String words) throws IOException {
        byte[] before = Files.readAllBytes(ledger);
        Run run = run(2, command(words));
        assertTrue(run.err().startsWith("error: "), run.err());
        assertArrayEquals(before, Files.readAllBytes(ledger));
    }

    @Test
    void longLot_isRefusedAndShortEnoughOnesAreTaken() {
        run(2, "stock", "receive", shop, "N-1", "DB12", "10 m", "--lot", "x".repeat(61));
        run(0, "stock", "receive", shop, "N-1", "DB12", "10 m", "--lot", "x".repeat(60));
    }

    @Test
    void commandOfSeveralParts_isAllOrNothing() throws IOException {
        byte[] before = Files.readAllBytes(ledger);
        run(3, "stock", "flaw", shop, "R-104", "1 m: a; 999 m: b");
        run(3, "stock", "receive", shop, "N-1", "DB12", "10 m", "--flaws", "1 m: a; 999 m: b");
        run(3, "stock", "receive", shop, "N-1", "DB12", "10 m", "--inner-wraps", "50 m");
        assertArrayEquals(before, Files.readAllBytes(ledger));
    }

    @Test
    void lookAlikes_areWarnedOf() {
        for (String id : List.of("r-104", "R-1O4")) {
            Run run = run(0, "stock", "receive", shop, id, "DB12", "10 m");
            assertTrue(run.err().contains("looks like 'R-104'"), id + run.err());
        }
        assertFalse(
                run(0, "stock", "receive", shop, "R-106", "DB12", "10 m").err().contains("looks like"));
    }

    @Test
    void lookAlikesInFiles_areWarnedOfByCheck() throws IOException {
        Files.writeString(
                Path.of(shop, "reels.csv"),
                "reel,rope,lot,length\nR01,DB12,L-10,50 m\nR1,DB12,L-1O,50 m\nR2,DB12,L-10,50 m\n");
        Files.writeString(
                Path.of(shop, "orders.csv"),
                """
                order,line,customer,rope,length,end a,end b,quantity
                0100,1,Harbour Board,DB12,5 m,plain,plain,1
                0100,2,Harbour Board,DB12,5 m,plain,plain,1
                100,1,Harbour Board,DB12,5 m,plain,plain,1
                """);
        Files.delete(ledger);
        String told = plain(run(0, "check", shop).out());
        for (String other : List.of("R01", "L-10", "0100")) {
            assertEquals(2, told.split("an id that nobody takes for " + other).length, other + "\n" + told);
        }
    }

    @Test
    void lookAlikeLots_areWarnedOfWhenTheyAreTyped() {
        String[] looking = {"P22-0118", "p22-118", "P22-II8"};
        for (int i = 0; i < looking.length; i++) {
            Run run = run(0, "stock", "receive", shop, "Z" + i, "DB12", "10 m", "--lot", looking[i]);
            assertTrue(run.err().contains("looks like 'P22-118', which is another lot of DB12"), run.err());
            run(0, "stock", "condemn", shop, "Z" + i);
        }
        Run same = run(0, "stock", "receive", shop, "Y0", "DB12", "10 m", "--lot", "P22-118");
        assertFalse(same.err().contains("looks like"), same.err());
        Run corrected = run(0, "stock", "correct", shop, "Y0", "--lot", "P22-ll9");
        assertTrue(corrected.err().contains("looks like 'P22-119'"), corrected.err());
    }

    @Test
    void overlappingFlaws_becomeOne() {
        run(0, "stock", "flaw", shop, "R-104", "20 m to 21 m: chafed; 20.5 m to 22 m: chafed");
        run(0, "stock", "flaw", shop, "R-104", "20 m to 21 m: chafed");
        String csv = run(0, "stock", "export", shop).out();
        assertTrue(csv.contains(",20000 mm to 22000 mm: chafed,"), csv);
    }

    @Test
    void wrongPapers_areCorrectedWithTheirHistory() throws IOException {
        run(0, "plan", shop, "--time", "1s");
        run(0, "stock", "post", shop, "--all");
        String old = run(0, "stock", "trace", shop, "--lot", "P22-118").out();
        run(
                0,
                "stock",
                "correct",
                shop,
                "R-105",
                "--lot",
                "P22-118",
                "--use-by",
                "2027-01-31",
                "--note",
                "read wrongly");
        run(3, "stock", "correct", shop, "R-105", "--lot", "P22-118");
        String history = run(0, "stock", "history", shop, "R-105", "--json").out();
        assertTrue(history.contains("lot P22-119 -> P22-118; use by none -> 2027-01-31: read wrongly"), history);
        assertTrue(run(0, "stock", "trace", shop, "--lot", "P22-118").out().length() > old.length());
        run(0, "stock", "trace", shop, "--lot", "P22-119");
        run(0, "stock", "verify", shop);
    }

    /** Booked as the wrong rope: put right as long as nothing came off the reel; a plan made before is not posted. */
    @Test
    void wrongRope_isCorrectedWhileNothingCameOffTheReel() throws IOException {
        anotherRope();
        run(0, "stock", "receive", shop, "N-1", "DB12", "40 m", "--lot", "L9");
        run(0, "stock", "move", shop, "N-1", "bay 4");
        run(3, "stock", "correct", shop, "N-1", "--rope", "DB99");
        run(0, "stock", "correct", shop, "N-1", "--rope", "LAID14", "--note", "read the label again");
        String history = run(0, "stock", "history", shop, "N-1", "--json").out();
        assertTrue(history.contains("rope DB12 -> LAID14: read the label again"), history);
        assertTrue(run(0, "stock", "export", shop).out().contains("N-1,LAID14,40 m,L9"));
        run(0, "stock", "cut", shop, "N-1", "2 m", "--for", "a walk-in");
        Run late = run(3, "stock", "correct", shop, "N-1", "--rope", "DB12");
        assertTrue(late.err().contains("it was sold in event 5, which is to be taken back first"), late.err());
        run(0, "stock", "undo", shop, "5");
        run(0, "stock", "split", shop, "N-1", "10 m", "N-2");
        assertTrue(
                run(3, "stock", "correct", shop, "N-2", "--rope", "DB12").err().contains("cannot be corrected"));
        run(0, "stock", "verify", shop);
    }

    private void anotherRope() throws IOException {
        Path ropes = Path.of(shop, "ropes.json");
        String text = Files.readString(ropes);
        String rope = text.substring(text.indexOf("{\"id\""), text.indexOf("}]}") + 1);
        Files.writeString(ropes, text.replace(rope, rope + ", " + rope.replace("DB12", "LAID14")));
    }

    /** A reel that was booked by mistake never came: its id is free again, whatever comes under it. */
    @Test
    void idOfAReelThatNeverCame_isGivenAgain() throws IOException {
        anotherRope();
        run(0, "stock", "receive", shop, "N-1", "DB12", "40 m");
        run(3, "stock", "receive", shop, "N-1", "LAID14", "30 m");
        run(0, "stock", "undo", shop, "2");
        run(0, "stock", "split", shop, "R-104", "3 m", "N-1");
        run(0, "stock", "undo", shop, "4");
        run(0, "stock", "receive", shop, "N-1", "LAID14", "30 m", "--lot", "L9");
        assertTrue(run(0, "stock", "export", shop).out().contains("N-1,LAID14,30 m,L9"));
        run(0, "stock", "verify", shop);
        run(0, "stock", "condemn", shop, "N-1");
        run(3, "stock", "receive", shop, "N-1", "DB12", "40 m");
        run(0, "stock", "undo", shop, "7");
        run(0, "stock", "undo", shop, "6");
        run(0, "stock", "verify", shop);
    }

    @Test
    void listAndHistory_sayWhatAPersonMustKnow() throws IOException {
        TestShop.note(Path.of(shop, "reels.csv"), "R-105", "glazed");
        Files.delete(ledger);
        run(0, "stock", "open", shop);
        run(
                0,
                "stock",
                "receive",
                shop,
                "N-1",
                "DB12",
                "10 m",
                "--use-by",
                "2026-03-07",
                "--flaws",
                "1 m to 2 m: join",
                "--certificate",
                "3.1",
                "--certificate-number",
                "K-7",
                "--lead-trim",
                "0.3 m");
        String list = run(0, "stock", "list", shop).out().replaceAll("\\s+", " ");
        for (String told : List.of("glazed", "use by 2026-03-07", "(join)", "3.1 K-7", "lead trim 0.300 m")) {
            assertTrue(list.contains(told), list);
        }
        run(0, "stock", "move", shop, "N-1", "bay 4");
        run(0, "stock", "reserve", shop, "N-1", "1001");
        run(0, "stock", "send", shop, "N-1", "Eastquay");
        String history = run(0, "stock", "history", shop, "N-1").out().replaceAll("\\s+", " ");
        for (String told : List.of("to bay 4", "for order 1001", "to Eastquay")) {
            assertTrue(history.contains(told), history);
        }
    }

    @Test
    void lot_isTracedToItsPiecesCustomersReelsAndCoils() {
        run(0, "plan", shop, "--time", "1s");
        run(0, "stock", "post", shop, "--all");
        run(0, "stock", "split", shop, "R-105", "5 m", "R-105b");
        String trace = run(0, "stock", "trace", shop, "--lot", "P22-119").out();
        assertTrue(trace.contains("on the rack:") && trace.contains("R-105b"), trace);
        run(0, "stock", "receive", shop, "N-9", "DB12", "10 m", "--lot", "uncut");
        assertTrue(run(0, "stock", "trace", shop, "--lot", "uncut").out().contains("N-9"));
        run(3, "stock", "trace", shop, "--lot", "never");
        assertTrue(run(0, "stock", "trace", shop, "--lot", "P22-119", "--json")
                .out()
                .contains("\"customer\":"));
    }

    private String[] command(String words) {
        String[] parts = words.split("\\|", -1);
        String[] all = new String[parts.length + 2];
        all[0] = "stock";
        all[1] = parts[0];
        all[2] = shop;
        System.arraycopy(parts, 1, all, 3, parts.length - 1);
        return all;
    }

    /** A rollback journal as SQLite leaves it: the first page as it was, ready to be played back. */
    private static byte[] journalOf(byte[] database) {
        int page = 4096;
        java.nio.ByteBuffer journal = java.nio.ByteBuffer.allocate(512 + 4 + page + 4);
        journal.put(new byte[] {(byte) 0xd9, (byte) 0xd5, 0x05, (byte) 0xf9, 0x20, (byte) 0xa1, 0x63, (byte) 0xd7});
        journal.putInt(1).putInt(7).putInt(database.length / page).putInt(512).putInt(page);
        journal.position(512).putInt(1);
        int sum = 7;
        byte[] first = java.util.Arrays.copyOf(database, page);
        for (int i = page - 200; i > 0; i -= 200) {
            sum += first[i] & 0xff;
        }
        journal.put(first).putInt(sum);
        return journal.array();
    }

    private List<Path> aside() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(shop))) {
            return files.filter(file -> file.getFileName().toString().contains("-replaced-"))
                    .sorted()
                    .toList();
        }
    }

    private static String head(Run run) {
        String said = run.out() + run.err();
        return said.replaceAll("(?s).*head of the ledger: (\\S+).*", "$1");
    }

    private String rack() {
        return run(0, "stock", "list", shop, "--json").out();
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), String.join(" ", words) + "\n" + run.out() + run.err());
        assertFalse(run.err().contains("Exception"), run.err());
        return run;
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
