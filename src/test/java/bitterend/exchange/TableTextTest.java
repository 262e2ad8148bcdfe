package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** A table is written again to the byte, but for what is changed. */
final class TableTextTest {
    private static final String TEXT = "order;line;note\r\n1;1;\"a;b\"\"c\"\r\n;;\r\n\r\n2;1;two\nlines\r\n";

    @Test
    void rowsAndCells_areReadAsASpreadsheetReadsThem() {
        TableText table = TableText.of("order,line,note\n1,1,\"a,\"\"b\"\"\nc\"\n2,1,");
        assertEquals(List.of("order", "line", "note"), table.header());
        assertEquals(List.of("1", "1", "a,\"b\"\nc"), table.cells(1));
        assertEquals(List.of("2", "1", ""), table.cells(2));
    }

    /** Feet and inches have a quote in them. */
    @Test
    void quoteInsideACell_isALetter() {
        TableText table = TableText.of("order,length,note\n1,41'6\",a\n2,7'0\",\"b, 3\"\"\"\n");
        assertEquals(3, table.rows().size());
        assertEquals(List.of("1", "41'6\"", "a"), table.cells(1));
        assertEquals(List.of("2", "7'0\"", "b, 3\""), table.cells(2));
        assertEquals("1,42'0\",a\n", table.with(1, Map.of(1, "42'0\"")).rows().get(1));
    }

    @Test
    void whatIsChanged_isOtherAndNothingElse() {
        TableText table = TableText.of(TEXT);
        assertEquals(TEXT, table.text());
        assertEquals(
                TEXT.replace("2;1;two", "2;\"1;2\";two"),
                table.with(4, Map.of(1, "1;2")).text());
        assertEquals(TEXT + "3;1;\r\n", table.plus(List.of("3", "1", "")).text());
        assertEquals("a,b\n1,2\n", TableText.of("a,b").plus(List.of("1", "2")).text());
    }

    @Provide
    Arbitrary<String> files() {
        return Arbitraries.strings().withChars("ab1,;\t\"\r\n ").ofMaxLength(60);
    }

    /** Whatever somebody's file looks like. */
    @Property(tries = 1_000)
    void anyFile_isWrittenAgainToTheByte(@ForAll("files") String text) {
        assertEquals(text, TableText.of(text).text());
    }

    @Property(tries = 1_000)
    void cellThatIsWritten_isReadAgain(@ForAll("files") String cell, @ForAll("files") String other) {
        TableText table = TableText.of("x,y\n").plus(List.of(cell, other));
        assertEquals(List.of(cell, other), table.cells(1));
    }
}
