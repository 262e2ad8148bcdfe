package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rack counted on the page: place by place, blind, resumed, accepted as one event. */
final class CountScreenTest {
    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway")
    private Served loft = null;

    @BeforeEach
    void serve() throws IOException {
        loft = Served.withLedger("eider-shed", folder);
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private Seen count(String reel, String what, String length) {
        String movements = loft.ada().get("/count/reel?id=" + reel).field("movements");
        return loft.ada()
                .post("/count/reel", Map.of("reel", reel, "what", what, "length", length, "movements", movements));
    }

    @Test
    void counter_seesNoLengthOfTheBooksUnlessAskedFor() {
        Seen places = loft.ada().get("/count");
        assertTrue(places.text().contains("hook 1 0 of 1 counted"), places.text());
        Seen reel = loft.ada().get("/count/reel?id=E7");
        assertTrue(reel.text().contains("E7 BRAID-12"), reel.text());
        assertFalse(reel.text().contains("62"), reel.text());
        assertTrue(loft.ada().get("/count/reel?id=E7&books=yes").text().contains("The books say 62 m"));
    }

    @Test
    void walk_goesFromReelToReelAndOnAfterTheProgramWasEnded() throws IOException {
        int before = loft.events();
        Seen next = count("E7", "count", "60.5");
        assertTrue(next.text().contains("E8 LAID-14"), "the next reel of the walk: " + next.text());
        assertTrue(count("E8", "count", "lots").text().contains("found \"lots\", expected a length such as 23.4 m"));
        count("E8", "missing", "");
        loft.again();
        assertTrue(loft.ada().get("/count").text().contains("hook 1 1 of 1 counted"));
        assertTrue(loft.ada().get("/count/reel?id=E7").text().contains("Counted: 60.5 m, Ada"));
        count("E10", "empty", "");
        Seen result = count("E9", "count", "200 m");
        assertTrue(result.text().contains("What the count found"), "all are counted: " + result.text());
        assertTrue(result.text().contains("1.500"), result.text());
        assertTrue(result.text().contains("by what the rope costs to replace"), result.text());
        assertTrue(result.text().contains("E8, not found"), "set apart");
        assertEquals(before, loft.events(), "nothing is booked yet");
    }

    @Test
    void count_isAcceptedAsOneEventAndTakenBackWhole() {
        count("E7", "count", "60.5 m");
        count("E8", "count", "20 m");
        count("E10", "missing", "");
        int before = loft.events();
        String booking = loft.ada().get("/count/result").field("booking");
        Map<String, String> form = new HashMap<>(Map.of("booking", booking, "sure", "E10"));
        Seen booked = loft.ada().post("/count/result", form);
        assertEquals(200, booked.status(), booked.text());
        assertTrue(booked.text().contains("2 reels"), booked.text());
        assertEquals(before + 1, loft.events());
        assertFalse(Files.exists(loft.file(CountDraft.NAME)));
        assertTrue(loft.ada().get("/rack").text().contains("60.5 m"));
        assertTrue(loft.ada().get("/rack/reel?id=E8").text().contains("33.5 m"), "far off, and nobody said it is so");
        assertTrue(loft.ada().get("/rack/reel?id=E10").text().contains("not found in the count"));
        assertTrue(loft.ada().get("/rack/reel?id=E10").text().contains("Ada"));
        Seen back =
                loft.ada().post("/rack/reel", Map.of("about", "E7", "what", "undo", "event", booked.field("event")));
        assertEquals(200, back.status(), back.text());
        assertTrue(loft.ada().get("/rack/reel?id=E7").text().contains("length 62 m"));
        assertFalse(loft.ada().get("/rack/reel?id=E10").text().contains("to know on hold"));
    }

    @Test
    void reelThatWasBookedMeanwhile_isCountedAgain() {
        count("E7", "count", "60.5 m");
        loft.ada().post("/rack/reel", Map.of("about", "E7", "what", "count", "length", "58 m"));
        Seen result = loft.ada().get("/count/result");
        assertTrue(result.text().contains("booked since"), result.text());
        Seen refused = loft.ada().post("/count/result", Map.of("sure", "E7"));
        assertEquals(422, refused.status());
        assertTrue(refused.text().contains("nothing of the count is to be booked"), refused.text());
        assertTrue(loft.ada().get("/rack/reel?id=E7").text().contains("length 58 m"));
    }

    @Test
    void whatIsInNoBook_isWrittenDownAndReceived() {
        Seen known = loft.ada().post("/count/stranger", Map.of("what", "stranger", "reel", "E7", "length", "12 m"));
        assertTrue(known.text().contains("which is in the books"), known.text());
        loft.ada()
                .post(
                        "/count/stranger",
                        Map.of(
                                "what",
                                "stranger",
                                "reel",
                                "E99",
                                "length",
                                "12 m",
                                "rope",
                                "LAID-14",
                                "place",
                                "floor"));
        Seen result = loft.ada().get("/count/result");
        assertTrue(result.text().contains("Not in the books"), result.text());
        assertTrue(result.page().contains("/rack/receive?reel=E99"), result.page());
        assertTrue(loft.ada().get("/rack/receive?reel=E99").page().contains("value=\"E99\""));
    }

    @Test
    void count_isThrownAwayWithAWordAlone() {
        count("E7", "count", "60.5 m");
        loft.ada().post("/count/drop", Map.of());
        assertTrue(Files.exists(loft.file(CountDraft.NAME)));
        loft.ada().post("/count/drop", Map.of("sure", "yes"));
        assertFalse(Files.exists(loft.file(CountDraft.NAME)));
    }
}
