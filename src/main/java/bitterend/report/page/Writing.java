package bitterend.report.page;

import bitterend.report.page.Block.Caution;
import bitterend.report.page.Block.Gap;
import bitterend.report.page.Block.Heading;
import bitterend.report.page.Block.Line;
import bitterend.report.page.Block.Line.Weight;
import bitterend.report.page.Block.Paragraph;
import bitterend.report.page.Block.Picture;
import bitterend.report.page.Block.Table;
import bitterend.report.page.Block.Title;
import java.util.ArrayList;
import java.util.List;

/** A page while it is written. */
public final class Writing {
    private final List<Block> blocks = new ArrayList<>();

    /** What the page is about; comes first. */
    public void title(String words) {
        title("", words, "");
    }

    /** What the page is and what it is about, of a shop; comes first. */
    public void title(String kind, String words, String shop) {
        if (!blocks.isEmpty()) {
            throw new IllegalStateException("a title after " + blocks.size() + " blocks");
        }
        blocks.add(new Title(kind, words, shop));
    }

    public void heading(String words) {
        blocks.add(new Heading(words));
    }

    public void paragraph(String words) {
        paragraph(0, words);
    }

    /** A paragraph that belongs to the one before it when its depth is not 0. */
    public void paragraph(int depth, String words) {
        blocks.add(new Paragraph(depth, words));
    }

    /** What must be said with every page of its kind. */
    public void standing(List<String> words, String inOneLine) {
        blocks.add(new Block.Standing(words, inOneLine));
    }

    public void caution(String words) {
        blocks.add(new Caution(words));
    }

    public void table(TableRows rows) {
        table(rows.table());
    }

    public void table(Table table) {
        blocks.add(table);
    }

    /** A table kept apart from what is around it. */
    public void tableApart(TableRows rows) {
        gap();
        table(rows);
        gap();
    }

    /** A drawing, as SVG. */
    public void picture(String svg) {
        picture(new Picture(svg, ""));
    }

    /** A drawing with what is to be read below it. */
    public void picture(Picture picture) {
        blocks.add(picture);
    }

    /** Ways to other pages; none where there are none. */
    public void links(List<Block.Link> links) {
        if (!links.isEmpty()) {
            blocks.add(new Block.Links(links));
        }
    }

    /** A line that text never wraps. */
    public void line(Weight weight, String words) {
        blocks.add(new Line(weight, words));
    }

    /** What follows begins another sheet of paper; elsewhere it is kept apart. */
    public void nextSheet() {
        blocks.add(new Block.NextSheet());
    }

    public void gap() {
        blocks.add(new Gap());
    }

    public Document document() {
        return new Document(blocks);
    }
}
