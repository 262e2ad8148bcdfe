package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

final class AnswersInFormTest {
    @Test
    void aLineOverTheEdge_isFound() {
        AnswersInForm answers = new AnswersInForm();
        answers.narrow("planted", "x".repeat(80) + "\nerror: " + "x".repeat(80));
        assertEquals(List.of(), answers.wrong());
        answers.narrow("planted", "x".repeat(81));
        assertEquals(1, answers.wrong().size());
    }

    @Test
    void wordsBesideADocument_areFound() {
        assertTrue(AnswersInForm.isOneDocument("{}\n"));
        assertFalse(AnswersInForm.isOneDocument("{} {}"));
        assertFalse(AnswersInForm.isOneDocument("written: x\n{}"));
        assertFalse(AnswersInForm.isOneDocument(""));
    }
}
