package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A browser is opened only where that is asked for. */
final class OpenedBrowserTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void everySystem_hasItsCommand() {
        String url = "http://127.0.0.1:7411/";
        assertEquals(List.of("open", url), OpenedBrowser.command("Mac OS X", url));
        assertEquals(List.of("xdg-open", url), OpenedBrowser.command("Linux", url));
        assertEquals("rundll32", OpenedBrowser.command("Windows 11", url).get(0));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void browser_isOpenedAtThePage_onlyWhenAsked() throws Exception {
        Path opened = folder.resolve("opened");
        Path bin = Files.createDirectory(folder.resolve("bin"));
        Path command = bin.resolve("xdg-open");
        Files.writeString(command, "#!/bin/sh\necho \"$1\" > " + opened + "\n");
        assertTrue(command.toFile().setExecutable(true));
        String page = served(bin);
        assertFalse(Files.exists(opened), page);
        page = served(bin, "--open");
        for (int i = 0; i < 50 && !Files.exists(opened); i++) {
            Thread.sleep(100);
        }
        String url = Files.readString(opened).strip();
        assertTrue(url.startsWith("http://127.0.0.1:") && page.contains(url), page + url);
        assertTrue(served(folder, "--open").contains("type the address into one"), "no command");
    }

    private String served(Path path, String... more) throws IOException, InterruptedException {
        Path shop = Files.exists(folder.resolve("eider-shed"))
                ? folder.resolve("eider-shed")
                : DemoShop.copy("eider-shed", folder);
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                "bitterend.cli.Main",
                "serve",
                "" + shop,
                "--port",
                "0",
                "--for",
                "1s"));
        line.addAll(List.of(more));
        ProcessBuilder process = new ProcessBuilder(line).redirectErrorStream(true);
        process.environment().put("PATH", path.toString());
        Path said = folder.resolve("said.txt");
        assertEquals(0, process.redirectOutput(said.toFile()).start().waitFor());
        return Files.readString(said);
    }
}
