package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The boxes of a splice card, booked by one command. */
final class MeasureCommandTest {
    private final Path shop;

    MeasureCommandTest(@TempDir Path folder) throws IOException {
        shop = CardShop.in(folder);
    }

    private Run measure(String piece, String cut, String cameOut, String... more) {
        List<String> args = new java.util.ArrayList<>(List.of(
                "measure",
                shop.toString(),
                piece,
                "--cut",
                cut,
                "--came-out",
                cameOut,
                "--splicer",
                "Iversen",
                "--day",
                "2026-03-04"));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private List<String> rows() throws IOException {
        Path file = shop.resolve("measured.csv");
        return Files.exists(file) ? Files.readAllLines(file) : List.of();
    }

    @Test
    void pieceThatPasses_isARowThatCalibrateReads() throws IOException {
        Run run = measure("1/3.1", "12.05 m", "10.79 m");
        assertEquals(0, run.code(), run.err());
        Golden.check("cli/measure.txt", run.out());
        assertEquals(2, rows().size());
        assertEquals(
                "1/3.1,TS16,three-strand-eye length 250 mm tucks 5,whipped,12050 mm,10790 mm,flat,,no,Iversen,"
                        + "2026-03-04,passed",
                rows().get(1));
        Run calibrate = Run.of("calibrate", shop.toString());
        assertTrue(calibrate.err().contains("at least three of a termination and rope"), calibrate.err());
    }

    @ParameterizedTest
    @CsvSource({
        // 11 m within 1 %, under a tension that stretches it by 2 %: slack 10.784 m
        "1/3.1, 10.5 m, slack",
        "1/3.1, 10.9 m, slack",
        "1/3.1, 10.8 m, tension",
        // 8 m within 25 mm, on its pin
        "1/1.2, 8.03 m, pins"
    })
    void pieceOutside_isBookedOnlyWithAWord(String piece, String cameOut, String how) throws IOException {
        Run run = measure(piece, "12.05 m", cameOut, "--how", how);
        assertEquals(2, run.code(), run.err());
        assertTrue(
                run.err().replaceAll("\\s+", " ").contains("say --accepted NAME, --respliced or --spoiled"), run.err());
        assertEquals(List.of(), rows());
        Run accepted = measure(piece, "12.05 m", cameOut, "--how", how, "--accepted", "Okafor");
        assertEquals(0, accepted.code(), accepted.err());
        assertTrue(rows().get(1).endsWith(",accepted by Okafor"), rows().toString());
        Run again = measure(piece, "12.05 m", cameOut, "--how", how, "--respliced");
        assertEquals(0, again.code(), again.err());
        assertTrue(rows().get(2).startsWith(piece + " (2),"), rows().toString());
        assertTrue(rows().get(2).endsWith(",to be respliced"), rows().toString());
    }

    @ParameterizedTest
    @CsvSource({
        "9/9.9, 5 m, slack, no order asks for piece 9/9.9",
        "1/1.1, 7.9 m, tension, names no tension",
        "1/7.1, 99 m, slack, cannot come out longer than it was cut"
    })
    void whatCannotBe_isRefused(String piece, String cameOut, String how, String why) throws IOException {
        Run run = measure(piece, "12.05 m", cameOut, "--how", how, "--accepted", "Okafor");
        assertEquals(3, run.code(), run.err());
        assertTrue(run.err().contains(why), run.err());
        assertEquals(List.of(), rows());
    }

    /** The file is the shop's: its columns, its separator and its rows stay as they are. */
    @Test
    void ownFile_keepsItsFormAndItsRows() throws IOException {
        String own = "id;rope;end a;end b;finished;cut;note;day;splicer;measured;bedded in\n"
                + "old;DB12;double-braid-eye length 300 mm;plain;7 m;8 m;\"a; b\";;;flat;no";
        Files.writeString(shop.resolve("measured.csv"), own);
        assertEquals(0, measure("1/1.1", "9.9 m", "8.02 m").code());
        String now = Files.readString(shop.resolve("measured.csv"));
        assertTrue(now.startsWith(own + "\n"), now);
        assertTrue(rows().get(2).startsWith("1/1.1;DB12;"), now);
        Run tension = measure("1/3.1", "12.05 m", "11.0 m", "--how", "tension");
        assertEquals(3, tension.code(), tension.err());
        assertTrue(tension.err().contains("measured.csv, row 1, extension"), tension.err());
        assertEquals(3, rows().size());
    }

    @Test
    void tag_carriesWhatWasMeasured() throws IOException {
        assertEquals(0, Run.of("plan", shop.toString(), "--time", "1s").code());
        measure("1/3.1", "12.05 m", "10.79 m");
        Run tags = Run.of("sheet", shop.toString(), "--tags");
        String page = Files.readString(Path.of(tags.out().strip()));
        assertTrue(page.contains("came out 10790 mm, flat, passed, spliced by Iversen, 2026-03-04"), page);
    }

    @Test
    void answer_isJsonForPrograms() {
        Run run = measure("1/1.1", "9.9 m", "8.03 m", "--json");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("\"verdict\": \"passed\""), run.out());
        assertTrue(run.out().contains("\"least\": "), run.out());
    }

    /** With a ledger the piece is spliced, and passed, each an event; a piece that is not cut is neither. */
    @Test
    void ledger_knowsWhatIsMade() throws IOException {
        assertEquals(0, Run.of("stock", "open", shop.toString()).code());
        assertEquals(0, Run.of("plan", shop.toString(), "--time", "1s").code());
        Run early = measure("1/1.1", "9.9 m", "8.02 m", "--how", "pins");
        assertEquals(3, early.code(), early.out());
        assertTrue(early.err().contains("piece 1/1.1 is not cut"), early.err());
        assertEquals(List.of(), rows());
        Run post = Run.of("stock", "post", shop.toString(), "--reel", "R1");
        assertEquals(0, post.code(), post.err());
        assertEquals(0, measure("1/1.1", "9.9 m", "8.02 m", "--how", "pins").code());
        assertEquals(
                0,
                measure("1/1.2", "9.9 m", "8.5 m", "--how", "pins", "--spoiled").code());
        assertEquals(3, rows().size());
        try (bitterend.stock.Ledger ledger = bitterend.store.SqliteLedger.openToRead(shop)) {
            assertEquals(List.of("1/1.1"), ledger.read(stock -> stock.standing(bitterend.stock.Event.Kind.PASSED)
                    .get(0)
                    .named("piece")));
            assertEquals(1, (int) ledger.read(
                    stock -> stock.standing(bitterend.stock.Event.Kind.SPOILED).size()));
            assertEquals(List.of(), ledger.verify());
        }
    }
}
