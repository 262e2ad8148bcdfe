package bitterend.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Anything as a command line, its words apart by blanks; {@code SHOP} and {@code OUT} are folders. What would leave them, would not
 * end, or would go on as long as it is told is left out.
 */
public final class WordsFuzz {
    private static final TriedShop SHOP = TriedShop.inItsDay();
    private static final Pattern LONG =
            Pattern.compile("--(time|effort|scenarios|weeks|threads|for|debug|since|horizon).*");
    private static final Pattern ENDLESS = Pattern.compile("(serve|help|@).*");
    private static final Pattern TIMED = Pattern.compile("plan|quote|buy|value|short|import");

    private WordsFuzz() {}

    /** What every command can be asked. */
    public static List<byte[]> seeds() {
        return Stream.concat(
                        DayInTheShop.ASKS.values().stream().flatMap(List::stream), EveryCommandTest.writing().stream())
                .flatMap(words -> Stream.of(words.split("; ")))
                .map(words -> words.getBytes(StandardCharsets.UTF_8))
                .toList();
    }

    /** The words without what would leave the shop or never end. */
    private static String bounded(String typed) {
        StringBuilder bounded = new StringBuilder();
        boolean timed = false;
        boolean few = false;
        String before = "";
        for (String word : typed.strip().split("\\s+")) {
            boolean bad = LONG.matcher(word).matches()
                    || LONG.matcher(before).matches()
                    || ENDLESS.matcher(word).matches();
            before = word;
            if (!bad) {
                timed |= TIMED.matcher(word).matches();
                few |= word.startsWith("--from-h");
                bounded.append(inside(word)).append(' ');
            }
        }
        return bounded + (few ? "--scenarios 2 --weeks 1" : timed ? "--time 50ms" : "");
    }

    private static String inside(String word) {
        return word.replace("..", "_")
                .replaceAll("(?<!SHOP|OUT)/", "_")
                .replace("~", "_")
                .replace("\\", "_")
                .replace("\0", "_");
    }

    /** The shop is there before the first try is timed. */
    public static void fuzzerInitialize() {}

    /** One try. */
    public static void fuzzerTestOneInput(byte[] data) {
        SHOP.asked(bounded(new String(data, StandardCharsets.UTF_8)));
    }
}
