package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The program in a process of its own, as other machines would run it: whatever their language, time zone, characters, line ends
 * and number of processors, {@code --effort reproducible} gives the same plan to the byte, and so are page, tables and tags.
 */
final class MachinesTest {
    private static final List<String> PLAIN =
            List.of("-Duser.language=en", "-Duser.country=GB", "-Duser.timezone=UTC", "-XX:ActiveProcessorCount=2");

    @TempDir
    private static Path folder = Path.of("");

    private static Map<String, String> expected = Map.of();

    @BeforeAll
    static void plainMachine() throws IOException, InterruptedException {
        expected = day("plain", PLAIN);
        assertTrue(expected.size() > 10, expected.keySet().toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-Duser.language=tr -Duser.country=TR -Duser.timezone=Asia/Istanbul -XX:ActiveProcessorCount=1",
                "-Duser.language=ar -Duser.country=EG -Duser.timezone=Pacific/Kiritimati -XX:ActiveProcessorCount=4",
                "-Duser.language=th -Duser.country=TH -Duser.variant=TH -Duser.timezone=Pacific/Pago_Pago -XX:ActiveProcessorCount=8",
                "-Duser.language=de -Duser.country=CH -Dfile.encoding=ISO-8859-1 -Dsun.jnu.encoding=ISO-8859-1 -XX:ActiveProcessorCount=3",
                "-Duser.language=hi -Duser.country=IN -Dfile.encoding=windows-1252 -Dstdout.encoding=cp1252 -Dsun.stdout.encoding=cp1252",
                "-Duser.language=ja -Duser.country=JP -Dfile.encoding=GBK -Duser.timezone=Asia/Tokyo"
            })
    void otherMachines_makeTheSamePlan(String machine) throws IOException, InterruptedException {
        assertEquals(expected, day(Integer.toHexString(machine.hashCode()), List.of(machine.split(" "))));
    }

    /** Where lines end in two characters the terminal has them, and files are the same to the byte. */
    @Test
    void linesThatEndInTwoCharacters_areOfTheTerminalAlone() throws IOException, InterruptedException {
        Map<String, String> there = day("windows", List.of("-Dline.separator=\r\n", "-Dfile.encoding=windows-1252"));
        there.replaceAll((name, text) -> name.endsWith("out") ? text.replace("\r\n", "\n") : text);
        assertEquals(expected, there);
    }

    /** Everything that a plan, its page, its tables and its tags are, by name. */
    private static Map<String, String> day(String name, List<String> machine) throws IOException, InterruptedException {
        Path place = Files.createDirectory(folder.resolve(name));
        Path shop = DemoShop.copy("eider-shed", place);
        Map<String, String> made = new TreeMap<>();
        run(made, place, machine, "plan", "eider-shed", "--effort", "reproducible", "--html", "page.html");
        run(made, place, machine, "sheet", "eider-shed", "--tags", "--csv", "--pdf");
        for (Path where : List.of(place, shop, shop.resolve("plans"))) {
            try (Stream<Path> files = Files.list(where)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    made.put(place.relativize(file).toString().replace('\\', '/'), read(file));
                }
            }
        }
        return made;
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.ISO_8859_1);
    }

    private static void run(Map<String, String> made, Path place, List<String> machine, String... args)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto"));
        command.addAll(machine);
        command.addAll(List.of("-cp", classPath(), "bitterend.cli.Main"));
        command.addAll(List.of(args));
        Path out = Files.createTempFile("machine", ".out");
        Path err = Files.createTempFile("machine", ".err");
        Process process = new ProcessBuilder(command)
                .directory(place.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        assertTrue(process.waitFor(120, TimeUnit.SECONDS));
        String told = Files.readString(err, StandardCharsets.ISO_8859_1);
        assertTrue(process.exitValue() == 0 || process.exitValue() == 4, told);
        made.put(args[0] + " out", Files.readString(out, StandardCharsets.UTF_8));
        Files.delete(out);
        Files.delete(err);
    }

    /** Where the classes of this test come from, whoever runs it. */
    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }
}
