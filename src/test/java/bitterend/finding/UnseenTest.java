package bitterend.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class UnseenTest {

    /** The marks that set, embed, override and isolate a direction of writing: Unicode Standard Annex 9, section 2. */
    @ParameterizedTest
    @ValueSource(
            ints = {
                0x200E, 0x200F, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068, 0x2069, 0x1B, 0x7, 0x85,
                0x2028, 0x200B
            })
    void unseenCharacters_areShownAsTheirNumbers(int unseen) {
        String name = "[U+" + String.format(java.util.Locale.ROOT, "%04X", unseen) + "]";
        assertEquals("12 " + name + "34", Unseen.shown("12 " + Character.toString(unseen) + "34"));
        assertEquals(List.of(name), Unseen.in("a" + Character.toString(unseen) + "b" + Character.toString(unseen)));
    }

    @Test
    void everyUnseenCharacter_isNamedOnce() {
        assertEquals(List.of("[U+202E]", "[U+200F]"), Unseen.in("\u202Ea\u200Fb\u202E"));
    }

    @Test
    void ordinaryText_staysAsItIs() {
        String text = "Skerry\u00F8en, 6\u00A0\u00BD in, \u7DB1, <b>";
        assertSame(text, Unseen.shown(text));
        assertEquals("two\nlines", Unseen.shownOnPage("two\nlines"));
    }

    @ParameterizedTest
    @CsvSource({
        "R1, r1",
        "R1, \uFF32\uFF11",
        "R1, R\u00B9",
        "A1, \u04101",
        "LAID-14, LAID-14.",
        "LAID-14, ' LAID-14 '",
        "A1, \u03911",
        "A/B, A_B",
        "A B, A.B",
        "DB1O, DB10",
        "E8, E08",
        "R01, R1",
        "R 1, R1",
        "L-1O, L-10",
        "l1, I1",
        "7, \u0667"
    })
    void ids_thatArePeoplesTwins_areFound(String first, String second) {
        LookAlike met = new LookAlike();
        assertEquals("", met.before(first));
        assertEquals(first, met.before(second));
        assertEquals("", met.before(first));
    }

    @ParameterizedTest
    @CsvSource({"DB10, DB12", "G-1, G-11", "E8, E80", "R101, R11", "R-1, R1", "MA-35, MA-25"})
    void ids_thatDifferForEveryone_areNot(String first, String second) {
        LookAlike met = new LookAlike();
        met.before(first);
        assertEquals("", met.before(second));
    }
}
