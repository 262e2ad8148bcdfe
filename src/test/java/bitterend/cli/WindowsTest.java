package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What differs on Windows, tried without one: characters of its terminal, ends of lines, names of files, paths. */
final class WindowsTest {
    private static final Charset CP1252 = Charset.forName("windows-1252");
    /** https://learn.microsoft.com/en-us/windows/win32/fileio/naming-a-file. */
    private static final Pattern NO_NAME =
            Pattern.compile("(?i).*[<>:\"|?*\\x00-\\x1f].*|.*[ .]|(con|prn|aux|nul|com[0-9]|lpt[0-9])([.].*)?");

    private final Path folder;

    WindowsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private static String shown(Charset charset, Tape tape, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream both = new PrintStream(out, true, charset);
        Main.run(args, new Terminal(both, both, charset, Ink.PLAIN, tape));
        return out.toString(charset);
    }

    /** No word and no sign of ours is lost where the terminal knows the letters of western Europe alone. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "check SHOP",
                "lengths SHOP",
                "plan SHOP --effort reproducible --out OUT",
                "plan SHOP --effort reproducible",
                "show SHOP",
                "show SHOP tables",
                "show SHOP week",
                "show SHOP reasons",
                "show SHOP money",
                "orders SHOP",
                "calibrate SHOP",
                "buy SHOP --time 200ms",
                "plan --help",
                "stock receive --help"
            })
    void terminalOfWesternEurope_losesNothing(String command) throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        assertEquals(
                0, Run.of("plan", shop.toString(), "--effort", "reproducible").code());
        String[] args = Stream.of(command.split(" "))
                .map(word -> word.replace("SHOP", shop.toString())
                        .replace("OUT", folder.resolve("p.json").toString()))
                .toArray(String[]::new);
        String whole = shown(StandardCharsets.UTF_8, Tape.TYPED, args);
        assertEquals(letters(whole), letters(shown(CP1252, Tape.TYPED, args)));
        assertTrue(CP1252.newEncoder().canEncode(whole), () -> whole.codePoints()
                .filter(each -> !CP1252.newEncoder().canEncode(Character.toString(each)))
                .mapToObj(Integer::toHexString)
                .toList()
                .toString());
    }

    /** Plans are numbered and files are new each time: figures aside. */
    private static String letters(String text) {
        return text.replaceAll("[0-9]+", "0").replaceAll("(?m)^.*(seconds?|thousand|already).*$", "");
    }

    /** Java has said it by two names. */
    @ParameterizedTest
    @CsvSource({
        "stdout.encoding, cp1252, windows-1252",
        "sun.stdout.encoding, cp1252, windows-1252",
        "stdout.encoding, cp850, IBM850",
        "stdout.encoding, no such thing, UTF-8",
        "something, cp1252, UTF-8"
    })
    void charset_isThatOfTheTerminalAndUtf8InPipes(String property, String said, String expected) {
        Properties properties = new Properties();
        properties.setProperty(property, said);
        assertEquals(expected, Terminal.charset(true, properties).name());
        assertEquals(StandardCharsets.UTF_8, Terminal.charset(false, properties));
        assertEquals(Tape.TYPED, Terminal.tape(CP1252));
        assertEquals(Tape.DRAWN, Terminal.tape(StandardCharsets.UTF_8));
    }

    /** Lines that end as Windows ends them, and a mark in front, change no plan. */
    @Test
    void filesAsWindowsSavesThem_makeTheSamePlan() throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        String plain = plan(shop);
        try (Stream<Path> files = Files.list(shop)) {
            for (Path file : files.filter(each -> each.toString().matches(".*[.](csv|json)"))
                    .toList()) {
                Files.writeString(file, "\ufeff" + Files.readString(file).replace("\n", "\r\n"));
            }
        }
        assertEquals(plain, plan(shop));
        for (Path file : List.of(shop.resolve("orders.csv"), shop.resolve("reels.csv"))) {
            Files.write(file, Files.readString(file).replace("\ufeff", "").getBytes(CP1252));
        }
        assertEquals(plain, plan(shop));
    }

    private String plan(Path shop) throws IOException {
        Path file = folder.resolve("plan.json");
        Run run = Run.of("plan", shop.toString(), "--effort", "reproducible", "--out", file.toString());
        assertEquals(0, run.code(), run.err());
        String text = Files.readString(file);
        Files.delete(file);
        return text.replaceAll("\"[0-9a-f]{64}\"", "\"\"");
    }

    /** Whatever a day writes has a name that Windows takes, whatever ids and people are called. */
    @Test
    void namesOfFiles_areNamesThere() throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(
                shop.resolve("orders.csv"),
                Files.readString(shop.resolve("orders.csv")).replace("E-31", "CON"));
        String at = shop.toString();
        Path out = Files.createDirectory(folder.resolve("out"));
        for (List<String> command : List.of(
                List.of("plan", at, "--effort", "reproducible"),
                List.of("stock", "open", at),
                List.of("stock", "receive", at, "aux/1.", "LAID-14", "50 m", "--lot", "nul"),
                List.of("stock", "hold", at, "aux/1.", "--who", "Ann: \"A|B\" <x>?*"),
                List.of("plan", at, "--effort", "reproducible"),
                List.of("sheet", at, "--tags", "--csv", "--cards", "--pdf"),
                List.of("stock", "backup", at, out.resolve("b.db").toString()),
                List.of("stock", "restore", at, out.resolve("b.db").toString()),
                List.of("buy", at, "--from-history", "--scenarios", "20", "--weeks", "2", "--pictures", out.toString()),
                List.of("import", at, at + "/reels.csv"))) {
            Run run = Run.of(command.toArray(String[]::new));
            assertTrue(run.code() == 0 || run.code() == 4 || command.get(0).equals("import"), command + run.err());
        }
        TreeMap<String, Path> small = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.toList()) {
                String name = String.valueOf(file.getFileName());
                assertFalse(NO_NAME.matcher(name).matches(), file.toString());
                Path twin = small.put(file.toString().toLowerCase(java.util.Locale.ROOT), file);
                assertTrue(twin == null, file + " and " + twin);
            }
        }
    }
}
