package bitterend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a visitor finds at the top of the repository, and whether the README speaks of things that exist. */
final class RepositoryTest {
    private static final Set<String> TOP =
            Set.of("README.md", "DEVELOPERS.md", "pom.xml", "src", "solver-config", "demo-data", "docs");

    private static final Pattern FILE =
            Pattern.compile("(?:demo-data|docs|solver-config|src|\\.ci)/[A-Za-z0-9_./-]*[A-Za-z0-9]");
    private static final Pattern LINK = Pattern.compile("\\]\\(([A-Za-z0-9_./-]+)(?:#[^)]*)?\\)");

    @Test
    void topLevel_holdsWhatItShouldAndNothingElse() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(""))) {
            Set<String> visible = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith(".") && !name.equals("target"))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(new TreeSet<>(TOP), visible);
        }
    }

    /** README, the developers' page and docs name no file that is not there. */
    @ParameterizedTest
    @MethodSource("pages")
    void page_namesOnlyFilesThatExist(Path page) throws IOException {
        String text = Files.readString(page);
        Set<String> missing = new TreeSet<>();
        Matcher names = FILE.matcher(text);
        while (names.find()) {
            if (!Files.exists(Path.of(names.group()))) {
                missing.add(names.group());
            }
        }
        Matcher links = LINK.matcher(text);
        while (links.find()) {
            if (!Files.exists(page.resolveSibling(links.group(1)))) {
                missing.add(links.group(1));
            }
        }
        assertEquals(Set.of(), missing);
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> docs = Files.list(Path.of("docs"))) {
            List<Path> pages =
                    new ArrayList<>(docs.filter(file -> file.toString().endsWith(".md"))
                            .sorted()
                            .toList());
            pages.addAll(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
            return pages;
        }
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
