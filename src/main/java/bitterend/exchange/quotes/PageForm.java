package bitterend.exchange.quotes;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.report.page.Block;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A page in a file, block by block, to be set again as it was. */
final class PageForm {
    private static final String IS = "is";
    private static final Reading<Block.Line.Weight> WEIGHT =
            Codec.word(Block.Line.Weight.values()).in();
    private static final Reading<Column.Kind> KIND =
            Codec.word(Column.Kind.values()).in();
    private static final Reading<Integer> DEPTH = Readings.whole(0, 99);

    private PageForm() {}

    static List<JsonTree> blocks(Document page) {
        return page.blocks().stream().map(PageForm::tree).toList();
    }

    static Document read(JsonObject holder, String member) {
        List<Block> blocks = new ArrayList<>();
        for (JsonObject block : holder.objects(member)) {
            blocks.add(block(block));
        }
        return new Document(blocks);
    }

    private static JsonTree tree(Block block) {
        JsonTree tree = new JsonTree().with(IS, block.getClass().getSimpleName().toLowerCase(Locale.ROOT));
        if (block instanceof Block.Title title) {
            return tree.with("kind", title.kind()).with("words", title.words()).with("shop", title.shop());
        }
        if (block instanceof Block.Heading heading) {
            return tree.with("words", heading.words());
        }
        if (block instanceof Block.Paragraph paragraph) {
            return tree.with("depth", paragraph.depth()).with("words", paragraph.words());
        }
        if (block instanceof Block.Caution caution) {
            return tree.with("words", caution.words());
        }
        if (block instanceof Block.Standing standing) {
            return tree.with("paragraphs", (Object) standing.words()).with("words", standing.inOneLine());
        }
        if (block instanceof Block.Table table) {
            return tree.with(
                            "columns",
                            table.columns().stream().map(PageForm::column).toList())
                    .with(
                            "rows",
                            table.rows().stream()
                                    .map(row -> new JsonTree().with("cells", (Object) row))
                                    .toList());
        }
        if (block instanceof Block.Picture picture) {
            return tree.with("svg", lines(picture.svg())).with("words", picture.caption());
        }
        if (block instanceof Block.Line line) {
            return tree.with("weight", Codec.word(line.weight())).with("words", line.words());
        }
        return tree;
    }

    /** A text of several lines as a list of them. */
    private static Object lines(String text) {
        return List.of(text.split("\n", -1));
    }

    private static JsonTree column(Column column) {
        return new JsonTree().with("title", lines(column.title())).with("kind", Codec.word(column.kind()));
    }

    /** Ways to other pages lead nowhere any more; whatever else is not known is a line of words. */
    private static Block block(JsonObject block) {
        Fields fields = block.fields();
        String words = fields.text("words").orElse("");
        return switch (fields.text(IS).orElse("")) {
            case "title" -> new Block.Title(
                    fields.text("kind").orElse(""), words, fields.text("shop").orElse(""));
            case "heading" -> new Block.Heading(words);
            case "paragraph" -> new Block.Paragraph(fields.optional("depth", DEPTH, 0), words);
            case "caution" -> new Block.Caution(words);
            case "standing" -> new Block.Standing(block.texts("paragraphs"), words);
            case "table" -> table(block);
            case "picture" -> new Block.Picture(String.join("\n", block.texts("svg")), words);
            case "line" -> new Block.Line(fields.optional("weight", WEIGHT, Block.Line.Weight.PLAIN), words);
            default -> new Block.Gap();
        };
    }

    private static Block table(JsonObject block) {
        List<Column> columns = new ArrayList<>();
        for (JsonObject column : block.objects("columns")) {
            columns.add(new Column(
                    String.join("\n", column.texts("title")),
                    column.fields().optional("kind", KIND, Column.Kind.WORDS)));
        }
        List<List<String>> rows = new ArrayList<>();
        for (JsonObject row : block.objects("rows")) {
            List<String> cells = row.texts("cells");
            if (cells.size() == columns.size()) {
                rows.add(cells);
            } else {
                row.fields().error("cells", "a cell for each column");
            }
        }
        return new Block.Table(columns, rows);
    }
}
