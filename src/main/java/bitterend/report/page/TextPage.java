package bitterend.report.page;

import bitterend.report.page.Block.Caution;
import bitterend.report.page.Block.Gap;
import bitterend.report.page.Block.Heading;
import bitterend.report.page.Block.Line;
import bitterend.report.page.Block.Links;
import bitterend.report.page.Block.Paragraph;
import bitterend.report.page.Block.Picture;
import bitterend.report.page.Block.Standing;
import bitterend.report.page.Block.Table;
import bitterend.report.page.Block.Title;
import java.util.List;

/** A page of text of a given width, with an ink for what should catch the eye. */
final class TextPage {
    private final StringBuilder text = new StringBuilder();
    private final Ink ink;
    private final int width;
    private boolean apart;

    TextPage(Ink ink, int width) {
        this.ink = ink;
        this.width = width;
    }

    void add(Block block) {
        if (block instanceof Title title) {
            strong(title.toString());
        } else if (block instanceof Heading heading) {
            heading(heading.words());
        } else if (block instanceof Paragraph paragraph) {
            paragraph(2 * paragraph.depth(), paragraph.words());
        } else if (block instanceof Standing standing) {
            apart = true;
            paragraph(0, standing.inOneLine());
        } else if (block instanceof Caution caution) {
            caution(caution.words());
        } else if (block instanceof Table table) {
            new TextTable(table).lines(width).forEach(this::line);
        } else if (block instanceof Line line) {
            line(marked(line.weight(), Wording.printable(line.words())));
        } else if (block instanceof Gap || block instanceof Block.NextSheet) {
            apart = true;
        } else if (!(block instanceof Picture || block instanceof Links)) {
            throw new IllegalArgumentException("a block that text does not know: " + block);
        }
    }

    /** With a rule below it, kept apart from what is above. */
    private void heading(String words) {
        apart = true;
        strong(words);
        line("-".repeat(Math.min(width, Wording.width(words))));
    }

    private void strong(String words) {
        Wording.wrapped(words, width).forEach(line -> line(ink.strong(line)));
    }

    /** Every line after the first is indented by two more. */
    private void paragraph(int indent, String words) {
        List<String> lines = Wording.wrapped(words, width - indent - 2);
        for (int i = 0; i < lines.size(); i++) {
            line(" ".repeat(i == 0 ? indent : indent + 2) + lines.get(i));
        }
    }

    private String marked(Line.Weight weight, String words) {
        return switch (weight) {
            case PLAIN -> words;
            case ALERT -> ink.alert(words);
            case STRONG -> ink.strong(words);
        };
    }

    /** Marked by the word, and by colour where there is one. */
    private void caution(String words) {
        List<String> lines = Wording.wrapped("Caution: " + words, width - 2);
        for (int i = 0; i < lines.size(); i++) {
            line(ink.alert((i == 0 ? "" : "  ") + lines.get(i)));
        }
    }

    /** What is kept apart has one empty line above it, unless it is the first. */
    private void line(String line) {
        if (apart && !text.isEmpty()) {
            text.append('\n');
        }
        apart = false;
        text.append(line.stripTrailing()).append('\n');
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
