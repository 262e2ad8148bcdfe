package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.Derivation;
import bitterend.demand.EndWork;
import bitterend.demand.Hang;
import bitterend.demand.HungHardware;
import bitterend.demand.Piece;
import bitterend.demand.SpliceCard;
import bitterend.demand.SpliceLayout;
import bitterend.exchange.form.JsonTree;
import bitterend.finding.ByCause;
import bitterend.finding.Finding;
import bitterend.measure.LengthText;
import bitterend.measure.MassText;
import bitterend.measure.Sentence;
import bitterend.measure.Units;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** What commands answer under {@code --json}, exact and for programs. */
public final class AnswerJson {
    private AnswerJson() {}

    /** What is wrong with a shop folder: all of it, or of more than some hundred the first of each cause, and counts. */
    public static String findings(List<Finding> findings) {
        return withFindings(new JsonTree().with("format", "bitterend/findings/1"), findings)
                .text();
    }

    static JsonTree withFindings(JsonTree tree, List<Finding> findings) {
        if (findings.size() <= ByCause.MOST_TOLD) {
            return tree.with("findings", trees(findings));
        }
        ByCause told = ByCause.of(findings);
        return tree.with(
                        "findings",
                        trees(told.alike().stream()
                                .flatMap(alike -> alike.told().stream())
                                .toList()))
                .with("count", findings.size())
                .with(
                        "more",
                        told.alike().stream()
                                .filter(alike -> alike.more() > 0)
                                .map(AnswerJson::more)
                                .toList())
                .with("others", told.others());
    }

    /** Adds findings under a name: some hundred at most, the first of each cause. */
    static void with(JsonTree tree, String name, List<Finding> findings) {
        tree.with(
                name,
                trees(ByCause.of(findings).alike().stream()
                        .flatMap(alike -> alike.told().stream())
                        .toList()));
    }

    /** How many findings there are besides those told, and what they are like. */
    private static JsonTree more(ByCause.Alike alike) {
        Finding last = alike.told().get(alike.told().size() - 1);
        return new JsonTree()
                .with("severity", last.severity().name().toLowerCase(Locale.ROOT))
                .with("file", last.file())
                .with("field", last.field())
                .with("expected", last.expected())
                .with("count", alike.more());
    }

    /** The cut length of every piece of these order lines, with its derivation. */
    public static String lengths(List<OrderLine> orders, Units units) {
        return new JsonTree()
                .with("format", "bitterend/lengths/1")
                .with("lines", orders.stream().map(order -> tree(order, units)).toList())
                .text();
    }

    /**
     * Where the page of a shop is served.
     *
     * @param code pairs one device; empty where none needs one
     */
    public static String serving(String url, String code) {
        return new JsonTree()
                .with("format", "bitterend/serve/1")
                .with("url", url)
                .with("pairing", code)
                .text();
    }

    /** A file or folder that was written. */
    public static String written(Path file) {
        return written(List.of(file));
    }

    /** Files that were written: the first of them, and all where there are several. */
    public static String written(List<Path> files) {
        JsonTree tree = new JsonTree()
                .with("format", "bitterend/written/1")
                .with("file", files.get(0).toString());
        return (files.size() == 1
                        ? tree
                        : tree.with("files", files.stream().map(Path::toString).toList()))
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

    private static JsonTree tree(OrderLine line, Units units) {
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
                .with("finishing", source.finishing())
                .with(
                        "finished",
                        LengthText.exact(line.assembly().make().finished().exact()))
                .with("written", line.assembly().make().finished().text())
                .with("pieces", demanded.pieces().stream().map(AnswerJson::tree).toList())
                .with(
                        "derivations",
                        demanded.derivations().stream()
                                .map(derivation -> tree(derivation, units))
                                .toList())
                .with("hang", hang(line.assembly().make().hang()))
                .with(
                        "hardware",
                        demanded.work().stream()
                                .flatMap(end -> end.hardware().stream().map(each -> tree(end, each, ordered.legs())))
                                .toList())
                .with(
                        "layouts",
                        demanded.layouts().stream()
                                .map(layout -> tree(layout, units))
                                .toList())
                .with(
                        "findings",
                        trees(demanded.findings().stream()
                                .map(finding -> finding.in(units))
                                .toList()));
    }

    /** How a leg hangs; empty where the order does not say. */
    private static JsonTree hang(Hang hang) {
        return hang.isStated()
                ? new JsonTree()
                        .with("stated", hang.words())
                        .with("height", LengthText.exact(hang.height()))
                        .with("out", LengthText.exact(hang.out()))
                        .with("spread", LengthText.exact(hang.spread()))
                        .with("fromVertical", hang.angle().fromVertical().toString())
                        .with("included", hang.angle().included().toString())
                        .with("fromHorizontal", hang.angle().fromHorizontal().toString())
                : new JsonTree();
    }

    /** A piece of hardware on every leg; {@code count} of it for one assembly. */
    private static JsonTree tree(EndWork end, HungHardware hung, int legs) {
        return new JsonTree()
                .with("end", end.end())
                .with("item", hung.picked().item())
                .with("setting", hung.setting())
                .with("inside", LengthText.exact(hung.inside()))
                .with("tolerance", LengthText.exact(hung.hardware().tolerance()))
                .with(
                        "mass",
                        hung.hardware().mass().grams() == 0
                                ? ""
                                : MassText.exact(hung.hardware().mass()))
                .with("inLength", hung.inLength())
                .with("count", hung.countFor(legs));
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

    private static JsonTree tree(Derivation derivation, Units units) {
        return new JsonTree()
                .with("pieces", (Object) derivation.pieces())
                .with("rope", derivation.rope())
                .with(
                        "lines",
                        derivation.lines().stream()
                                .map(line -> tree(line, units))
                                .toList())
                .with("cut", LengthText.exact(derivation.cut()))
                .with("notes", (Object) printed(derivation.notes(), units));
    }

    private static List<String> printed(List<Sentence> sentences, Units units) {
        return sentences.stream().map(sentence -> sentence.exact(units)).toList();
    }

    private static JsonTree tree(Derivation.Line line, Units units) {
        return new JsonTree()
                .with("label", line.label())
                .with("formula", line.formula().exact(units))
                .with("amount", LengthText.exact(line.amount()))
                .with("source", line.provenance().source())
                .with("grade", line.provenance().grade().name().toLowerCase(Locale.ROOT))
                .with("verified", line.provenance().verified());
    }

    /**
     * What became of a finished piece that was measured.
     *
     * @param minutes how long it took; 0 when not noted
     * @param event number of the event; 0 in a shop without a ledger
     */
    public static String measured(
            String piece, String verdict, SpliceCard.Outcome wanted, int minutes, long event, Units units) {
        JsonTree tree = new JsonTree()
                .with("piece", piece)
                .with("verdict", verdict)
                .with("wanted", LengthText.exact(wanted.length()))
                .with("measured", wanted.measured().exact(units));
        if (wanted.isJudged()) {
            tree.with("least", LengthText.exact(wanted.least())).with("most", LengthText.exact(wanted.most()));
        }
        if (minutes > 0) {
            tree.with("minutes", minutes);
        }
        return (event > 0 ? tree.with("event", event) : tree).text();
    }

    private static JsonTree tree(SpliceLayout layout, Units units) {
        return new JsonTree()
                .with("end", layout.end())
                .with("name", layout.name())
                .with(
                        "marks",
                        layout.marks().stream()
                                .map(mark -> new JsonTree()
                                        .with("mark", mark.name())
                                        .with("on", mark.on())
                                        .with("from", mark.from().exact(units))
                                        .with("distance", LengthText.exact(mark.distance()))
                                        .with(
                                                "fromCutEnd",
                                                mark.findFromCutEnd()
                                                        .map(LengthText::exact)
                                                        .orElse(""))
                                        .with("for", mark.purpose().exact(units)))
                                .toList())
                .with("counts", (Object) printed(layout.counts(), units))
                .with("caution", layout.caution());
    }
}
