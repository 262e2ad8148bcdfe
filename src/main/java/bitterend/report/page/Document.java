package bitterend.report.page;

import java.util.ArrayList;
import java.util.List;

/** A page before it is set: as text here, as HTML and PDF by the printers of sheets. */
public record Document(List<Block> blocks) {
    /** How wide a page of text is, unless it holds a wide table. */
    public static final int WIDTH = 80;

    private static final int LONG_TABLE = 16;

    public Document {
        blocks = List.copyOf(blocks);
    }

    /** A page that says nothing. */
    public static final Document EMPTY = new Document(List.of());

    /** What a window or a list of files calls it: its title, else its first heading. */
    public String name() {
        return blocks.stream()
                .filter(Block.Title.class::isInstance)
                .map(Object::toString)
                .findFirst()
                .or(() -> blocks.stream()
                        .filter(Block.Heading.class::isInstance)
                        .map(block -> ((Block.Heading) block).words())
                        .findFirst())
                .orElse("");
    }

    /** This and below it another, kept apart. */
    public Document then(Document next) {
        return with(new Document(List.of(new Block.Gap()))).with(next);
    }

    /** This and at once another. */
    public Document with(Document next) {
        List<Block> both = new ArrayList<>(blocks);
        both.addAll(next.blocks);
        return new Document(both);
    }

    /** The same under a title, where it has none of its own. */
    public Document titled(String kind, String words, String shop) {
        if (blocks.stream().anyMatch(Block.Title.class::isInstance)) {
            return this;
        }
        return new Document(List.of(new Block.Title(kind, words, shop))).with(this);
    }

    /**
     * What should stay on one sheet of paper, in order: a heading with the words below it and their first table or drawing, so
     * that no heading is left at the foot of a page; each other block by itself. The place of a signature stays with the words
     * before it.
     */
    public List<List<Block>> together() {
        List<List<Block>> groups = new ArrayList<>();
        boolean open = false;
        for (Block block : blocks) {
            boolean begins =
                    (block instanceof Block.Heading heading && !heading.words().equals(PageMark.SIGNED_BELOW))
                            || block instanceof Block.Title
                            || block instanceof Block.NextSheet;
            if (!open || begins) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(block);
            boolean closes = block instanceof Block.Table || block instanceof Block.Picture;
            open = block instanceof Block.Heading || block instanceof Block.NextSheet || (open && !closes);
        }
        return groups;
    }

    /** The same without columns of drawn lines, for a page whose type has none. */
    public Document undrawn() {
        List<Block> kept = new ArrayList<>();
        for (Block block : blocks) {
            kept.add(block instanceof Block.Table table ? table.undrawn() : block);
        }
        return new Document(kept);
    }

    /** The same without ways to other pages, for paper. */
    public Document unlinked() {
        return new Document(
                blocks.stream().filter(block -> !(block instanceof Block.Links)).toList());
    }

    /** Whether what should stay together begins another sheet of paper. */
    public static boolean isNextSheet(List<Block> group) {
        return group.get(0) instanceof Block.NextSheet;
    }

    /** Whether what should stay together is too much for one sheet of paper: then it may break inside its table. */
    public static boolean isLong(List<Block> group) {
        return group.stream()
                .anyMatch(block ->
                        block instanceof Block.Table table && table.rows().size() > LONG_TABLE);
    }

    /** As text, {@value #WIDTH} columns wide. */
    public String text(Ink ink) {
        return text(ink, WIDTH);
    }

    /** As text above something else: kept apart from it, and nothing when there is nothing to say. */
    public String above(Ink ink) {
        return blocks.isEmpty() ? "" : text(ink) + "\n";
    }

    /** As text that may be wider. */
    public String text(Ink ink, int width) {
        TextPage page = new TextPage(ink, width);
        blocks.forEach(page::add);
        return page.toString();
    }
}
