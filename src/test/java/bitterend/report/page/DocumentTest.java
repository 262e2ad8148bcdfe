package bitterend.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

final class DocumentTest {
    private static Writing page() {
        Writing page = new Writing();
        page.title("Stock", "On the rack", "Eider Shed");
        return page;
    }

    private static TableRows table() {
        TableRows rows = new TableRows(Column.words("reel"), Column.figure("length\nm"));
        rows.row("E7", "62.000");
        return rows;
    }

    @Test
    void text_setsEveryBlockInItsOrder() {
        Writing page = page();
        page.paragraph("Two reels.");
        page.heading("Flaws");
        page.caution("E8 is chafed");
        page.paragraph(1, "look at it");
        page.tableApart(table());
        page.picture("<svg/>");
        page.paragraph("The end.");
        assertEquals(
                """
                Stock On the rack, Eider Shed
                Two reels.

                Flaws
                -----
                Caution: E8 is chafed
                  look at it

                      length
                reel       m
                E7    62.000

                The end.
                """,
                page.document().text(Ink.PLAIN));
    }

    @Test
    void text_neverHasTwoEmptyLinesNorOneAtItsEnds() {
        Writing page = new Writing();
        page.gap();
        page.heading("Flaws");
        page.gap();
        page.tableApart(table());
        page.heading("Rest");
        page.gap();
        String text = page.document().text(Ink.PLAIN);
        assertEquals(-1, text.indexOf("\n\n\n"), text);
        assertEquals(text.strip() + "\n", text);
    }

    /** The word of the first column is longer than its share; its figures and days are whole, too. */
    @Test
    void text_breaksATableBetweenWords() {
        TableRows rows = new TableRows(
                Column.words("reel"), Column.figure("length"), Column.words("known"), Column.words("to know"));
        rows.row(
                "E7-and-a-longer-name",
                "182.880 m",
                "metered under tension, at worst 0.800 m less",
                "certificate EN 1891 K22-0113; use by 2026-02-28; past its use-by date");
        Writing page = new Writing();
        page.table(rows);
        assertEquals(
                """
                reel                     length  known                   to know
                E7-and-a-longer-name  182.880 m  metered under tension,  certificate EN 1891
                                                 at worst 0.800 m less   K22-0113; use by
                                                                         2026-02-28; past its
                                                                         use-by date
                """,
                page.document().text(Ink.PLAIN));
    }

    @Test
    void text_breaksOnlyTheLongestWords_whereNotAllHaveRoom() {
        TableRows rows = new TableRows(Column.words("a"), Column.words("b"), Column.words("c"), Column.words("d"));
        rows.row("x".repeat(30), "y".repeat(30), "z".repeat(30), "2026-02-28");
        Writing page = new Writing();
        page.table(rows);
        List<String> lines = page.document().text(Ink.PLAIN).lines().toList();
        assertEquals(80, lines.get(1).length());
        assertEquals("2026-02-28", lines.get(1).substring(70));
    }

    @Test
    void text_marksWhatCatchesTheEyeByWordsAndByInk() {
        Writing page = page();
        page.caution("chafed");
        String plain = page.document().text(Ink.PLAIN);
        assertEquals(plain, page.document().text(Ink.TERMINAL).replaceAll("\u001B\\[[0-9]*m", ""));
        assertEquals(true, plain.contains("Caution: chafed"));
    }

    @Test
    void name_isTheTitleWhereverItIsElseTheFirstHeading() {
        Writing changed = new Writing();
        changed.heading("Changed after cutting");
        Document first = changed.document();
        assertEquals("Changed after cutting", first.name());
        assertEquals(
                "Stock On the rack, Eider Shed", first.then(page().document()).name());
        assertEquals("Rack now", first.titled("", "Rack now", "").name());
        assertEquals("", Document.EMPTY.name());
    }

    @Test
    void above_isNothingWhereNothingIsSaid() {
        Writing page = new Writing();
        page.paragraph("told");
        assertEquals("told\n\n", page.document().above(Ink.PLAIN));
        assertEquals("", Document.EMPTY.above(Ink.PLAIN));
    }

    @Test
    void table_refusesARowThatDoesNotFitItsColumns() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Block.Table(List.of(Column.words("reel")), List.of(List.of("E7", "62"))));
    }

    @Test
    void title_comesFirst() {
        Writing page = page();
        assertThrows(IllegalStateException.class, () -> page.title("again"));
    }
}
