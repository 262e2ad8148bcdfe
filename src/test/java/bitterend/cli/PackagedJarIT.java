package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The packaged jar as a newcomer runs it: another process, the demo lofts, nothing but a Java run time. */
final class PackagedJarIT {
    private static final Pattern COORDINATES = Pattern.compile("META-INF/maven/([^/]+)/([^/]+)/pom.properties");

    /** Licences that were read and let the jar be given away, as the bill of materials names them. */
    private static final Set<String> LICENCES = Set.of(
            "Apache-2.0",
            "MIT",
            "BSD-2-Clause",
            "BSD-3-Clause",
            "0BSD",
            "CC0-1.0",
            "SAX-PD",
            "The W3C License",
            "LGPL-2.1-or-later",
            "EPL-2.0",
            // beside EPL-2.0, which is the one that is used
            "GPL-2.0-with-classpath-exception");

    private final Path folder;

    PackagedJarIT(@TempDir Path folder) {
        this.folder = folder;
    }

    private record Outcome(int code, String out, String err) {}

    private Outcome jar(List<String> javaOptions, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java(), "-Xmx1g"));
        command.addAll(javaOptions);
        command.addAll(List.of("-jar", packaged().toString()));
        command.addAll(List.of(args));
        return run(command);
    }

    private static Path packaged() {
        return Path.of(System.getProperty("bitterend.jar", "target/bitterend.jar"));
    }

    private Outcome run(List<String> command) throws IOException, InterruptedException {
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!process.waitFor(5, TimeUnit.MINUTES)) {
            process.destroyForcibly();
        }
        return new Outcome(
                process.waitFor(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** The search is broken off once it has told of a first plan; that plan is printed whole and kept, and it is said why. */
    @Test
    void ctrlC_keepsTheBestPlanSoFar_andSaysThatItWasStopped() throws IOException, InterruptedException {
        assumeTrue(System.getProperty("os.name").equals("Linux"), "signals are sent by a shell");
        Path plan = folder.resolve("stopped.json");
        Path out = folder.resolve("stopped.txt");
        Path err = folder.resolve("stopped-err.txt");
        Process process = new ProcessBuilder(
                        "env",
                        // a build in the background hands down that Ctrl-C is ignored
                        "--default-signal=INT",
                        java(),
                        "-Xmx1g",
                        "-jar",
                        packaged().toString(),
                        "plan",
                        "demo-data/gannet-loft",
                        "--time",
                        "120s",
                        "--out",
                        plan.toString())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        try {
            for (int i = 0; i < 600 && !Files.readString(err).contains("bound"); i++) {
                Thread.sleep(100);
            }
            new ProcessBuilder("/bin/sh", "-c", "kill -INT " + process.pid())
                    .start()
                    .waitFor();
            assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it goes on");
        } finally {
            process.destroyForcibly();
        }
        String told = Files.readString(err);
        assertEquals(130, process.exitValue(), told);
        assertTrue(told.contains("stopped: this is the best plan"), told);
        assertTrue(Files.readString(out).startsWith("Cutting plan for 2026-03-02"), Files.readString(out));
        assertTrue(Files.readString(plan).startsWith("{"));
    }

    /** Through a link, from another folder, with and without its archive of classes, in a run that leaves a compiler out. */
    @Test
    void launcher_isTheSameProgram() throws IOException, InterruptedException {
        Path launcher = packaged().resolveSibling("bitterend");
        Path link = Files.createSymbolicLink(folder.resolve("bitterend"), launcher.toAbsolutePath());
        assertEquals(jar(List.of(), "--help"), run(List.of(link.toString(), "--help")));
        Outcome wrong =
                run(List.of(link.toString(), "plan", folder.resolve("no where").toString(), "--time", "1s"));
        assertEquals(jar(List.of(), "plan", folder.resolve("no where").toString(), "--time", "1s"), wrong);
        assertEquals(3, wrong.code());
        Path alone = Files.createDirectory(folder.resolve("alone"));
        Files.copy(launcher, alone.resolve("bitterend"), StandardCopyOption.COPY_ATTRIBUTES);
        Files.copy(packaged(), alone.resolve("bitterend.jar"));
        assertEquals(
                0,
                run(List.of(alone.resolve("bitterend").toString(), "--version")).code());
    }

    @ParameterizedTest
    @CsvSource({"eider-shed, 0", "gannet-loft, 4"})
    void demoLoft_isPlannedAndWritten(String loft, int code) throws IOException, InterruptedException {
        Path plan = folder.resolve("plan.json");
        Outcome outcome = jar(List.of(), "plan", "demo-data/" + loft, "--time", "2s", "--out", plan.toString());
        assertEquals(code, outcome.code(), outcome.err());
        assertTrue(outcome.out().startsWith("Cutting plan for 2026-03-02"), outcome.out());
        assertEquals(code == 4, outcome.out().contains("Not planned: "));
        assertTrue(Files.readString(plan).startsWith("{"));
    }

    @Test
    void help_namesEveryCommand() throws IOException, InterruptedException {
        Outcome outcome = jar(List.of(), "--help");
        assertEquals(0, outcome.code());
        for (String command : List.of("check", "lengths", "plan", "sheet")) {
            assertTrue(outcome.out().contains("\n  " + command), outcome.out());
        }
    }

    @Test
    void lengths_areTheSameBytesInEveryLocaleAndTimeZone() throws IOException, InterruptedException {
        String[] args = {"lengths", "demo-data/gannet-loft"};
        String plain = jar(List.of(), args).out();
        String turkish = jar(
                        List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Pacific/Auckland"), args)
                .out();
        String german = jar(List.of("-Duser.language=de", "-Duser.country=DE", "-Dfile.encoding=ISO-8859-1"), args)
                .out();
        assertTrue(plain.contains("G-2101/1"), plain);
        assertEquals(plain, turkish);
        assertEquals(plain, german);
    }

    /** Every library that the jar holds says so in its Maven coordinates; each stands in the table, its text beside it. */
    @Test
    void licences_ofEverythingInsideAreInside() throws IOException {
        String file = System.getProperty("bitterend.jar", "target/bitterend.jar");
        try (JarFile jar = new JarFile(file)) {
            assertTrue(text(jar, "META-INF/LICENSE").contains("Apache License"));
            assertTrue(text(jar, "META-INF/NOTICE").startsWith("Bitter End"));
            String table = text(jar, "META-INF/licences/README.md");
            List<String> missing = jar.stream()
                    .map(entry -> COORDINATES.matcher(entry.getName()))
                    .filter(Matcher::matches)
                    .map(found -> found.group(1) + ":" + found.group(2))
                    .filter(library -> !library.equals("bitterend:bitterend") && !table.contains("`" + library + "`"))
                    .toList();
            assertEquals(List.of(), missing);
            Matcher texts = Pattern.compile("\\]\\(([a-z0-9.-]+)\\)").matcher(table);
            while (texts.find()) {
                assertFalse(text(jar, "META-INF/licences/" + texts.group(1)).isBlank());
            }
        }
    }

    /** The bill of materials names every library that the table does and no other, each under a licence that was looked at. */
    @Test
    void billOfMaterials_hasKnownLicencesAlone() throws IOException {
        try (JarFile jar = new JarFile(packaged().toFile())) {
            assumeTrue(
                    jar.getEntry("META-INF/sbom/bitterend.cdx.json") != null, "built offline, where no bill is made");
            String table = text(jar, "META-INF/licences/README.md");
            JsonNode bill = new JsonMapper().readTree(text(jar, "META-INF/sbom/bitterend.cdx.json"));
            assertEquals("CycloneDX", bill.path("bomFormat").asText());
            List<String> unknown = new ArrayList<>();
            TreeSet<String> libraries = new TreeSet<>();
            for (JsonNode library : bill.path("components")) {
                String name = library.path("group").asText() + ":"
                        + library.path("name").asText();
                libraries.add(name);
                List<String> licences = new ArrayList<>();
                for (JsonNode each : library.path("licenses")) {
                    JsonNode licence = each.path("license");
                    licences.add(licence.path("id")
                            .asText(licence.path("name")
                                    .asText(each.path("expression").asText())));
                }
                if (licences.isEmpty() || !LICENCES.containsAll(licences)) {
                    unknown.add(name + " " + licences);
                }
            }
            assertEquals(List.of(), unknown);
            TreeSet<String> listed = Pattern.compile("(?m)^\\| `([^`]+)` \\|")
                    .matcher(table)
                    .results()
                    .map(row -> row.group(1))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertTrue(libraries.size() > 50 && listed.containsAll(libraries), () -> {
                libraries.removeAll(listed);
                return libraries.toString();
            });
        }
    }

    private static String text(JarFile jar, String name) {
        JarEntry entry = jar.getJarEntry(name);
        assertNotNull(entry, name);
        try (InputStream in = jar.getInputStream(entry)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
