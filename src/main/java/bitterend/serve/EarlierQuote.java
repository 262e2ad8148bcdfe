package bitterend.serve;

import bitterend.exchange.quotes.KeptQuote;
import bitterend.work.ShopNow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A kept quote whose lines a request is drawn up from.
 *
 * @param number its number; empty for none
 * @param revised whether it is revised; otherwise another quote is drawn up from it
 * @param lines a cell for each column of a request, in the form of a file
 */
record EarlierQuote(String number, boolean revised, List<List<String>> lines) {
    static final EarlierQuote NONE = new EarlierQuote("", false, List.of());

    EarlierQuote {
        lines = lines.stream().map(List::copyOf).toList();
    }

    /** The last revision of a quote; none where there is no such quote. */
    static EarlierQuote of(ShopNow now, String number, boolean revised) {
        return number.isEmpty()
                ? NONE
                : QuoteBookScreen.book(now)
                        .read(number, 0)
                        .map(kept -> new EarlierQuote(number, revised, lines(kept)))
                        .orElse(NONE);
    }

    private static List<List<String>> lines(KeptQuote kept) {
        List<List<String>> lines = new ArrayList<>();
        for (Map<String, String> row : kept.rows()) {
            lines.add(TypedRequest.COLUMNS.stream()
                    .map(column -> row.getOrDefault(column, ""))
                    .toList());
        }
        return lines;
    }

    boolean isThere() {
        return !number.isEmpty();
    }

    /** Its lines as a request that is typed; a revision keeps the number. */
    TypedRequest typed() {
        return new TypedRequest(revised ? number : "", "", "", lines);
    }

    /** The cells of a request that are still as they are in this quote: they are in the form of a file, {@code row.column}. */
    Set<String> asFile(List<List<String>> typed) {
        Set<String> same = new HashSet<>();
        for (int row = 0; row < typed.size(); row++) {
            for (int column = 0; column < TypedRequest.COLUMNS.size(); column++) {
                int at = column;
                String cell = typed.get(row).get(at);
                if (lines.stream().anyMatch(line -> line.get(at).equals(cell))) {
                    same.add((row + 1) + "." + at);
                }
            }
        }
        return same;
    }
}
