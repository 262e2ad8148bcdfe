package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Posts a whole plan as a cutter does who measures what is uncertain behind the last cut of a reel. */
final class Posted {
    private Posted() {}

    /** Posts plan 1, or the one that is named: every reel of it that is in the house; every rest that is asked for is 0.5 m. */
    static Run whole(String shop, String who, String... more) {
        List<String> words = new ArrayList<>(List.of("stock", "post", shop, "--who", who));
        words.addAll(List.of(more));
        for (String reel : reels(shop, more.length == 0 ? "1" : more[1])) {
            words.addAll(List.of("--reel", reel));
        }
        Run asked = Run.of(words.toArray(String[]::new));
        if (asked.code() == 0) {
            return asked;
        }
        assertEquals(2, asked.code(), asked.err());
        asked.err().lines().filter(line -> line.startsWith("error: reel ")).forEach(line -> {
            words.add("--sure");
            words.add("--left");
            words.add(line.replaceAll(".*--left \"([^=]*)=.*", "$1=0.5 m"));
        });
        Run posted = Run.of(words.toArray(String[]::new));
        assertEquals(0, posted.code(), posted.err());
        return posted;
    }

    /** Those whose id is no order of rope. */
    private static List<String> reels(String shop, String plan) {
        try {
            String text = Files.readString(Path.of(shop, "plans", plan + ".json"));
            String draws = text.substring(text.indexOf("\"draws\""), text.indexOf("\"unplanned\""));
            return Pattern.compile("\"reel\": \"([^\":]+)\"")
                    .matcher(draws)
                    .results()
                    .map(found -> found.group(1))
                    .distinct()
                    .toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
