package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.workbook.RawBook;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reels that came in, by a supplier's list: held against what was ordered, booked as one event. */
final class StockReceiveListTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void open() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(
                shop.resolve("on-order.csv"),
                "number,rope,length,quantity,expected\nB-9,BRAID-12,200 m,2,2026-03-04\nL-4,LAID-14,220 m,1,2026-03-05\n");
        run(0, "open");
    }

    private Run run(int code, String command, String... more) {
        List<String> args = new ArrayList<>(List.of("stock", command, shop.toString()));
        args.addAll(List.of(more));
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals(code, run.code(), run.out() + run.err());
        return run;
    }

    private String list(String text) throws IOException {
        return Files.writeString(folder.resolve("came.csv"), text).toString();
    }

    private void inGermany() throws IOException {
        Path settings = shop.resolve("shop.json");
        Files.writeString(
                settings,
                Files.readString(settings)
                        .replace("\"units\": \"metric\"", "\"units\": \"metric\", \"locale\": \"de-DE\""));
    }

    @Test
    void list_isHeldAgainstTheOrder_andBooksNothing() throws IOException {
        String file = list("reel,rope,length,on order\nE11,BRAID-12,198 m,B-9\nE12,LAID-14,220 m,\n");
        String before = run(0, "list").out();
        String told = run(0, "receive", "--file", file).out();
        assertTrue(told.contains("E11   BRAID-12  198.000  B-9        200.000       -2.000  -3.70 EUR"), told);
        assertTrue(told.contains("Together 2 reels, 418.000 m."), told);
        assertTrue(told.contains("B-9: 1 reel of BRAID-12, 200 m."), told);
        assertTrue(told.contains("Order L-4 of LAID-14 is still to come"), told);
        assertFalse(told.contains("Set apart"), told);
        assertEquals(before, run(0, "list").out());
        String feet = run(0, "receive", "--file", file, "--units", "imperial").out();
        assertTrue(feet.contains("-6 ft 6 3/4 in"), feet);
        assertTrue(feet.contains("649' 7 1/4\""), feet);
    }

    @Test
    void list_isAcceptedAsOneEvent_meetsItsOrder_andIsTakenBackWhole() throws IOException {
        String file = list(
                "reel,rope,length,tolerance,received\nE11,BRAID-12,198 m,1.5 %,\nE12,BRAID-12,200 m,,2026-02-27\n");
        String before = run(0, "list").out();
        Run booked = run(0, "receive", "--file", file, "--on-order", "B-9", "--accept", "--who", "Ada");
        assertTrue(booked.out().contains("Booked as event 2, 2 reels."), booked.out());
        assertTrue(booked.out().contains("| E12"), "labels for the reels: " + booked.out());
        String history = run(0, "history", "E11", "--json").out();
        assertTrue(history.contains("\"2970 mm\""), "1.5 % of 198 m is uncertain: " + history);
        assertTrue(
                run(0, "export").out().matches("(?s).*E12,BRAID-12,[^\n]*2026-02-27.*"),
                run(0, "export").out());
        Run check = Run.of("check", shop.toString());
        assertTrue(check.out().contains("on-order.csv, row 2, number"), "both came: " + check.out());
        Path third =
                Files.writeString(folder.resolve("more.csv"), "reel,rope,length,on order\nE13,BRAID-12,200 m,B-9\n");
        String more = run(0, "receive", "--file", "" + third).out();
        assertTrue(more.contains("nothing is to come of an order of reels B-9"), more);
        run(0, "verify");
        run(0, "undo", "2");
        assertEquals(before, run(0, "list").out());
        run(0, "verify");
        Run again = run(0, "receive", "--file", file, "--on-order", "B-9", "--accept");
        assertTrue(again.out().contains("Booked as event 4, 2 reels."), again.out());
    }

    @Test
    void listThatIsSentTwice_countsOnce() throws IOException {
        String file = list("reel,rope,length\nE11,LAID-14,100 m\n");
        for (int sent = 0; sent < 2; sent++) {
            Run run = run(0, "receive", "--file", file, "--accept", "--once", "van of Monday");
            assertTrue(run.out().contains("Booked as event 2, 1 reel."), run.out());
        }
        assertTrue(run(3, "receive", "--file", file, "--accept", "--once", "another")
                .err()
                .contains("nothing is to be booked"));
    }

    @Test
    void whatIsUnlikely_isSetApart_andBookedByAWord() throws IOException {
        String file = list(
                """
                reel,rope,lot,length,on order
                E11,BRAID-12,,250001 mm,B-9
                E12,BRAID-12,,250 m,B-9
                E13,LAID-14,,150 m,L-4
                E14,LAID-14,,1101 m,
                E15,LAID-14,,1100 m,
                E16,LAID-14,,10999 mm,
                E17,LAID-14,,11 m,
                E18,LAID-14,71,220 m,
                """);
        String told = run(0, "receive", "--file", file).out();
        assertTrue(told.contains("E11, row 2: far off the 200 m that were ordered."), told);
        assertTrue(told.contains("E13, row 4: far off the 220 m that were ordered."), told);
        assertTrue(told.contains("E14, row 5: far off the usual reel, 220.000 m."), told);
        assertTrue(told.contains("E16, row 7: far off the usual reel"), told);
        assertTrue(told.contains("E18, row 9: lot 71 is of BRAID-12 on reel E7."), told);
        assertTrue(told.contains("Together 3 reels, 1361.000 m"), told);
        assertTrue(run(0, "receive", "--file", file, "--accept").out().contains("event 2, 3 reels"));
        run(0, "undo", "2");
        assertTrue(run(0, "receive", "--file", file, "--accept", "--sure").out().contains("event 4, 8 reels"));
    }

    @Test
    void whatCannotBe_isNeverBooked() throws IOException {
        String file = list(
                """
                reel,rope,length,on order,lead trim
                E7,BRAID-12,200 m,,
                E11,BRAID-21,200 m,,
                E12,BRAID-12,200 m,,
                E12,BRAID-12,210 m,,
                E13,LAID-14,200 m,B-9,
                E14,LAID-14,220 m,L-4,
                E15,LAID-14,220 m,L-4,
                E16,LAID-14,220 m,X-1,
                E17,LAID-14,20 m,,20 m
                """);
        Run told = run(0, "receive", "--file", file, "--accept", "--sure");
        String out = told.out().replaceAll("\\s+", " ");
        for (String why : List.of(
                "E7, row 2: there is a reel E7 already (it is not booked).",
                "E11, row 3: there is no rope BRAID-21 in ropes.json; did you mean BRAID-12?",
                "E12, row 4: it is in the list twice, in row 5, too",
                "E13, row 6: order B-9 is of BRAID-12, not of LAID-14",
                "E15, row 8: no more of order L-4 are to come",
                "E16, row 9: nothing is to come of an order of reels X-1; on-order.csv has B-9, L-4",
                "E17, row 10: uncertainty, lead trim and inner wraps together",
                "Booked as event 2, 1 reel.")) {
            assertTrue(out.contains(why), why + "\n" + out);
        }
        run(3, "history", "E11");
        run(0, "history", "E14");
        Run none = run(3, "receive", "--file", file, "--accept", "--sure");
        assertTrue(none.err().contains("nothing is to be booked: every reel"), none.err());
    }

    @Test
    void rowThatCannotBeRead_isToldWithItsPlace_andNothingIsBooked() throws IOException {
        String before = run(0, "list").out();
        String err = run(
                        3,
                        "receive",
                        "--accept",
                        "--file",
                        list(
                                """
                                reel,rope,length,tolerance,uncertainty,flaws
                                E11,LAID-14,plenty,,,
                                E12,LAID-14,100 m,2,1 m,
                                E13,LAID-14,100 m,,,110 m: join
                                E14,LAID-14,100 m,,,
                                """))
                .err();
        assertTrue(err.contains("came.csv, row 2, length: found \"plenty\""), err);
        assertTrue(err.contains("came.csv, row 3, tolerance: found \"2\""), err);
        assertTrue(err.contains("came.csv, row 4, flaws"), err);
        assertEquals(before, run(0, "list").out());
    }

    @Test
    void list_isReadByThePlaceOfTheShop_inOlderLettersAndAsAWorkbook() throws IOException {
        inGermany();
        Path file = folder.resolve("came.csv");
        Files.write(
                file,
                """
                        Lieferung 4711
                        reel;rope;length (m);use by;note
                        E11;BRAID-12;198,5;31.12.2027;K\u00f6ln
                        """
                        .getBytes(Charset.forName("windows-1252")));
        String told = run(0, "receive", "--file", "" + file).out();
        assertTrue(told.contains("198.500"), told);
        Path book = RawBook.of(
                        "Came",
                        RawBook.row(1, "reel", "rope", "length (m)", "use by", "note")
                                + RawBook.row(2, "E11", "BRAID-12", "198,5", "31.12.2027", "K\u00f6ln"))
                .write(folder.resolve("came.xlsx"));
        assertEquals(told, run(0, "receive", "--file", "" + book).out());
        run(0, "receive", "--file", "" + book, "--accept");
        assertTrue(
                run(0, "export").out().contains("2027-12-31"), run(0, "export").out());
    }

    @Test
    void oneReelAndAList_contradictEachOther() throws IOException {
        String file = list("reel,rope,length\nE11,LAID-14,100 m\n");
        for (String[] both : new String[][] {{"E11", "LAID-14", "100 m", "--file", file}, {"E11", "--file", file}}) {
            String err = run(2, "receive", both).err();
            assertTrue(err.contains("a REEL, its ROPE and its LENGTH, or --file FILE with a list"), err);
        }
        assertTrue(run(2, "receive", "E11").err().contains("name the rope and the length: bitterend stock receive"));
        assertTrue(run(2, "receive", "--file", file, "--lot", "7").err().contains("a list says it in its rows"));
        assertTrue(
                run(2, "receive", "E11", "LAID-14", "100 m", "--accept").err().contains("add --file"));
    }

    @Test
    void answer_isOneDocumentForPrograms() throws IOException {
        String file = list("reel,rope,length,on order\nE11,BRAID-12,198 m,B-9\nE9,BRAID-12,200 m,\n");
        String json = run(0, "receive", "--file", file, "--accept", "--json").out();
        assertTrue(json.contains("\"format\": \"bitterend/receipt/1\""), json);
        assertTrue(json.contains("\"event\": 2"), json);
        assertTrue(json.contains("\"difference\": \"-2000 mm\""), json);
        assertTrue(json.contains("\"there is a reel E9 already\""), json);
    }

    /** Of rows as they come, what is booked is what was written: to the millimetre, in metres and in feet. */
    @Test
    void lengthsBooked_areTheLengthsOfTheRows() throws IOException {
        Random random = new Random(20_260_302);
        for (int trial = 0; trial < 5; trial++) {
            int reels = 1 + random.nextInt(20);
            long sum = 0;
            StringBuilder rows = new StringBuilder("reel,rope,length\n");
            for (int i = 0; i < reels; i++) {
                boolean feet = random.nextBoolean();
                int whole = feet ? 50 + random.nextInt(3_000) : 15_000 + random.nextInt(900_000);
                sum += feet ? whole * 3048L / 10 : whole;
                rows.append("T" + trial + "-" + i + ",LAID-14," + whole + (feet ? " ft" : " mm") + "\n");
            }
            String file = list(rows.toString());
            String json =
                    run(0, "receive", "--file", file, "--accept", "--json").out();
            assertTrue(json.contains("\"length\": \"" + sum + " mm\""), trial + ": " + sum + json);
            long booked = 0;
            for (String line : run(0, "export").out().lines().toList()) {
                String[] cells = line.split(",", -1);
                if (cells[0].startsWith("T" + trial + "-")) {
                    booked += cells[2].endsWith(" ft")
                            ? Long.parseLong(cells[2].replace(" ft", "")) * 3048 / 10
                            : Long.parseLong(cells[2].replace(" mm", ""));
                }
            }
            assertEquals(sum, booked, "trial " + trial);
        }
        run(0, "verify");
    }

    /** What the demo has for it: three reels as they should be, one of ten usual reels. */
    @Test
    void demo_isAListThatCanBeBooked() throws IOException {
        shop = DemoShop.copy("gannet-loft", folder);
        run(0, "open");
        String file = shop.resolve("came-in.csv").toString();
        String told = run(0, "receive", "--file", file, "--accept").out();
        assertTrue(told.contains("0443, row 5: far off the usual reel, 220.000 m."), told);
        assertTrue(told.contains("Booked as event 2, 3 reels."), told);
        run(0, "verify");
    }
}
