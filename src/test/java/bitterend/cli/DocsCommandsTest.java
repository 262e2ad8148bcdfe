package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every command that README and docs show is run, in the order of its page, on copies of the demo lofts; what a page
 * shows below a command is what the command prints. Where it stands beside a study the number of scenarios is cut down.
 */
final class DocsCommandsTest {
    private final Path folder;

    DocsCommandsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    /** Lines as they are printed, in their order; {@code ...} stands for lines that are left out. */
    @Test
    void readme_showsWhatItsCommandsPrint() throws IOException {
        copyLofts();
        List<String> printed = List.of();
        int shown = 0;
        for (DocsPage.Block block : DocsPage.read(Path.of("README.md")).blocks()) {
            List<String> sample = block.lines();
            for (DocsPage.Step step : block.steps()) {
                printed = said(step).lines().toList();
                sample = step.shown();
            }
            if (block.lines().stream().noneMatch(line -> line.startsWith("mvn "))) {
                follows(sample, printed);
                shown += sample.size();
            }
        }
        assertTrue(shown > 50, "the README shows only " + shown + " lines");
    }

    private static void follows(List<String> sample, List<String> printed) {
        int at = 0;
        for (String line : sample) {
            if (!line.isBlank() && !line.equals("...")) {
                int found = printed.subList(at, printed.size()).indexOf(line);
                assertTrue(found >= 0, () -> "not printed: " + line + "\n" + String.join("\n", printed));
                at += found + 1;
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"buying", "first-hour", "file-formats", "orders", "quoting", "serve", "stock"})
    void page_saysWhatItsCommandsSay(String page) throws IOException, InterruptedException {
        copyLofts();
        int commands = 0;
        for (DocsPage.Block block : DocsPage.read(Path.of("docs", page + ".md")).blocks()) {
            if (block.forShell()) {
                runByShell(block);
                commands++;
                continue;
            }
            for (DocsPage.Step step : block.steps()) {
                String said = flat(said(step)).replace(folder + "/", "");
                for (String line : paragraphs(step.shown())) {
                    assertTrue(said.contains(flat(line)), () -> step.command() + "\n" + line + "\n" + said);
                }
                commands++;
            }
        }
        assertTrue(commands >= 1 || page.equals("file-formats"), "no command on this page");
    }

    /** Pages whose blocks are formulas and pictures show no command that nobody runs. */
    @ParameterizedTest
    @ValueSource(strings = {"bibliography", "glossary", "how-a-length-is-made", "how-packing-works", "rules"})
    void otherPages_showNoCommand(String page) throws IOException {
        for (DocsPage.Block block : DocsPage.read(Path.of("docs", page + ".md")).blocks()) {
            assertEquals(List.of(), block.steps());
        }
    }

    private void copyLofts() throws IOException {
        Path lofts = Files.createDirectory(folder.resolve("demo-data"));
        DemoShop.copy("eider-shed", lofts);
        DemoShop.copy("gannet-loft", lofts);
        Files.copy(Path.of("demo-data/whimbrel.xlsx"), lofts.resolve("whimbrel.xlsx"));
    }

    /** What a command prints; one that is refused must say so on the page. */
    private String said(DocsPage.Step step) throws IOException {
        List<String> words = new ArrayList<>(step.words());
        words.replaceAll(this::here);
        if (words.get(0).equals("sed")) {
            edit(words.get(2), Path.of(words.get(3)));
            return "";
        }
        if (words.get(0).equals("plan") && !words.contains("--effort")) {
            words.addAll(List.of("--time", "1s"));
        }
        if (words.get(0).equals("serve")) {
            words.addAll(List.of("--port", "0", "--for", "1ms"));
        }
        if (words.contains("--from-history")) {
            words.addAll(List.of("--scenarios", "4"));
        }
        Run run = Run.of(words.toArray(String[]::new));
        boolean refused = run.code() == 3 && !step.shown().isEmpty();
        assertTrue(run.code() == 0 || run.code() == 4 || refused, () -> step.command() + "\n" + run.err());
        return refused ? run.err() : run.out();
    }

    /** Files of the demo are those of the copies, files to write lie beside them. */
    private String here(String word) {
        boolean written =
                word.startsWith("demo-data/") || word.equals("my-shop") || word.matches("[a-z]+\\.(db|html|json|pdf)");
        return written ? folder.resolve(word).toString() : word;
    }

    /** The two forms of sed that the pages use. */
    private static void edit(String script, Path file) throws IOException {
        String text = Files.readString(file);
        if (script.startsWith("$ a ")) {
            Files.writeString(file, text + script.substring(4) + "\n");
            return;
        }
        String[] parts = script.split("/");
        String changed = text.replace(parts[1], parts[2]);
        assertTrue(!changed.equals(text), script);
        Files.writeString(file, changed);
    }

    /** A block that only a shell understands is given to one, with a {@code bitterend} on its path. */
    private void runByShell(DocsPage.Block block) throws IOException, InterruptedException {
        Path launcher = Files.createDirectories(folder.resolve("bin")).resolve("bitterend");
        Files.writeString(
                launcher,
                "#!/bin/sh\nexec \"" + Path.of(System.getProperty("java.home"), "bin", "java")
                        + "\" -XX:TieredStopAtLevel=1 -cp \"" + ownClasses() + "\" bitterend.cli.Main \"$@\"\n");
        assertTrue(launcher.toFile().setExecutable(true));
        String script = "set -e\n"
                + String.join("\n", block.lines()).replaceAll("--scenarios \\d+", "--rope TS14 --scenarios 4");
        ProcessBuilder shell = new ProcessBuilder("sh", "-c", script)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("shell.txt").toFile());
        shell.environment().put("PATH", launcher.getParent() + ":" + System.getenv("PATH"));
        shell.environment().put("SHOP", "demo-data/gannet-loft");
        shell.environment().put("SLURM_ARRAY_TASK_ID", "2");
        shell.environment().put("SLURM_ARRAY_TASK_COUNT", "8");
        assertEquals(0, shell.start().waitFor(), Files.readString(folder.resolve("shell.txt")));
    }

    private static String ownClasses() {
        String paths = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        List<String> absolute = new ArrayList<>();
        for (String path : paths.split(":")) {
            absolute.add(Path.of(path).toAbsolutePath().toString());
        }
        return String.join(":", absolute);
    }

    /** Lines that go on in the next one are one. */
    private static List<String> paragraphs(List<String> lines) {
        List<String> whole = new ArrayList<>();
        for (String line : lines) {
            boolean goesOn = !whole.isEmpty() && whole.get(whole.size() - 1).endsWith(",");
            if (goesOn) {
                whole.set(whole.size() - 1, whole.get(whole.size() - 1) + " " + line);
            } else {
                whole.add(line);
            }
        }
        return whole;
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }
}
