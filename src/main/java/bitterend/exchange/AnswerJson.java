package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.Derivation;
import bitterend.demand.Piece;
import bitterend.finding.Finding;
import bitterend.measure.LengthText;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** What commands answer under {@code --json}, exact and for programs. */
public final class AnswerJson {
    private AnswerJson() {}

    /** What is wrong with a shop folder. */
    public static String findings(List<Finding> findings) {
        return new JsonTree()
                .with("format", "bitterend/findings/1")
                .with("findings", trees(findings))
                .text();
    }

    /** The cut length of every piece of these order lines, with its derivation. */
    public static String lengths(List<OrderLine> orders) {
        return new JsonTree()
                .with("format", "bitterend/lengths/1")
                .with("lines", orders.stream().map(AnswerJson::tree).toList())
                .text();
    }

    private static List<JsonTree> trees(List<Finding> findings) {
        return findings.stream()
                .map(finding -> new JsonTree()
                        .with("severity", finding.severity().name().toLowerCase(Locale.ROOT))
                        .with("file", finding.file())
                        .with("place", finding.place())
                        .with("field", finding.field())
                        .with("found", finding.found())
                        .with("expected", finding.expected()))
                .toList();
    }

    private static JsonTree tree(OrderLine line) {
        Assembly.Ordered ordered = line.assembly().ordered();
        Demanded demanded = line.demanded();
        Piece.Source source = ordered.source();
        return new JsonTree()
                .with("order", source.order())
                .with("line", source.line())
                .with(
                        "due",
                        source.due().equals(LocalDate.MAX) ? "" : source.due().toString())
                .with("priority", source.priority())
                .with("finished", LengthText.exact(line.assembly().make().finished()))
                .with("pieces", demanded.pieces().stream().map(AnswerJson::tree).toList())
                .with(
                        "derivations",
                        demanded.derivations().stream().map(AnswerJson::tree).toList())
                .with("findings", trees(demanded.findings()));
    }

    private static JsonTree tree(Piece piece) {
        return new JsonTree()
                .with("piece", piece.id())
                .with("ends", piece.ends())
                .with(
                        "cut",
                        piece.choices().stream()
                                .map(choice -> new JsonTree()
                                        .with("rope", choice.rope())
                                        .with("length", LengthText.exact(choice.cut())))
                                .toList());
    }

    private static JsonTree tree(Derivation derivation) {
        return new JsonTree()
                .with("pieces", (Object) derivation.pieces())
                .with("rope", derivation.rope())
                .with("lines", derivation.lines().stream().map(AnswerJson::tree).toList())
                .with("cut", LengthText.exact(derivation.cut()));
    }

    private static JsonTree tree(Derivation.Line line) {
        return new JsonTree()
                .with("label", line.label())
                .with("formula", line.formula())
                .with("amount", LengthText.exact(line.amount()))
                .with("source", line.provenance().source())
                .with("grade", line.provenance().grade().name().toLowerCase(Locale.ROOT))
                .with("verified", line.provenance().verified());
    }
}
