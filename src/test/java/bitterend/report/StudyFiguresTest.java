package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.buying.steady.Figure;
import org.junit.jupiter.api.Test;

final class StudyFiguresTest {
    @Test
    void endsBelowNothing_areSetOffByWords() {
        assertEquals("-4\nfrom -5\nto -3", StudyFigures.withEnds(new Figure(-4, -5, -3, true), Long::toString));
        assertEquals("1\nfrom -1\nto 2", StudyFigures.withEnds(new Figure(1, -1, 2, true), Long::toString));
        assertEquals("4\n3\n- 5", StudyFigures.withEnds(new Figure(4, 3, 5, true), Long::toString));
        assertEquals("-4\n?", StudyFigures.withEnds(new Figure(-4, -4, -4, false), Long::toString));
    }
}
