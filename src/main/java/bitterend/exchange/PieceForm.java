package bitterend.exchange;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.demand.PieceId;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Pieces as a plan file keeps them: neighbours that are alike but for their ids stand together. */
final class PieceForm {
    private static final Reading<Piece.Bond> BOND = Readings.word(Piece.Bond.values(), PlanJson::word);

    private PieceForm() {}

    static List<JsonTree> trees(List<Piece> pieces) {
        List<JsonTree> trees = new ArrayList<>();
        int from = 0;
        while (from < pieces.size()) {
            int to = from + 1;
            while (to < pieces.size() && alike(pieces.get(from), pieces.get(to))) {
                to++;
            }
            trees.add(tree(pieces.subList(from, to)));
            from = to;
        }
        return trees;
    }

    private static boolean alike(Piece one, Piece other) {
        PieceId id = one.pieceId();
        return one.equals(named(id).apply(other))
                && isOfTheBook(one) == isOfTheBook(other)
                && id.part().equals(other.pieceId().part())
                && id.legs() == other.pieceId().legs();
    }

    /** Whether the id is made of its fields; those of studies are a text alone. */
    private static boolean isOfTheBook(Piece piece) {
        PieceId id = piece.pieceId();
        return PieceId.isText(id.text())
                && id.text().startsWith(id.order() + "/" + id.line() + ".")
                && id.text()
                        .equals(madeOf(id.order(), id.line(), id.number(), id).text());
    }

    private static PieceId madeOf(String order, String line, int number, PieceId id) {
        return PieceId.of(PieceId.of(order, line, number), id.part(), id.leg(), id.legs());
    }

    private static Function<Piece, Piece> named(PieceId id) {
        return piece -> new Piece(
                id,
                piece.source(),
                piece.choices(),
                piece.matching(),
                piece.certificate(),
                piece.ownRope(),
                piece.finished(),
                piece.ends());
    }

    private static JsonTree tree(List<Piece> alike) {
        Piece piece = alike.get(0);
        Piece.Source source = piece.source();
        JsonTree tree = new JsonTree()
                .with("ids", (Object) alike.stream().map(Piece::id).toList())
                .with("order", source.order())
                .with("line", source.line());
        if (isOfTheBook(piece)) {
            fields(tree, alike.stream().map(Piece::pieceId).toList());
        }
        tree.with("priority", source.priority());
        if (!source.due().equals(LocalDate.MAX)) {
            tree.with("due", source.due().toString());
        }
        tree.with("cut", piece.choices().stream().map(PieceForm::tree).toList());
        if (!piece.matching().equals(Piece.Matching.NONE)) {
            tree.with("set", piece.matching().set())
                    .with("match", PlanJson.word(piece.matching().bond()));
        }
        if (!piece.matching().begun().isEmpty()) {
            tree.with(
                    "begun",
                    piece.matching().begun().stream().map(PieceForm::tree).toList());
        }
        if (!piece.matching().released().isEmpty()) {
            tree.with("released", piece.matching().released());
        }
        if (!piece.certificate().isEmpty()) {
            tree.with("certificate", piece.certificate());
        }
        if (piece.ownRope()) {
            tree.with("ownRope", true);
        }
        return WrittenForm.with(tree, piece.finished()).with("ends", piece.ends());
    }

    private static void fields(JsonTree tree, List<PieceId> ids) {
        tree.with("numbers", (Object) ids.stream().map(PieceId::number).toList());
        PieceId first = ids.get(0);
        if (!first.part().isEmpty()) {
            tree.with("part", first.part());
        }
        if (first.legs() > 1) {
            tree.with("leg", (Object) ids.stream().map(PieceId::leg).toList()).with("legs", first.legs());
        }
    }

    static JsonTree tree(CutMate mate) {
        return new JsonTree()
                .with("piece", mate.piece())
                .with("rope", mate.rope())
                .with("lot", mate.lot())
                .with("reels", (Object) mate.reels());
    }

    private static CutMate mate(JsonObject mate) {
        List<String> reels = mate.texts("reels");
        if (reels.isEmpty()) {
            mate.fields().error("reels", "at least the reel it came off");
        }
        return new CutMate(
                mate.fields().require("piece", PieceForm::any, "?"),
                mate.fields().require("rope", PieceForm::any, "?"),
                mate.fields().optional("lot", PieceForm::any, ""),
                reels.isEmpty() ? List.of("?") : reels);
    }

    private static JsonTree tree(Piece.RopeChoice choice) {
        return new JsonTree().with("rope", choice.rope()).with("length", LengthText.exact(choice.cut()));
    }

    static List<Piece> read(List<JsonObject> groups, Set<String> ropes) {
        List<Piece> pieces = new ArrayList<>();
        Map<String, String> places = new HashMap<>();
        for (JsonObject group : groups) {
            List<Piece> read = read(group);
            read.forEach(piece -> group.fields().once("ids", piece.id(), places));
            boolean known = read.stream()
                    .flatMap(piece -> piece.choices().stream())
                    .allMatch(choice -> ropes.contains(choice.rope()));
            if (!known) {
                group.fields().error("cut", "ropes of this plan");
            }
            pieces.addAll(read);
        }
        return pieces;
    }

    private static List<Piece> read(JsonObject group) {
        Fields fields = group.fields();
        List<Piece.RopeChoice> choices =
                group.objects("cut").stream().map(PieceForm::choice).toList();
        if (choices.isEmpty()) {
            fields.error("cut", "a list of at least one rope with its length");
            group.leave();
            return List.of();
        }
        Piece.Source source = new Piece.Source(
                fields.require("order", PieceForm::any, "?"),
                fields.require("line", PieceForm::any, "?"),
                fields.optional("due", Readings::day, LocalDate.MAX),
                fields.require("priority", Readings.whole(1, 9), 5));
        Piece piece = new Piece(
                PieceId.outsideTheBook("?", source),
                source,
                choices,
                new Piece.Matching(
                        fields.optional("set", PieceForm::any, ""),
                        fields.optional("match", BOND, Piece.Bond.NONE),
                        group.objects("begun").stream().map(PieceForm::mate).toList(),
                        fields.optional("released", PieceForm::any, "")),
                fields.optional("certificate", PieceForm::any, ""),
                fields.optional("ownRope", Readings::yesOrNo, false),
                WrittenForm.read(fields),
                fields.optional("ends", PieceForm::any, ""));
        return ids(group, source).stream().map(id -> named(id).apply(piece)).toList();
    }

    private static List<PieceId> ids(JsonObject group, Piece.Source source) {
        List<String> texts = group.texts("ids");
        if (!group.has("numbers")) {
            return texts.stream()
                    .map(text -> PieceId.outsideTheBook(text, source))
                    .toList();
        }
        Fields fields = group.fields();
        List<Integer> numbers = wholes(group, "numbers");
        int legs = fields.optional("legs", Readings.whole(1, 9_999), 1);
        List<Integer> leg = legs == 1 ? Collections.nCopies(numbers.size(), 1) : wholes(group, "leg");
        String part = fields.optional("part", PieceForm::any, "");
        List<PieceId> ids = new ArrayList<>();
        for (int i = 0; i < Math.min(numbers.size(), leg.size()); i++) {
            try {
                PieceId assembly = PieceId.of(source.order(), source.line(), numbers.get(i));
                ids.add(PieceId.of(assembly, part, leg.get(i), legs));
            } catch (IllegalArgumentException noPiece) {
                fields.error("numbers", "pieces of an order, each with its number, part and leg");
            }
        }
        if (!texts.equals(ids.stream().map(PieceId::text).toList())) {
            fields.error("ids", "the pieces that order, line, numbers, part and leg make");
        }
        return ids;
    }

    private static List<Integer> wholes(JsonObject group, String name) {
        List<Integer> wholes = new ArrayList<>();
        for (String text : group.texts(name)) {
            Parsed<Integer> whole = Readings.whole(1, 999_999_999).read(text);
            whole.refusal().ifPresent(expected -> group.fields().error(name, expected));
            wholes.add(whole.value().orElse(1));
        }
        return wholes;
    }

    private static Piece.RopeChoice choice(JsonObject choice) {
        return new Piece.RopeChoice(
                choice.fields().require("rope", Readings::id, "?"),
                choice.fields().require("length", Readings::workedLength, new Length(1)));
    }

    private static Parsed<String> any(String text) {
        return Parsed.of(text);
    }
}
