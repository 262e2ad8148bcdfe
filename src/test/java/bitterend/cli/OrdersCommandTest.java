package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.store.SqliteLedger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Orders that change after cutting, spare pieces, how far orders have come, and deliveries. */
final class OrdersCommandTest {
    private static final String HEADER = "order,line,customer,rope,length,end a,end b,quantity,due,certificate\n";
    private static final String PILOTS = "5119,1,Port Pilots,DB16,28 m,sealed,sealed,1,2026-03-04,3.1\n";
    private static final String BOARD = "5118,2,Harbour Board,DB16,6 m,sealed,sealed,2,2026-03-06,\n";

    @TempDir
    private Path shop;

    @BeforeEach
    void aDayIsCut() throws IOException {
        write("shop.json", "{'format': 'bitterend/shop/1', 'name': 'A loft', 'currency': 'EUR', 'labour': '45 EUR/h'}");
        write(
                "ropes.json",
                """
                {'format': 'bitterend/ropes/1', 'ropes': [
                  {'id': 'DB16', 'name': 'White braid 16 mm', 'construction': 'double braid', 'fibre': 'polyester',
                   'diameter': '16 mm', 'price': '3 EUR/m', 'usualReel': '200 m'}]}
                """);
        write("orders.csv", HEADER + PILOTS + BOARD);
        write("reels.csv", "reel,rope,lot,length,certificate,certificate number\nR1,DB16,L1,100 m,3.1,C-77\n");
        run(0, "stock", "open", "" + shop);
        plan(0);
        assertTrue(orders().contains("1 planned (plan 1)"), orders());
        run(0, "stock", "post", "" + shop, "--all");
    }

    @Test
    void status_tellsWhatIsCut_theFirstDueFirst() {
        String page = orders();
        assertTrue(page.contains("2 orders, 0 overdue."), page);
        assertTrue(page.indexOf("5119") < page.indexOf("5118"), page);
        assertTrue(orders("--day", "2026-03-05").contains("2026-03-04 overdue"));
        String json =
                run(0, "orders", "" + shop, "--json", "--day", "2026-03-05").out();
        assertTrue(json.contains("\"overdue\": true"), json);
        assertTrue(json.contains("\"state\": \"cut\""), json);
        assertTrue(orders("--by", "customer").contains("Port Pilots\n-----------"));
        assertTrue(orders("--by", "due").contains("Due 2026-03-06\n"));
    }

    @Test
    void longerLength_isToldWithWhatItTakes_andAPersonDecides() throws IOException {
        write("orders.csv", HEADER + PILOTS.replace("28 m", "29.5 m") + BOARD);
        String told = "5119/1.1 (Port Pilots): ordered 28 m, sealed / sealed when it was cut, 29.5 m, sealed / sealed"
                + " now; it takes 29.500 m and is cut at 28.000 m;";
        assertTrue(orders().contains(told), orders());
        assertTrue(flat(run(0, "check", "" + shop).out()).startsWith("Changed after cutting, and spare pieces"));
        assertTrue(flat(run(0, "check", "" + shop, "--json").out()).contains(told));
        assertTrue(flat(plan(0).out()).contains(told));
        run(0, "sheet", "" + shop);
        String sheet = PageText.of(shop.resolve("sheet.html"));
        assertTrue(flat(sheet).contains("it takes 29.500 m and is cut at 28.000 m"), sheet);
        assertTrue(flat(run(0, "stock", "trace", "" + shop, "5119/1.1").out()).contains(told));
        run(0, "orders", "spare", "" + shop, "5119/1.1", "--note", "customer rang");
        assertTrue(plan(0).out().contains("29.500  5119/1.1"));
        assertTrue(
                orders().matches("(?s).*5119/1\\.1 spare \\d+ \\(Port Pilots\\): 28\\.000 m of DB16, lot L1;.*"),
                orders());
    }

    @Test
    void changedOrder_thatIsAccepted_isNotToldAgainUntilItChangesAgain() throws IOException {
        write("orders.csv", HEADER + PILOTS.replace("28 m", "29.5 m") + BOARD);
        run(0, "orders", "keep", "" + shop, "5119/1.1", "--note", "they will take it short");
        assertFalse(orders().contains("Changed after cutting"), orders());
        write("orders.csv", HEADER + PILOTS.replace("28 m", "29.6 m") + BOARD);
        assertTrue(orders().contains("Changed after cutting"), orders());
    }

    @Test
    void otherEnd_isTold() throws IOException {
        write("orders.csv", HEADER + PILOTS.replace("sealed,sealed", "sealed,plain") + BOARD);
        assertTrue(orders().contains("ordered 28 m, sealed / sealed when it was cut, 28 m, sealed / plain now"));
    }

    /** The ledger keeps what was asked of the rope and how the length is measured: a change of either is told. */
    @Test
    void otherCertificateOwnRopeOrMeasuring_isTold() throws IOException {
        write("orders.csv", HEADER + PILOTS.replace(",3.1", ",works") + BOARD);
        String told = flat(orders());
        assertTrue(told.contains("ordered with a certificate (works) now, which its rope does not carry;"), told);
        assertTrue(flat(run(0, "check", "" + shop).out()).contains("ordered with a certificate (works) now"));
        assertTrue(orders("--json").contains("\"what\": \"certificate\""));
        assertTrue(run(3, "orders", "deliver", "" + shop, "5119", "--unpassed")
                .err()
                .contains("is not what is ordered now"));
        run(0, "orders", "keep", "" + shop, "5119/1.1", "--note", "they take 3.1");
        assertFalse(orders().contains("Changed after cutting"), orders());
        write("orders.csv", HEADER + PILOTS.replace(",3.1", ",") + BOARD.replace(",\n", ",3.1\n"));
        assertFalse(orders().contains("Changed after cutting"), "its rope carries 3.1: " + orders());
        String header = HEADER.replace("certificate", "certificate,own rope,measured");
        write("orders.csv", header + PILOTS.replace("\n", ",yes,\n") + BOARD.replace("\n", ",,outside\n"));
        told = flat(orders());
        assertTrue(told.contains("ordered in the customer's own rope now, and cut from other rope;"), told);
        assertTrue(
                told.contains("ordered 6 m, sealed / sealed, measured pin to pin when it was cut, 6 m, sealed / sealed,"
                        + " measured outside now; it takes 6.000 m and is cut at 6.000 m, long enough;"),
                told);
    }

    /** In a ledger of before, what was asked then is not known: no change of it is made up. */
    @Test
    void otherCertificate_whereNoneWasKept_isNotMadeUp() throws Exception {
        sql("DROP TRIGGER ordered_is_not_changed; UPDATE ordered SET certificate = '', measured = ''");
        write("orders.csv", HEADER + PILOTS.replace(",3.1", ",works") + BOARD);
        assertFalse(orders().contains("Changed after cutting"), orders());
    }

    private void sql(String script) throws java.sql.SQLException {
        try (java.sql.Connection connection =
                        java.sql.DriverManager.getConnection("jdbc:sqlite:" + shop.resolve("stock.db"));
                java.sql.Statement statement = connection.createStatement()) {
            statement.executeUpdate(script);
        }
    }

    @Test
    void cancelledLineAndSmallerQuantity_leaveSparePieces() throws IOException {
        write("orders.csv", HEADER + BOARD.replace("sealed,2", "sealed,1"));
        String page = orders();
        assertTrue(page.contains("5119/1.1 (Port Pilots): its line is cancelled; 28.000 m of DB16, lot L1;"), page);
        assertTrue(page.contains("5118/2.2 (Harbour Board): fewer are ordered now; 6.000 m of DB16, lot L1;"), page);
        assertTrue(page.contains("orders back"), page);
    }

    @Test
    void sparePiece_isOfferedToALineThatItFits_andGivenToIt() throws IOException {
        String later =
                """
                5120,1,Hollow Quay,DB16,5.5 m,sealed,sealed,1,2026-03-09,3.1
                5121,1,Hollow Quay,DB16,6.1 m,sealed,sealed,1,2026-03-09,
                """;
        write("orders.csv", HEADER + PILOTS + BOARD.replace("sealed,2", "sealed,1") + later);
        assertTrue(orders().contains("it fits 5120/1.1, 0.500 m to cut off:"), orders());
        Run tooLong = run(3, "orders", "give", "" + shop, "5118/2.2", "5121/1.1");
        assertTrue(tooLong.err().contains("5121/1.1 takes 6.100 m; 5118/2.2 is 6.000 m"), tooLong.err());
        run(3, "orders", "give", "" + shop, "5118/2.1", "5120/1.1");
        assertTrue(run(0, "orders", "give", "" + shop, "5118/2.2", "5120/1.1")
                .out()
                .contains("cut 0.500 m off it."));
        assertTrue(account("scrap: trims, flaws, samples, ends").contains("0.500 m"), verified());
        assertTrue(account("in good pieces").contains("39.500 m"), verified());
        String plan = plan(0).out();
        assertFalse(plan.contains("5120/1.1"), plan);
        assertTrue(plan.contains("5121/1.1"), plan);
        assertFalse(orders().contains("5118/2.2"), orders());
        assertTrue(run(0, "stock", "trace", "" + shop, "5120/1.1").out().contains("given"));
        run(0, "stock", "verify", "" + shop);
    }

    /** What is cut off a spare piece is rope of its own: a coil when it is worth keeping. It all goes back with undo. */
    @Test
    void longSparePiece_leavesACoil_andRopeIsConserved() throws IOException {
        write("orders.csv", HEADER + BOARD + "5120,1,Hollow Quay,DB16,5.5 m,sealed,sealed,1,2026-03-09,3.1\n");
        String before = verified();
        Run given = run(0, "orders", "give", "" + shop, "5119/1.1", "5120/1.1");
        assertTrue(flat(given.out()).contains("cut 22.500 m off it. what is cut off is coil R1-1, "), given.out());
        assertTrue(account("in good pieces").contains("17.500 m"), verified());
        assertTrue(account("in spare pieces").contains(" 0.000 m"), verified());
        run(0, "stock", "undo", "" + shop, given.out().replaceAll("(?s).*Event (\\d+)\\.\\s*", "$1"));
        assertEquals(balance(before), balance(verified()));
        assertTrue(orders().contains("5119/1.1 (Port Pilots): its line is cancelled"), orders());
    }

    /** What was ordered is made again, and that one, too, becomes spare: two spare pieces of one id are told apart. */
    @Test
    void pieceMadeAgain_isNotItsSparePiece() {
        run(0, "stock", "receive", "" + shop, "R2", "DB16", "100 m", "--lot", "L2");
        run(0, "orders", "spare", "" + shop, "5118/2.1");
        run(0, "stock", "cut", "" + shop, "R2", "6.02 m", "--piece", "5118/2.1");
        verified();
        Run again = run(0, "orders", "spare", "" + shop, "5118/2.1");
        String second = again.out().replaceAll("(?s).*is spare piece '([^']*)' now.*", "$1");
        String told = flat(orders());
        assertTrue(told.matches(".*5118/2\\.1 spare \\d+ \\(Harbour Board\\): 6\\.000 m of DB16, lot L1.*"), told);
        assertTrue(told.contains(second + " (Harbour Board): 6.020 m of DB16, lot L2"), told);
        run(0, "orders", "give", "" + shop, second, "5118/2.1");
        run(0, "orders", "back", "" + shop, "5118/2.1");
        verified();
        String list = run(0, "stock", "list", "" + shop, "--json").out();
        assertTrue(list.substring(list.indexOf("\"R1-1\"")).contains("\"6000 mm\""), list);
    }

    /** A piece that was cut short is a spare piece of a name of its own, and as good as any other. */
    @Test
    void pieceCutShort_isGivenToAShorterLine_andTheLedgerIsSound() throws IOException {
        write("orders.csv", HEADER + PILOTS + BOARD + "5120,1,Hollow Quay,DB16,12 m,sealed,sealed,1,2026-03-09,\n");
        plan(0);
        run(0, "stock", "post", "" + shop, "--all", "--measured", "5120/1.1=11.2 m", "--sure");
        write("orders.csv", HEADER + PILOTS + BOARD + "5121,1,Hollow Quay,DB16,11 m,sealed,sealed,1,2026-03-09,\n");
        String short1 = orders().replaceAll("(?s).*(5120/1\\.1 short \\d+).*", "$1");
        run(0, "orders", "give", "" + shop, short1, "5121/1.1");
        verified();
    }

    /** One spare piece, two lines that want it, two people; then two spare pieces for one line. */
    @Test
    void sparePiece_isGivenOnce_whoeverGivesItAtTheSameTime() throws Exception {
        String later =
                """
                5120,1,Hollow Quay,DB16,5.5 m,sealed,sealed,1,2026-03-09,
                5121,1,Hollow Quay,DB16,5.4 m,sealed,sealed,1,2026-03-09,
                """;
        write("orders.csv", HEADER + PILOTS + later);
        List<String> give = List.of("orders", "give", "" + shop);
        assertEquals(
                List.of(0, 3),
                AtOnce.codes(
                        AtOnce.run(List.of(with(give, "5118/2.1", "5120/1.1"), with(give, "5118/2.1", "5121/1.1")))));
        verified();
        String open = plan(0).out().contains("5120/1.1") ? "5120/1.1" : "5121/1.1";
        run(0, "stock", "cut", "" + shop, "R1", "5.6 m", "--piece", open);
        run(0, "orders", "spare", "" + shop, open);
        assertEquals(
                List.of(0, 3), AtOnce.codes(AtOnce.run(List.of(with(give, "5118/2.2", open), with(give, open, open)))));
        verified();
    }

    /** As ledgers of before allowed: the spoiling is taken back though the piece was cut again off another reel. */
    @Test
    void pieceThatCameBackAfterItWasCutAgain_isASparePiece() {
        run(0, "stock", "receive", "" + shop, "R2", "DB16", "100 m", "--lot", "L2");
        run(0, "stock", "spoil", "" + shop, "5118/2.1");
        run(0, "stock", "cut", "" + shop, "R2", "6 m", "--piece", "5118/2.1");
        String good = account("in good pieces");
        takeBackAsBefore(Movement.Kind.SPOILED);
        assertEquals(good, account("in good pieces"));
        assertTrue(account("in spare pieces").contains(" 6.000 m"), verified());
        String told = flat(orders());
        assertTrue(told.matches(".*5118/2\\.1 spare \\d+ \\(Harbour Board\\): 6\\.000 m of DB16, lot L1.*"), told);
        run(0, "orders", "back", "" + shop, "5118/2.1");
        assertTrue(account("in spare pieces").contains(" 0.000 m"), verified());
        assertEquals(good, account("in good pieces"));
    }

    private void takeBackAsBefore(Movement.Kind kind) {
        try (Ledger ledger = SqliteLedger.open(shop, Clock.systemUTC())) {
            Movement wrong = ledger.read(Ledger.Stock::movements).stream()
                    .filter(movement -> movement.entry().kind() == kind)
                    .findFirst()
                    .orElseThrow();
            Event.Act act = Event.Act.of(Event.Kind.UNDONE, "Ada", "");
            ledger.change(act.undoing(wrong.event()), books -> {
                Holding reel = books.findHolding(wrong.entry().reel()).orElseThrow();
                books.append(new Movement.Entry(
                        Movement.Kind.UNDONE,
                        reel.reel(),
                        reel.gone(),
                        "",
                        new Movement.Origin("", "", "", wrong.entry().origin().piece(), "", wrong.number()),
                        wrong.entry().piece()));
            });
        }
    }

    private static List<String> with(List<String> words, String... more) {
        List<String> all = new ArrayList<>(words);
        all.addAll(List.of(more));
        return all;
    }

    /** What was found out of its reel since holds for a spare piece: a hold, and the lot as it was corrected. */
    @Test
    void sparePiece_isJudgedByItsReelAsItIsToday() throws IOException {
        write("orders.csv", HEADER + PILOTS + "5120,1,Hollow Quay,DB16,5.5 m,sealed,sealed,1,2026-03-09,\n");
        run(0, "stock", "correct", "" + shop, "R1", "--lot", "L7");
        assertTrue(orders().contains("6.000 m of DB16, lot L7; it fits 5120/1.1"), orders());
        run(0, "stock", "hold", "" + shop, "R1", "--note", "recalled by its maker");
        assertFalse(orders().contains("it fits"), orders());
        assertTrue(run(3, "orders", "give", "" + shop, "5118/2.1", "5120/1.1")
                .err()
                .contains("R1 is on hold"));
        run(0, "stock", "release", "" + shop, "R1");
        run(0, "orders", "give", "" + shop, "5118/2.1", "5120/1.1");
    }

    /** As with stock: another booking under an id that is given would be told as done, and never be booked. */
    @Test
    void anotherBookingUnderAnIdThatIsGiven_isRefused() {
        run(0, "orders", "spare", "" + shop, "5118/2.1", "--once", "tick 1");
        run(0, "orders", "spare", "" + shop, "5118/2.1", "--once", "tick 1");
        Run other = run(3, "orders", "spare", "" + shop, "5118/2.2", "--once", "tick 1");
        assertTrue(other.err().contains("the id tick 1 was given to event"), other.err());
        run(3, "orders", "back", "" + shop, "5118/2.1", "--once", "tick 1");
        run(0, "orders", "back", "" + shop, "5118/2.1", "--once", "tick 2");
        assertFalse(orders().contains("5118/2.2 spare"), orders());
    }

    private String verified() {
        return run(0, "stock", "verify", "" + shop).out();
    }

    private String account(String words) {
        return verified()
                .lines()
                .filter(line -> line.contains(words))
                .findFirst()
                .orElse("");
    }

    private static List<String> balance(String verified) {
        return verified.lines().filter(line -> line.endsWith(" m")).toList();
    }

    @Test
    void sparePiece_isRefusedWhereThePapersDoNotDo() throws IOException {
        String later = "5120,1,Hollow Quay,DB16,5.5 m,sealed,sealed,1,2026-03-09,works\n";
        write("orders.csv", HEADER + PILOTS + BOARD.replace("sealed,2", "sealed,1") + later);
        assertFalse(orders().contains("it fits"), orders());
        Run refused = run(3, "orders", "give", "" + shop, "5118/2.2", "5120/1.1");
        assertTrue(refused.err().contains("5120/1.1 needs a certificate (works); R1 carries 3.1"), refused.err());
    }

    @Test
    void sparePiece_goesBackToTheRackAsACoil_withItsLotAndPapers() throws IOException {
        write("orders.csv", HEADER + BOARD);
        run(0, "orders", "back", "" + shop, "5119/1.1", "--note", "cancelled");
        String list = run(0, "stock", "list", "" + shop, "--json").out();
        String coil = list.substring(list.indexOf("\"R1-1\""));
        assertTrue(coil.contains("\"L1\"") && coil.contains("28000 mm") && coil.contains("C-77"), list);
        assertFalse(orders().contains("Spare pieces"), orders());
        run(0, "stock", "verify", "" + shop);
        write("orders.csv", HEADER + PILOTS + BOARD);
        assertTrue(plan(0).out().contains("5119/1.1"), "the piece is open again when it is ordered again");
    }

    @Test
    void delivery_endsTheOrder_withAPackingNoteInTheCustomersWords() {
        Run early = run(3, "orders", "deliver", "" + shop, "5119");
        assertTrue(early.err().contains("piece 5119/1.1 was not recorded as passed"), early.err());
        Run longer = run(3, "measure", "" + shop, "5119/1.1", "--came-out", "28.015 m");
        assertTrue(longer.err().contains("cannot come out longer than it was cut, 28.000 m"), longer.err());
        run(0, "measure", "" + shop, "5119/1.1", "--cut", "28.02 m", "--came-out", "28.015 m", "--who", "Ada");
        assertTrue(orders("--json").contains("\"state\": \"spliced\""));
        run(0, "measure", "" + shop, "5119/1.1", "--passed");
        assertTrue(orders("--json").contains("\"state\": \"passed\""));
        Path html = shop.resolve("note.html");
        String note = run(0, "orders", "deliver", "" + shop, "5119", "--day", "2026-03-03", "--html", "" + html)
                .out();
        assertTrue(note.contains("Order 5119 for Port Pilots, delivered 2026-03-03."), note);
        assertTrue(note.contains("Line 5119/1: White braid 16 mm"), note);
        assertTrue(note.matches("(?s).*5119/1\\.1 +28\\.015 m +L1 +3\\.1 C-77 +passed.*"), note);
        assertTrue(note.contains("Nothing: the order is complete."), note);
        assertTrue(Files.exists(html));
        assertTrue(orders("--day", "2026-03-30").contains("2 orders, 1 overdue."));
        run(3, "orders", "deliver", "" + shop, "5119");
    }

    @Test
    void deliveredOrder_mayLeaveTheOrderBook() throws IOException {
        run(0, "orders", "deliver", "" + shop, "5119", "--unpassed");
        assertTrue(run(3, "orders", "spare", "" + shop, "5119/1.1").err().contains("is delivered"));
        write("orders.csv", HEADER + BOARD);
        assertFalse(orders().contains("5119"), orders());
        assertTrue(orders("--units", "imperial").contains("1 order, 0 overdue."));
    }

    @Test
    void delivery_ofWhatChangedAfterCutting_isRefused() throws IOException {
        write("orders.csv", HEADER + PILOTS.replace("28 m", "29.5 m") + BOARD);
        Run refused = run(3, "orders", "deliver", "" + shop, "5119", "--unpassed");
        assertTrue(refused.err().contains("is not what is ordered now"), refused.err());
    }

    @Test
    void partOfAnOrder_isDelivered_andTheRestIsToCome() {
        String note = run(0, "orders", "deliver", "" + shop, "5118", "--piece", "5118/2.2", "--unpassed")
                .out();
        assertTrue(note.contains("5118/2.2") && note.contains("not recorded"), note);
        assertTrue(note.contains("Still to come\n-------------\n5118/2.1"), note);
    }

    /** As it went out, at any time: the order book and the reel may have changed since. */
    @Test
    void packingNote_isPrintedAgain_andRecordsNothing() throws IOException {
        run(0, "measure", "" + shop, "5118/2.1", "--came-out", "5.99 m", "--passed");
        run(0, "measure", "" + shop, "5118/2.2", "--came-out", "5.9 m", "--accepted", "Okafor");
        String first = deliver("5118/2.1");
        String second = deliver("5118/2.2");
        assertTrue(second.matches("(?s).*5118/2\\.2 +5\\.9 m +L1 +3\\.1 C-77 +accepted by Okafor\\n.*"), second);
        write("orders.csv", HEADER + PILOTS);
        run(0, "stock", "correct", "" + shop, "R1", "--lot", "L9");
        byte[] ledger = Files.readAllBytes(shop.resolve("stock.db"));
        assertEquals(first + second, run(0, "orders", "note", "" + shop, "5118").out());
        String number = second.replaceAll("(?s).*Delivery (\\d+).*", "$1");
        assertEquals(
                second,
                run(0, "orders", "note", "" + shop, "--delivery", number).out());
        String json = run(0, "orders", "note", "" + shop, "5118", "--json").out();
        assertTrue(json.contains("\"lookedOver\": \"accepted by Okafor\""), json);
        assertTrue(json.contains("\"event\": " + number), json);
        Path html = shop.resolve("again.html");
        run(2, "orders", "note", "" + shop, "5118", "--html", "" + html);
        run(0, "orders", "note", "" + shop, "--delivery", number, "--html", "" + html);
        assertTrue(Files.readString(html).contains("accepted by Okafor"));
        String feet = run(0, "orders", "note", "" + shop, "5118", "--units", "imperial")
                .out();
        assertTrue(feet.contains("accepted by Okafor") && !feet.contains("5.900"), feet);
        assertArrayEquals(ledger, Files.readAllBytes(shop.resolve("stock.db")));
    }

    /** 19 ft 8 in are 5,994.4 mm; the customer reads what was read off the tape. */
    @Test
    void packingNote_saysWhatWasMeasuredAsItWasTyped() {
        run(0, "measure", "" + shop, "5118/2.1", "--came-out", "19 ft 8 in", "--passed");
        String note = deliver("5118/2.1");
        assertTrue(note.contains("19 ft 8 in (5.994 m)"), note);
        assertEquals(note, run(0, "orders", "note", "" + shop, "5118").out());
        String feet = run(0, "orders", "note", "" + shop, "5118", "--units", "imperial")
                .out();
        assertTrue(feet.contains(" 19 ft 8 in ") && !feet.contains("5.994"), feet);
    }

    @Test
    void packingNote_ofWhatWasNotDelivered_isRefused() {
        assertTrue(run(3, "orders", "note", "" + shop, "5118").err().contains("nothing of order 5118 was delivered"));
        assertTrue(run(3, "orders", "note", "" + shop, "--delivery", "1").err().contains("event 1 is no delivery"));
        run(2, "orders", "note", "" + shop);
        String note = deliver("5118/2.1", "--unpassed");
        String number = note.replaceAll("(?s).*Delivery (\\d+).*", "$1");
        run(0, "stock", "undo", "" + shop, number);
        run(3, "orders", "note", "" + shop, "5118");
        assertTrue(
                run(3, "orders", "note", "" + shop, "--delivery", number).err().contains("was taken back"));
    }

    private String deliver(String piece, String... more) {
        List<String> args = new ArrayList<>(List.of("orders", "deliver", "" + shop, "5118", "--piece", piece));
        args.addAll(List.of(more));
        return run(0, args.toArray(String[]::new)).out();
    }

    @Test
    void status_withoutALedger_tellsOpenAndPlanned() throws IOException {
        Files.delete(shop.resolve("stock.db"));
        assertTrue(orders().contains("2 orders, 0 overdue."), orders());
    }

    private String orders(String... more) {
        List<String> args = new ArrayList<>(List.of("orders", "" + shop));
        if (!List.of(more).contains("--day")) {
            args.addAll(List.of("--day", "2026-03-02"));
        }
        args.addAll(List.of(more));
        return run(0, args.toArray(String[]::new)).out().replaceAll("\n +", " ");
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }

    private Run plan(int code) {
        return run(code, "plan", "" + shop, "--day", "2026-03-02", "--time", "300ms")
                .withParts("" + shop);
    }

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), () -> String.join(" ", args) + "\n" + run.out() + run.err());
        return run;
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(shop.resolve(name), name.endsWith(".json") ? text.replace('\'', '"') : text);
    }
}
