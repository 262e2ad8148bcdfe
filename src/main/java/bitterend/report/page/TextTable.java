package bitterend.report.page;

import bitterend.report.page.Column.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table that never grows wider than its page: figures keep their width, words share what is left and wrap. A column of
 * words is as wide as its longest word where the page has that much room, since half a word or half a date is read wrong.
 */
final class TextTable {
    private static final int GAP = 2;

    /** A word longer than that may be broken. */
    private static final int LONG_WORD = 24;

    private final List<Column> columns;
    private final List<List<String>> rows;
    private final Map<Integer, Integer> longestWords = new HashMap<>();

    TextTable(Block.Table table) {
        columns = table.columns();
        rows = table.rows();
    }

    List<String> lines(int pageWidth) {
        int[] widths = widths(pageWidth);
        List<String> lines = new ArrayList<>();
        List<String> titles = columns.stream().map(Column::title).toList();
        if (titles.stream().anyMatch(title -> !title.isEmpty())) {
            lines.addAll(rowLines(titles, widths, true));
        }
        rows.forEach(row -> lines.addAll(rowLines(row, widths, false)));
        return lines;
    }

    private List<String> rowLines(List<String> row, int[] widths, boolean title) {
        List<List<String>> cells = IntStream.range(0, columns.size())
                .mapToObj(i -> cellLines(row.get(i), columns.get(i).kind(), widths[i]))
                .toList();
        int height = cells.stream().mapToInt(List::size).max().orElse(1);
        List<String> lines = new ArrayList<>();
        for (int y = 0; y < height; y++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                // Titles of more lines stand on the bottom line, next to what they name.
                int from = title ? y - (height - cells.get(i).size()) : y;
                line.append(i == 0 ? "" : " ".repeat(GAP)).append(cell(i, cells.get(i), from, widths[i]));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private String cell(int column, List<String> lines, int y, int width) {
        Kind kind = columns.get(column).kind();
        boolean inside = y >= 0 && y < lines.size();
        boolean runsOn = kind == Kind.DRAWING && y >= 0 && lines.size() > 1;
        String text = inside ? lines.get(y) : runsOn ? lines.get(lines.size() - 1) : "";
        return kind == Kind.FIGURE ? Wording.right(text, width) : Wording.left(text, width);
    }

    private static List<String> cellLines(String cell, Kind kind, int width) {
        List<String> lines = new ArrayList<>();
        for (String part : cell.split("\n", -1)) {
            lines.addAll(kind == Kind.WORDS ? Wording.wrapped(part, width) : List.of(part));
        }
        return lines;
    }

    private int[] widths(int pageWidth) {
        int[] widths = new int[columns.size()];
        int room = pageWidth - GAP * (columns.size() - 1);
        List<Integer> words = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            widths[i] = natural(i);
            if (columns.get(i).kind() == Kind.WORDS) {
                words.add(i);
            } else {
                room -= widths[i];
            }
        }
        words.sort(Comparator.comparingInt(i -> widths[i]));
        share(widths, words, room);
        return widths;
    }

    /** Narrow columns of words keep what they need, each at least its longest word; the wide ones share the rest alike. */
    private void share(int[] widths, List<Integer> words, int room) {
        int[] wanted = widths.clone();
        int longest = LONG_WORD;
        while (longest > 1 && sum(wanted, words, longest, 0) > room) {
            longest--;
        }
        int level = 1;
        while (level < room && sum(wanted, words, longest, level + 1) <= room) {
            level++;
        }
        int left = room - sum(wanted, words, longest, level);
        for (int k = words.size() - 1; k >= 0; k--) {
            int i = words.get(k);
            int width = width(wanted[i], i, longest, level);
            boolean more = left > 0 && width < wanted[i] && width <= level;
            widths[i] = width + (more ? 1 : 0);
            left -= more ? 1 : 0;
        }
    }

    private int sum(int[] wanted, List<Integer> words, int longest, int level) {
        return words.stream().mapToInt(i -> width(wanted[i], i, longest, level)).sum();
    }

    private int width(int wanted, int column, int longest, int level) {
        return Math.max(1, Math.max(Math.min(longest, longestWord(column)), Math.min(wanted, level)));
    }

    private int natural(int column) {
        int title = widest(columns.get(column).title());
        return Math.max(
                title,
                rows.stream().mapToInt(row -> widest(row.get(column))).max().orElse(0));
    }

    private int longestWord(int column) {
        return longestWords.computeIfAbsent(column, any -> Stream.concat(
                        Stream.of(columns.get(column).title()), rows.stream().map(row -> row.get(column)))
                .flatMap(String::lines)
                .mapToInt(Wording::longestWord)
                .max()
                .orElse(0));
    }

    private static int widest(String cell) {
        return cell.lines().mapToInt(Wording::width).max().orElse(0);
    }
}
