package bitterend.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class PieceIdTest {
    private static final List<String> LINES =
            List.of("1", "1.1", "1.1-1", "1.1-a", "1-1", "1.1-a-1", "a", "a-1", "a.1");
    private static final List<String> PARTS = List.of("", "a", "a-a", "a1", "a-1a", "a-a-1a", "aa", "b");

    @Test
    void text_isThatOfNoOtherPiece_whateverLineAndPartAreCalled() {
        Map<String, String> seen = new HashMap<>();
        for (String line : LINES) {
            for (String part : PARTS) {
                for (int number = 1; number <= 12; number++) {
                    for (int legs = 1; legs <= 2; legs++) {
                        for (int leg = 1; leg <= legs; leg++) {
                            PieceId id =
                                    PieceId.of("A", line, number).part(part).leg(leg, legs);
                            String fields = line + " | " + number + " | " + part + " | " + leg + " of " + legs;
                            assertNull(seen.put(id.text(), fields), () -> id + " is " + fields + " as well");
                            assertTrue(PieceId.isText(id.text()), id::text);
                        }
                    }
                }
            }
        }
    }

    @Test
    void fields_areKeptApart() {
        PieceId id = PieceId.of("G-1042", "2.1", 3).part("chafe-sleeve").leg(2, 4);
        assertEquals("G-1042/2.1.3-chafe-sleeve-2", id.text());
        assertEquals("G-1042/2.1.3", id.assembly());
        assertEquals(
                List.of("G-1042", "2.1", "3", "chafe-sleeve", "2", "4"),
                List.of(id.order(), id.line(), "" + id.number(), id.part(), "" + id.leg(), "" + id.legs()));
        assertEquals(id, PieceId.of("G-1042", "2.1", 3).part("chafe-sleeve").leg(2, 2));
        assertNotEquals(id, PieceId.of("G-1042", "2.1", 3).part("chafe-sleeve").leg(1, 4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "1.2", "a/b", "a.b", "pennant-1", "a-b-12", "", "-a", " a", "a b"})
    void part_isRefused_whereItsPieceCouldBeTakenForAnother(String name) {
        assertFalse(PieceId.isPart(name));
        if (!name.isEmpty()) {
            assertThrows(IllegalArgumentException.class, () -> PieceId.of("A", "1", 1)
                    .part(name));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"pennant", "chafe-sleeve", "branch_2", "a1", "Kausch-ö", "b-2a", "(spare)"})
    void part_mayHaveAnyOtherName(String name) {
        assertEquals(!name.startsWith("("), PieceId.isPart(name));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A/1.1", "G-1042/2.1.3-chafe-sleeve-2", "100/1.2-1", "A/1.1-pennant"})
    void text_ofThePieceOfAnOrderHasItsForm(String text) {
        assertTrue(PieceId.isText(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "A/1", "A/1.", "/1.1", "A/.1", "A/1.x", "A/B/1.1", "A/1.1-", "A/1.1-a/b"})
    void text_ofAnythingElseHasNot(String text) {
        assertFalse(PieceId.isText(text));
    }

    @Test
    void order_mayHoldNoSlash() {
        assertThrows(IllegalArgumentException.class, () -> PieceId.of("A/1", "1", 1));
        assertThrows(IllegalArgumentException.class, () -> PieceId.of("A", "1/2", 1));
        assertThrows(IllegalArgumentException.class, () -> PieceId.of("A", "1", 0));
    }
}
