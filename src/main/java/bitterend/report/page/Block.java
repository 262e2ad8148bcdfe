package bitterend.report.page;

import java.util.List;
import java.util.stream.IntStream;

/** A part of a page, whatever the page is set on. Words are as printed; nothing of a block is worked out by who sets it. */
public sealed interface Block {
    /**
     * What the page is about; at most one on a page, the first.
     *
     * @param kind what the page is, in a few words; may be empty
     * @param words what it is about
     * @param shop name of the shop; may be empty
     */
    record Title(String kind, String words, String shop) implements Block {
        /** All of it on one line. */
        @Override
        public String toString() {
            return (kind.isEmpty() ? "" : kind + " ") + words + (shop.isEmpty() ? "" : ", " + shop);
        }
    }

    /** Begins a section. */
    record Heading(String words) implements Block {}

    /**
     * A paragraph.
     *
     * @param depth how far it belongs to the one before it: 0 not at all
     */
    record Paragraph(int depth, String words) implements Block {
        public Paragraph {
            if (depth < 0) {
                throw new IllegalArgumentException("depth " + depth);
            }
        }
    }

    /** A paragraph that warns; the word is put in front of it where it is set. */
    record Caution(String words) implements Block {}

    /**
     * What must be said with every page of its kind: whole on paper, in one line on a terminal.
     *
     * @param words all of it, a paragraph each
     * @param inOneLine the same where room is short
     */
    record Standing(List<String> words, String inOneLine) implements Block {
        public Standing {
            words = List.copyOf(words);
        }
    }

    /**
     * A table.
     *
     * @param columns its columns
     * @param rows a cell for each column; a line feed begins a new line of the cell
     */
    record Table(List<Column> columns, List<List<String>> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException(row.size() + " cells for " + columns.size() + " columns");
                }
            }
        }

        /** The same without its columns of drawn lines. */
        Table undrawn() {
            List<Integer> kept = IntStream.range(0, columns.size())
                    .filter(i -> columns.get(i).kind() != Column.Kind.DRAWING)
                    .boxed()
                    .toList();
            return new Table(
                    kept.stream().map(columns::get).toList(),
                    rows.stream()
                            .map(row -> kept.stream().map(row::get).toList())
                            .toList());
        }

        /** Whether any column has a title. */
        public boolean isTitled() {
            return columns.stream().anyMatch(column -> !column.title().isEmpty());
        }
    }

    /**
     * A drawing, where there can be one; text leaves it out, so what it says is said in words, too.
     *
     * @param svg the drawing
     * @param caption what is to be read below it; may be empty
     */
    record Picture(String svg, String caption) implements Block {}

    /**
     * A line that text never wraps, however wide it is, so that whoever searches for it finds it whole.
     *
     * @param weight how it is marked where there is an ink
     */
    record Line(Weight weight, String words) implements Block {
        /** How much a line catches the eye. */
        public enum Weight {
            PLAIN,
            ALERT,
            STRONG
        }
    }

    /** Ways to other pages, where there can be any; text leaves them out, so the words beside them say how to ask. */
    record Links(List<Link> links) implements Block {
        public Links {
            links = List.copyOf(links);
        }
    }

    /**
     * A way to another page.
     *
     * @param words what it is called
     * @param address where it is: a path of a server, or a file beside the page
     */
    record Link(String words, String address) {}

    /** What follows begins another sheet of paper; on a page of text it is kept apart. */
    record NextSheet() implements Block {}

    /** Keeps what follows apart on a page of text; elsewhere the style does. */
    record Gap() implements Block {}
}
