package bitterend.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every ink that letters are set in stands out 4.5 to 1 from every ground there is (W3C, Web Content Accessibility
 * Guidelines 2.2, 1.4.3; the ratio as it defines it), in pages and in drawings.
 */
final class ContrastTest {
    private static final Pattern INK = Pattern.compile(
            "(?<![-\\w])color: (#\\p{XDigit}{6})|<text [^>]*fill=\"(#\\p{XDigit}{6})\"|INK = \"(#\\p{XDigit}{6})\"");
    private static final Pattern GROUND = Pattern.compile("background: (#\\p{XDigit}{6})");

    @Test
    void letters_standOutFromEveryGround() throws IOException {
        String sources = sources();
        Set<String> inks = colours(INK, sources);
        Set<String> grounds = colours(GROUND, sources);
        grounds.add("#ffffff");
        assertTrue(inks.size() >= 3 && grounds.size() >= 3, inks + " on " + grounds);
        Set<String> faint = new TreeSet<>();
        for (String ink : inks) {
            for (String ground : grounds) {
                if (contrast(ink, ground) < 4.5) {
                    faint.add(ink + " on " + ground);
                }
            }
        }
        assertEquals(Set.of(), faint);
    }

    @Test
    void contrast_isWhatTheGuidelinesSay() {
        assertEquals(21, contrast("#000000", "#ffffff"), 1e-9);
        assertEquals(4.54, contrast("#767676", "#ffffff"), 0.01);
    }

    private static String sources() throws IOException {
        StringBuilder all = new StringBuilder();
        for (String root :
                List.of("src/main/jte", "src/main/resources/bitterend/sheet", "src/main/java/bitterend/report")) {
            try (Stream<Path> files = Files.walk(Path.of(root))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    all.append(Files.readString(file));
                }
            }
        }
        return all.toString();
    }

    private static Set<String> colours(Pattern pattern, String sources) {
        Set<String> found = new TreeSet<>();
        Matcher colour = pattern.matcher(sources);
        while (colour.find()) {
            for (int group = 1; group <= colour.groupCount(); group++) {
                if (colour.group(group) != null) {
                    found.add(colour.group(group));
                }
            }
        }
        return found;
    }

    private static double contrast(String one, String other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String colour) {
        return 0.2126 * linear(colour, 1) + 0.7152 * linear(colour, 3) + 0.0722 * linear(colour, 5);
    }

    private static double linear(String colour, int at) {
        double part = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
