package bitterend.exchange;

import static bitterend.exchange.form.Codec.ANY;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.demand.PieceId;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.exchange.form.Readings;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Pieces as a plan file keeps them, both ways: neighbours that are alike but for their ids stand together. */
final class PieceForm {
    private static final Codec<Integer> COUNTED = Codec.whole(1, 999_999_999);
    private static final Codec<Length> CUT = new Codec<>(LengthText::exact, Readings::workedLength, new Length(1));

    private final Set<String> ropes;
    private final Set<String> met = new TreeSet<>();

    /** Pieces of these ropes alone. */
    PieceForm(Set<String> ropes) {
        this.ropes = ropes;
    }

    /**
     * Pieces that differ in their ids alone.
     *
     * @param ids their ids
     * @param piece any of them
     */
    record Alike(List<PieceId> ids, Piece piece) {
        private List<String> texts() {
            return ids.stream().map(PieceId::text).toList();
        }

        private PieceId first() {
            return ids.get(0);
        }
    }

    /** The pieces, neighbours that are alike together. */
    static List<Alike> alike(List<Piece> pieces) {
        List<Alike> groups = new ArrayList<>();
        int from = 0;
        while (from < pieces.size()) {
            int to = from + 1;
            while (to < pieces.size() && areAlike(pieces.get(from), pieces.get(to))) {
                to++;
            }
            groups.add(new Alike(
                    pieces.subList(from, to).stream().map(Piece::pieceId).toList(), pieces.get(from)));
            from = to;
        }
        return groups;
    }

    /** Every piece of every group. */
    static List<Piece> each(List<Alike> groups) {
        return groups.stream()
                .flatMap(group -> group.ids().stream().map(id -> named(id, group.piece())))
                .toList();
    }

    private static boolean areAlike(Piece one, Piece other) {
        PieceId id = one.pieceId();
        return one.equals(named(id, other))
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
                        .equals(PieceId.of(
                                        PieceId.of(id.order(), id.line(), id.number()), id.part(), id.leg(), id.legs())
                                .text());
    }

    private static Piece named(PieceId id, Piece piece) {
        return new Piece(
                id,
                piece.source(),
                piece.choices(),
                piece.matching(),
                piece.certificate(),
                piece.ownRope(),
                piece.finished(),
                piece.ends());
    }

    Alike alike(Members<Alike> group) {
        List<String> texts = group.texts("ids", Alike::texts);
        String order = group.is("order", each -> each.piece().source().order(), ANY);
        String line = group.is("line", each -> each.piece().source().line(), ANY);
        Numbers numbers = numbers(group);
        int priority = group.is(
                "priority",
                each -> each.piece().source().priority(),
                Codec.whole(1, 9).orElse(5));
        LocalDate due = group.mayBe("due", each -> each.piece().source().due(), Codec.DAY, LocalDate.MAX);
        int finishing = group.mayBe(
                "finishing", each -> each.piece().source().finishing(), Codec.whole(0, Piece.Source.MOST_DAYS), 0);
        int minutes = group.mayBe(
                "minutes", each -> each.piece().source().minutes(), Codec.whole(0, Piece.Source.MOST_MINUTES), 0);
        Piece.Source source = new Piece.Source(order, line, due, priority, finishing, minutes);
        List<PieceId> ids = ids(group, texts, numbers, source);
        List<Piece.RopeChoice> choices = group.list("cut", each -> each.piece().choices(), PieceForm::choice);
        if (choices.isEmpty()) {
            group.error("cut", "a list of at least one rope with its length");
            choices = List.of(new Piece.RopeChoice("?", CUT.placeholder()));
        } else if (choices.stream().anyMatch(choice -> !ropes.contains(choice.rope()))) {
            group.error("cut", "ropes of this plan");
        }
        Piece piece = new Piece(
                PieceId.outsideTheBook("?", source),
                source,
                choices,
                group.among(each -> each.piece().matching(), PieceForm::matching),
                group.mayBe("certificate", each -> each.piece().certificate(), ANY, ""),
                group.mayBe("ownRope", each -> each.piece().ownRope(), Codec.TRUE, false),
                group.among(each -> each.piece().finished(), WrittenForm::written),
                group.written("ends", each -> each.piece().ends(), ANY, ""));
        return new Alike(ids, piece);
    }

    private static Piece.Matching matching(Members<Piece.Matching> matching) {
        String set = matching.mayBe("set", Piece.Matching::set, ANY, "");
        return new Piece.Matching(
                set,
                matching.mayBe("match", Piece.Matching::bond, Codec.word(Piece.Bond.values()), Piece.Bond.NONE),
                matching.mayBeList("begun", Piece.Matching::begun, PieceForm::mate),
                matching.mayBe("released", Piece.Matching::released, ANY, ""));
    }

    private static Piece.RopeChoice choice(Members<Piece.RopeChoice> choice) {
        return new Piece.RopeChoice(
                choice.is("rope", Piece.RopeChoice::rope, Codec.ID), choice.is("length", Piece.RopeChoice::cut, CUT));
    }

    /** A piece of a begun set as an object. */
    static JsonTree tree(CutMate mate) {
        return Members.tree(PieceForm::mate, mate);
    }

    private static CutMate mate(Members<CutMate> mate) {
        String piece = mate.is("piece", CutMate::piece, ANY);
        String rope = mate.is("rope", CutMate::rope, ANY);
        String lot = mate.written("lot", CutMate::lot, ANY, "");
        List<String> reels = mate.texts("reels", CutMate::reels);
        if (reels.isEmpty()) {
            mate.error("reels", "at least the reel it came off");
        }
        return new CutMate(piece, rope, lot, reels.isEmpty() ? List.of("?") : reels);
    }

    /** What the ids are made of; {@code numbers} is empty where they are a text alone. */
    private record Numbers(List<Integer> numbers, String part, List<Integer> leg, int legs) {
        static final Numbers NONE = new Numbers(List.of(), "", List.of(), 1);
    }

    private static Numbers numbers(Members<Alike> group) {
        if (!group.has("numbers", each -> isOfTheBook(each.piece()))) {
            return Numbers.NONE;
        }
        List<Integer> numbers = group.values(
                "numbers", each -> each.ids().stream().map(PieceId::number).toList(), COUNTED);
        String part = group.mayBe("part", each -> each.first().part(), ANY, "");
        if (!group.has("legs", each -> each.first().legs() > 1)) {
            return new Numbers(numbers, part, Collections.nCopies(numbers.size(), 1), 1);
        }
        List<Integer> leg = group.values(
                "leg", each -> each.ids().stream().map(PieceId::leg).toList(), COUNTED);
        return new Numbers(
                numbers, part, leg, group.is("legs", each -> each.first().legs(), Codec.whole(1, 9_999)));
    }

    private List<PieceId> ids(Members<Alike> group, List<String> texts, Numbers made, Piece.Source source) {
        if (!texts.stream().allMatch(met::add)) {
            group.error("ids", "ids that no other piece has");
        }
        if (made.equals(Numbers.NONE)) {
            return texts.stream()
                    .map(text -> PieceId.outsideTheBook(text, source))
                    .toList();
        }
        List<PieceId> ids = new ArrayList<>();
        for (int i = 0; i < Math.min(made.numbers().size(), made.leg().size()); i++) {
            try {
                PieceId assembly =
                        PieceId.of(source.order(), source.line(), made.numbers().get(i));
                ids.add(PieceId.of(assembly, made.part(), made.leg().get(i), made.legs()));
            } catch (IllegalArgumentException noPiece) {
                group.error("numbers", "pieces of an order, each with its number, part and leg");
            }
        }
        if (!texts.equals(ids.stream().map(PieceId::text).toList())) {
            group.error("ids", "the pieces that order, line, numbers, part and leg make");
        }
        return ids;
    }
}
