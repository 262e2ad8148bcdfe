package bitterend.report.sheet;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import org.junit.jupiter.api.Test;

/** What is wider than a narrow screen scrolls in its own box, with a shadow at the side where more is, on every page. */
final class NarrowPageTest {
    private static final String SCROLLS = ".scroll, .picture { overflow-x: auto; }";

    @Test
    void pageOfItsOwn_andPartOfAnother_scrollAlike() {
        Writing page = new Writing();
        TableRows table = new TableRows(Column.words("reel"), Column.figure("pieces\non no reel"));
        table.row("E7", "2");
        page.table(table);
        String html = new DocumentPaper().html(page.document());
        for (String style : new String[] {html, PagePart.css()}) {
            assertTrue(style.contains(SCROLLS), "wide tables and pictures");
            assertTrue(style.indexOf("no-repeat local") > style.indexOf(SCROLLS), "the shadow");
            assertFalse(style.contains("overflow: visible"), "no later rule takes it back");
            assertTrue(style.contains(".list th.figure, .list .words { white-space: pre-line; }"), "titles in lines");
        }
        assertTrue(html.contains("<div class=\"scroll\" tabindex=\"0\">"), html);
    }
}
