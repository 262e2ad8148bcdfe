package bitterend.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** One run of the browser that the system property {@code browser} names, without a window and without a network. */
final class Chromium {
    private Chromium() {}

    /** What it prints; its profile lies in the folder. */
    static String run(Path folder, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                System.getProperty("browser"),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + Files.createTempDirectory(folder, "profile")));
        command.addAll(List.of(arguments));
        Path out = Files.createTempFile(folder, "browser", ".out");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(2, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IllegalStateException("the browser did not end: " + command);
        }
        return Files.readString(out, StandardCharsets.UTF_8);
    }
}
