package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A named pipe, a socket or a folder in place of a file is told at once: reading a pipe that nobody fills would never end. */
@DisabledOnOs(OS.WINDOWS)
final class PipesTest {
    private static final Duration SOON = Duration.ofSeconds(30);
    private final Path folder;
    private final Path shop;

    PipesTest(@TempDir Path folder) throws IOException {
        this.folder = folder;
        this.shop = DemoShop.copy("eider-shed", folder);
    }

    private static Path pipe(Path file) throws IOException, InterruptedException {
        Files.deleteIfExists(file);
        assertEquals(0, new ProcessBuilder("mkfifo", file.toString()).start().waitFor());
        return file;
    }

    private void assertTold(String name, String words) {
        Run run = assertTimeoutPreemptively(
                SOON,
                () -> Run.of(Stream.of(words.split(" "))
                        .map(word -> word.replace("SHOP", shop.toString()).replace("FOLDER", folder.toString()))
                        .toArray(String[]::new)));
        assertEquals(ExitCode.BAD_INPUT.number(), run.code(), run.err());
        assertTrue((run.out() + run.err()).contains(name), run.out() + run.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "shop.json",
                "ropes.json",
                "orders.csv",
                "orders.xlsx",
                "reels.csv",
                "pins.csv",
                "splices.json",
                "thimbles.json",
                "constructions.json",
                "codes.json",
                "assemblies.json",
                "offers.csv",
                "on-order.csv",
                "history.csv",
                "values.json"
            })
    void pipeInTheShop_isRefused(String name) throws IOException, InterruptedException {
        if (name.endsWith("xlsx")) {
            Files.delete(shop.resolve("orders.csv"));
        }
        pipe(shop.resolve(name));
        assertTold(name + ": found \"a pipe, a socket or a device\", expected a file that can be read", "check SHOP");
        assertTold(name, "plan SHOP");
        assertTold(name, "quote SHOP SHOP/orders.csv");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "quote SHOP FOLDER/pipe.csv",
                "quote SHOP FOLDER/pipe.json",
                "quote SHOP FOLDER/pipe.xlsx",
                "import SHOP FOLDER/pipe.csv",
                "import SHOP FOLDER/pipe.xlsx",
                "stock count SHOP --file FOLDER/pipe.csv",
                "stock receive SHOP --file FOLDER/pipe.csv",
                "plan SHOP --from FOLDER/pipe.json",
                "plan SHOP --keep FOLDER/pipe.json",
                "plan SHOP --solver-config FOLDER/pipe.xml",
                "sheet FOLDER/pipe.json --shop SHOP",
                "buy SHOP --merge FOLDER/pipe.json",
                "stock restore SHOP FOLDER/pipe.db",
                "serve SHOP --port 0 --for 1s --keystore FOLDER/pipe.p12",
                "quote compare SHOP FOLDER/pipe.json"
            })
    void pipeThatIsNamed_isRefused(String words) throws IOException, InterruptedException {
        if (words.startsWith("stock")) {
            assertEquals(0, Run.of("stock", "open", shop.toString()).code());
        }
        String name = words.replaceFirst(".*FOLDER/(\\S+).*", "$1");
        pipe(folder.resolve(name));
        assertTold(name, words);
    }

    @Test
    void pipesOfWhatWasMeasuredOrPlannedAndTheLedger_areRefused() throws IOException, InterruptedException {
        pipe(shop.resolve("measured.csv"));
        assertTold("measured.csv", "calibrate SHOP");
        assertTold("measured.csv", "measure SHOP E-31/1.1 --cut 11m --came-out 10m --passed");
        Files.delete(shop.resolve("measured.csv"));
        pipe(shop.resolve("mappings.json"));
        assertTold("mappings.json", "import SHOP SHOP/orders.csv");
        Files.delete(shop.resolve("mappings.json"));
        Files.createDirectories(shop.resolve("plans"));
        pipe(shop.resolve("plans/1.json"));
        assertTold("1.json", "show SHOP");
        pipe(shop.resolve("stock.db"));
        assertTold("stock.db", "check SHOP");
    }

    @Test
    void socketsAndFolders_areRefused() throws IOException {
        Files.delete(shop.resolve("reels.csv"));
        Files.createDirectory(shop.resolve("reels.csv"));
        assertTold("reels.csv: found \"a folder\"", "check SHOP");
        Files.delete(shop.resolve("reels.csv"));
        try (ServerSocketChannel socket = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
            socket.bind(UnixDomainSocketAddress.of(shop.resolve("reels.csv")));
            assertTold("reels.csv: found \"a pipe, a socket or a device\"", "check SHOP");
        }
    }
}
