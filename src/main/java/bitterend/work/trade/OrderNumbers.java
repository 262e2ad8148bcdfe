package bitterend.work.trade;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Numbers for new orders of reels: as the last one in the file is made, and above every one of its kind that was ever given. */
final class OrderNumbers {
    private static final Pattern NUMBER = Pattern.compile("(.*?)([0-9]{1,9})");
    private static final String USUAL = "P-";

    private final String head;
    private long last;

    /**
     * @param there numbers in the file, from above
     * @param given others that were given before
     */
    OrderNumbers(List<String> there, List<String> given) {
        head = there.stream()
                .map(NUMBER::matcher)
                .filter(Matcher::matches)
                .map(found -> found.group(1))
                .reduce((before, after) -> after)
                .orElse(USUAL);
        last = Stream.concat(there.stream(), given.stream())
                .map(NUMBER::matcher)
                .filter(found -> found.matches() && found.group(1).equals(head))
                .mapToLong(found -> Long.parseLong(found.group(2)))
                .max()
                .orElse(0);
    }

    String next() {
        last++;
        return head + last;
    }
}
