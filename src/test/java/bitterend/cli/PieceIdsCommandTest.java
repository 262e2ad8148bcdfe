package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Legs and parts of one assembly through check, plan, pins and tags. */
final class PieceIdsCommandTest {
    @TempDir
    private Path shop;

    @BeforeEach
    void aShop() throws IOException {
        write("shop.json", "{'format': 'bitterend/shop/1', 'name': 'A loft', 'currency': 'EUR', 'labour': '45 EUR/h'}");
        write(
                "ropes.json",
                """
                {'format': 'bitterend/ropes/1', 'ropes': [
                  {'id': 'DB16', 'construction': 'double braid', 'fibre': 'polyester', 'diameter': '16 mm',
                   'price': '3 EUR/m', 'usualReel': '200 m'}]}
                """);
        write("orders.csv", "order,line,product,length,legs\nA,1,bridle,4.5 m,2\n");
        write("reels.csv", "reel,rope,length\nR1,DB16,200 m\nR2,DB16,100 m\n");
    }

    @Test
    void assemblyTag_statesItsTrueLegs_andPartsAreNoAssemblies() throws IOException {
        products("pennant", "chafe-sleeve");
        assertEquals(
                0,
                Run.of("plan", "" + shop, "--day", "2026-03-02", "--time", "300ms")
                        .code());
        Run sheet = Run.of("sheet", "" + shop, "--tags");
        assertEquals(0, sheet.code(), sheet::err);
        String tags = PageText.of(shop.resolve("tags.html"));
        assertTrue(tags.contains("2 legs: A/1.1-1, A/1.1-2"), tags);
        assertTrue(tags.contains("pennant: A/1.1-pennant"), tags);
        assertTrue(tags.contains("chafe-sleeve: A/1.1-chafe-sleeve"), tags);
        assertFalse(tags.contains("3 legs"), tags);
        assertEquals(1, tags.split("</b> assembly[< ]", -1).length - 1, "one tag for the one assembly");
    }

    /** A part that is longer is cut first; what the assembly ends in is what its legs end in. */
    @Test
    void assemblyTag_namesTheEndsOfItsLegs() throws IOException {
        products("pennant", "chafe-sleeve");
        Path file = shop.resolve("assemblies.json");
        Files.writeString(file, Files.readString(file).replace("\"2 m\"", "\"9 m\""));
        assertEquals(
                0,
                Run.of("plan", "" + shop, "--day", "2026-03-02", "--time", "300ms")
                        .code());
        assertEquals(0, Run.of("sheet", "" + shop, "--tags").code());
        String tags = PageText.of(shop.resolve("tags.html"));
        String tag = tags.substring(tags.indexOf("</b> assembly"));
        assertTrue(tag.contains("sealed, both ends") && !tag.contains("plain"), tag);
    }

    @Test
    void pin_takesThePieceOfAPart() throws IOException {
        products("pennant", "chafe-sleeve");
        write("pins.csv", "piece,reel\nA/1.1-pennant,R2\nA/1.1-2,R2\n");
        Run plan = Run.of("plan", "" + shop, "--day", "2026-03-02", "--time", "300ms")
                .withParts("" + shop);
        assertEquals(0, plan.code(), plan::err);
        String off = plan.out().substring(plan.out().indexOf("Reel R2"));
        assertTrue(off.contains("A/1.1-pennant") && off.contains("A/1.1-2"), plan::out);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "1.2", "a/b", "pennant-2"})
    void partThatCouldBeTakenForAnotherPiece_isOneLocatedError(String part) throws IOException {
        products(part, "sleeve");
        for (String command : new String[] {"check", "plan", "lengths"}) {
            Run run = Run.of(command, "" + shop);
            assertEquals(3, run.code(), run::err);
            String told = run.out() + run.err();
            assertTrue(told.contains("assemblies.json, /products/0/parts/0, part: found \"" + part + "\""), told);
            assertTrue(told.contains("1 error"), told);
        }
    }

    private void products(String first, String second) throws IOException {
        write(
                "assemblies.json",
                """
                {'format': 'bitterend/assemblies/1', 'products': [
                  {'id': 'bridle', 'line': {'rope': 'DB16', 'end a': 'sealed', 'end b': 'sealed'},
                   'parts': [{'part': '%s', 'rope': 'DB16', 'length': '2 m'},
                             {'part': '%s', 'rope': 'DB16', 'length': '600 mm'}]}]}
                """
                        .formatted(first, second));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(shop.resolve(name), name.endsWith(".json") ? text.replace('\'', '"') : text);
    }
}
