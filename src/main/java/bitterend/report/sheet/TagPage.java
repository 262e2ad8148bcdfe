package bitterend.report.sheet;

import bitterend.report.Figures;
import bitterend.report.PlanView;
import java.util.List;
import java.util.Optional;

/** Sheets of labels, to print and stick on. */
public final class TagPage {
    private final Tags tags;

    /**
     * @param view the plan
     * @param figures how figures are printed
     * @param work what the order lines ask of the splicers
     */
    public TagPage(PlanView view, Figures figures, List<CardWork> work) {
        tags = new Tags(view, figures, work);
    }

    /**
     * The size of a label.
     *
     * @param width in millimetres
     * @param height in millimetres
     */
    public record Label(int width, int height) {
        public static final Label USUAL = new Label(70, 37);

        public Label {
            if (width < 50 || height < 30 || width > 200 || height > 260) {
                throw new IllegalArgumentException("a label is from 50x30 to 200x260 mm: " + width + "x" + height);
            }
        }

        /** Side of the code on it, in millimetres. */
        int code() {
            return Math.min(height - 8, 22);
        }

        int columns(Paper paper) {
            return Math.max(1, paper.width() / width);
        }

        int rows(Paper paper) {
            return Math.max(1, paper.height() / height);
        }
    }

    /**
     * One sheet of labels, margins in 1/10 mm.
     *
     * @param rows its rows of tags
     */
    public record LabelSheet(List<List<Tag>> rows) {
        public LabelSheet {
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** The style of the type in which a tag goes on a label. */
    public static String type(Tag tag, Label label) {
        return TagType.of(tag, label).style();
    }

    /** As many labels on the paper as go, with equal margins. */
    public String html(Label label, Paper paper) {
        return html(tags.all(), label, paper);
    }

    /** The tag of one piece; nothing where the plan does not cut it. */
    public Optional<String> html(String piece, Label label, Paper paper) {
        List<Tag> of = tags.all().stream()
                .filter(tag -> tag.kind().equals(Tag.PIECE) && tag.title().equals(piece))
                .toList();
        return of.isEmpty() ? Optional.empty() : Optional.of(html(of, label, paper));
    }

    static String html(List<Tag> tags, Label label, Paper paper) {
        return new SheetPage().tags(sheets(tags, label.columns(paper), label.rows(paper)), label, style(label, paper));
    }

    private static List<LabelSheet> sheets(List<Tag> tags, int columns, int rows) {
        List<List<Tag>> lines = slices(tags, columns);
        return slices(lines, rows).stream().map(LabelSheet::new).toList();
    }

    private static <T> List<List<T>> slices(List<T> all, int size) {
        List<List<T>> slices = new java.util.ArrayList<>();
        for (int from = 0; from < all.size(); from += size) {
            slices.add(all.subList(from, Math.min(all.size(), from + size)));
        }
        return slices;
    }

    private static String style(Label label, Paper paper) {
        int left = (paper.width() - label.columns(paper) * label.width()) * 5;
        int top = (paper.height() - label.rows(paper) * label.height()) * 5;
        int code = label.code();
        return "@page { size: " + paper.css() + "; margin: 0; }\n.labels { padding: " + tenths(top) + " "
                + tenths(left) + " 0 " + tenths(left) + "; }\n.tag { width: " + (label.width() - 6) + "mm; height: "
                + (label.height() - 6) + "mm; padding: 3mm; }\n.tag svg { width: " + code + "mm; height: " + code
                + "mm; }\n";
    }

    private static String tenths(int tenths) {
        return tenths / 10 + "." + tenths % 10 + "mm";
    }
}
