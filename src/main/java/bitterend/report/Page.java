package bitterend.report;

import java.util.List;

/** A page of text, 80 columns wide, with an ink for what should catch the eye. */
final class Page {
    static final int WIDTH = 80;

    private final StringBuilder text = new StringBuilder();
    private final Ink ink;

    Page(Ink ink) {
        this.ink = ink;
    }

    void title(String words) {
        Wording.wrapped(words, WIDTH).forEach(line -> line(ink.strong(line)));
    }

    /** A heading with a rule below it, kept apart from what stands above. */
    void heading(String words) {
        if (!text.isEmpty()) {
            blank();
        }
        title(words);
        line("-".repeat(Math.min(WIDTH, Wording.width(words))));
    }

    /** A paragraph; every line after the first is indented by two more. */
    void paragraph(int indent, String words) {
        List<String> lines = Wording.wrapped(words, WIDTH - indent - 2);
        for (int i = 0; i < lines.size(); i++) {
            line(" ".repeat(i == 0 ? indent : indent + 2) + lines.get(i));
        }
    }

    /** A paragraph that warns: marked by the word, and by colour where there is one. */
    void caution(String words) {
        List<String> lines = Wording.wrapped("Caution: " + words, WIDTH - 2);
        for (int i = 0; i < lines.size(); i++) {
            line(ink.alert((i == 0 ? "" : "  ") + lines.get(i)));
        }
    }

    void table(TextTable table) {
        table.lines(WIDTH).forEach(this::line);
    }

    void blank() {
        text.append('\n');
    }

    private void line(String line) {
        text.append(line.stripTrailing()).append('\n');
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
