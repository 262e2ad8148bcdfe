package bitterend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a visitor finds at the top of the repository, and whether the README speaks of things that exist. */
final class RepositoryTest {
    private static final Set<String> TOP =
            Set.of("README.md", "DEVELOPERS.md", "pom.xml", "src", "solver-config", "demo-data", "docs");

    @Test
    void topLevel_holdsWhatItShouldAndNothingElse() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(""))) {
            Set<String> visible = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith(".") && !name.equals("target"))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(new TreeSet<>(TOP), visible);
        }
    }

    @Test
    void readme_namesOnlyFilesThatExist() throws IOException {
        Matcher names = Pattern.compile("(?:demo-data|docs|solver-config|src)/[A-Za-z0-9_./-]*[A-Za-z0-9]")
                .matcher(Files.readString(Path.of("README.md")));
        Set<String> missing = new TreeSet<>();
        boolean any = false;
        while (names.find()) {
            any = true;
            if (!Files.exists(Path.of(names.group())) && !names.group().endsWith("plan.json")) {
                missing.add(names.group());
            }
        }
        assertTrue(any, "the README names no file");
        assertEquals(Set.of(), missing);
    }

    @Test
    void readme_saysFirstWhatTheToolIsFor() throws IOException {
        String[] paragraphs = Files.readString(Path.of("README.md")).split("\n\n");
        assertEquals("# Bitter End", paragraphs[0]);
        assertTrue(paragraphs[1].contains("how much rope each ordered assembly really uses"), paragraphs[1]);
        assertFalse(paragraphs[1].startsWith("#"));
    }

    @Test
    void developersPage_namesEveryPackage() throws IOException {
        String page = Files.readString(Path.of("DEVELOPERS.md"));
        try (Stream<Path> packages = Files.list(Path.of("src/main/java/bitterend"))) {
            assertEquals(
                    Set.of(),
                    packages.map(found -> found.getFileName().toString())
                            .filter(name -> !page.contains("`" + name + "`"))
                            .collect(Collectors.toSet()));
        }
    }

    /** Our licence is told where people look for it: the README's end, the build file, docs. */
    @Test
    void licence_isTheSameInReadmeBuildAndDocs() throws IOException {
        String[] lines = Files.readString(Path.of("README.md")).strip().split("\n");
        assertTrue(lines[lines.length - 1].contains("Apache License 2.0"), lines[lines.length - 1]);
        assertTrue(Files.readString(Path.of("pom.xml")).contains("<name>Apache-2.0</name>"));
        String text = Files.readString(Path.of("docs/licences/apache-2.0.txt"));
        assertTrue(text.contains("Apache License") && text.contains("Version 2.0"), "not the licence that is named");
    }
}
