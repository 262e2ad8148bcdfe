package bitterend.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class NearestTest {
    @Test
    void distance_countsLettersToChange() {
        // The usual example of Levenshtein's distance: k>s, e>i, +g.
        assertEquals(3, Nearest.distance("kitten", "sitting"));
        assertEquals(4, Nearest.distance("", "rope"));
    }

    @Test
    void hint_namesTheNearestWord() {
        List<String> known = List.of("three-strand-eye", "double-braid-eye", "sealed");
        assertEquals("; did you mean three-strand-eye?", Nearest.hint("3-strand-eye", known));
        assertEquals("; did you mean sealed?", Nearest.hint("seald", known));
    }

    @Test
    void farWords_areNotSuggested() {
        assertEquals("", Nearest.hint("grommet", List.of("sealed")));
        assertEquals(Optional.empty(), Nearest.of("x", List.of()));
    }
}
