package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import bitterend.Golden;
import bitterend.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each folder under {@code src/test/resources/bad} is the good folder with something changed; the golden file of the same
 * name holds every finding it must give.
 */
final class BadInputTest {
    @TempDir
    private Path folder = Path.of("");

    static Stream<String> cases() throws IOException {
        return SampleFolder.files(SampleFolder.BAD).stream()
                .map(folder -> folder.getFileName().toString());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyProblem_isToldWithItsPlace(String name, @TempDir Path shop) throws IOException {
        SampleFolder.lay(SampleFolder.BAD.resolve(name), shop);
        List<Path> before = SampleFolder.files(shop);
        ShopReading reading = ShopFolder.read(shop);
        Golden.check(
                "bad/" + name + ".txt",
                reading.findings().stream().map(finding -> finding + "\n").collect(Collectors.joining()));
        assertEquals(
                reading.findings().stream().noneMatch(Finding::isError),
                reading.shop().isPresent());
        assertEquals(before, SampleFolder.files(shop));
    }

    @Test
    void theGoodFolder_hasNoProblem(@TempDir Path shop) throws IOException {
        SampleFolder.copy(SampleFolder.GOOD, shop);
        assertEquals(List.of(), ShopFolder.read(shop).findings());
    }

    @Test
    void aFolderThatIsNotThere_isTold(@TempDir Path folder) {
        ShopReading reading = ShopFolder.read(folder.resolve("nowhere"));
        assertFalse(reading.shop().isPresent());
        assertEquals(1, reading.findings().size());
    }

    @Test
    void aFileThatIsAFolder_isTold() throws IOException {
        Path shop = folder;
        SampleFolder.copy(SampleFolder.GOOD, shop);
        Files.delete(shop.resolve("orders.csv"));
        Files.createDirectory(shop.resolve("orders.csv"));
        assertEquals(
                List.of("error: orders.csv: found \"a folder\", expected a file that can be read"),
                ShopFolder.read(shop).findings().stream().map(Finding::toString).toList());
    }
}
