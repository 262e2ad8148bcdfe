package bitterend.exchange;

import static bitterend.exchange.form.Codec.ANY;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Form;
import bitterend.exchange.form.Members;
import bitterend.measure.Parsed;
import bitterend.packing.proof.Holder;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.PriceList.PiecePrice;
import bitterend.packing.proof.PriceList.Touch;
import bitterend.packing.proof.ProofNode;
import bitterend.packing.proof.ProofTree;
import bitterend.packing.proof.RunOfReel;
import bitterend.packing.proof.Statement;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A proof by cases as a plan file keeps it, both ways. The nodes stand in one list, each statement before the cases in which
 * it is true and those before the cases in which it is not; prices that hold for the whole rack stand in one text, a whole
 * number for each line. What it does not know it tells, and makes no proof of.
 */
final class ProofForm {
    private static final Pattern NUMBERS = Pattern.compile("-?[0-9]{1,18}( -?[0-9]{1,18})*");
    private static final Codec<List<Long>> LIST = new Codec<>(
            numbers -> numbers.stream().map(String::valueOf).collect(Collectors.joining(" ")),
            ProofForm::numbers,
            List.of());
    private static final Codec<Integer> INDEX = upTo(Integer.MAX_VALUE, Math::toIntExact);
    private static final Codec<Integer> PIECES = upTo(Integer.MAX_VALUE - 1L, Math::toIntExact);
    private static final Codec<Long> CHARGE = upTo(Long.MAX_VALUE, number -> number);
    private static final Codec<Long> MILLIMETRES = upTo(Long.MAX_VALUE / 4, number -> number);

    /** How many lines the proof has; known once they were passed. */
    private int lines;

    private ProofForm() {}

    static ProofTree proof(Members<ProofTree> proof) {
        return new ProofForm().tree(proof);
    }

    private ProofTree tree(Members<ProofTree> proof) {
        long scale = proof.is("scale", ProofTree::scale, PlanForm.SCALED);
        List<ProofTree.Line> all = proof.list("lines", ProofTree::lines, ProofForm::line);
        lines = all.size();
        List<PriceList> prices = proof.list("prices", ProofTree::prices, this::prices);
        List<Head> heads = proof.list("tree", tree -> heads(tree.root()), ProofForm::head);
        Optional<ProofNode> root = root(heads);
        if (root.isEmpty()) {
            proof.error("tree", "two cases behind every statement, at most " + ProofTree.DEEPEST + " one in another");
        }
        return new ProofTree(all, scale, prices, root.orElse(ProofNode.EMPTY));
    }

    private static ProofTree.Line line(Members<ProofTree.Line> line) {
        return new ProofTree.Line(line.texts("pieces", ProofTree.Line::pieces));
    }

    private PriceList prices(Members<PriceList> list) {
        List<PiecePrice> pieces = new ArrayList<>();
        List<Long> rack = list.written("rack", this::onTheRack, LIST, List.of());
        for (int line = 0; line < rack.size(); line++) {
            if (rack.get(line) != 0) {
                pieces.add(new PiecePrice(line, Holder.RACK, rack.get(line)));
            }
        }
        pieces.addAll(list.list("elsewhere", ProofForm::elsewhere, ProofForm::piecePrice));
        return new PriceList(
                pieces,
                list.list("orders", PriceList::orders, ProofForm::touch),
                list.list("sets", PriceList::sets, ProofForm::touch),
                list.written("undone", PriceList::undone, LIST, List.of()).stream()
                        .map(price -> Math.max(0, price))
                        .toList());
    }

    private List<Long> onTheRack(PriceList list) {
        long[] rack = new long[lines];
        list.pieces().stream()
                .filter(price -> price.where() instanceof Holder.Rack)
                .forEach(price -> rack[price.line()] = price.price());
        return Arrays.stream(rack).boxed().toList();
    }

    private static List<PiecePrice> elsewhere(PriceList list) {
        return list.pieces().stream()
                .filter(price -> !(price.where() instanceof Holder.Rack))
                .toList();
    }

    private static PiecePrice piecePrice(Members<PiecePrice> price) {
        return new PiecePrice(
                price.is("line", PiecePrice::line, INDEX),
                price.among(PiecePrice::where, ProofForm::holder),
                price.is("price", PiecePrice::price, Codec.WHOLE_NUMBER));
    }

    private static Touch touch(Members<Touch> touch) {
        return new Touch(
                touch.is("of", Touch::whose, ANY),
                touch.among(Touch::run, ProofForm::run),
                touch.is("price", Touch::price, CHARGE));
    }

    private static Holder holder(Members<Holder> holder) {
        return holder.has("lot", each -> each instanceof Holder.Lot)
                ? holder.among(each -> (Holder.Lot) each, ProofForm::lot)
                : holder.among(each -> (Holder.OneReel) each, ProofForm::oneReel);
    }

    private static Holder.Lot lot(Members<Holder.Lot> lot) {
        return new Holder.Lot(lot.is("rope", Holder.Lot::rope, ANY), lot.is("lot", Holder.Lot::number, ANY));
    }

    private static Holder.OneReel oneReel(Members<Holder.OneReel> one) {
        return new Holder.OneReel(one.is("reel", Holder.OneReel::reel, ANY));
    }

    private static RunOfReel run(Members<RunOfReel> run) {
        return new RunOfReel(run.is("reel", RunOfReel::reel, ANY), Math.max(1, run.is("run", RunOfReel::run, INDEX)));
    }

    /**
     * A node without the cases behind it.
     *
     * @param word what kind it is
     * @param node the statement with nothing behind it, or a leaf
     */
    private record Head(String word, ProofNode node) {}

    /** The nodes in the order of the file. */
    private static List<Head> heads(ProofNode root) {
        List<Head> heads = new ArrayList<>();
        Deque<ProofNode> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            ProofNode node = open.pop();
            if (node instanceof ProofNode.Branch branch) {
                heads.add(new Head(word(branch.statement()), of(branch.statement())));
                open.push(branch.no());
                open.push(branch.yes());
            } else {
                heads.add(new Head(node instanceof ProofNode.Leaf ? "leaf" : "empty", node));
            }
        }
        return heads;
    }

    private static ProofNode of(Statement statement) {
        return new ProofNode.Branch(statement, ProofNode.EMPTY, ProofNode.EMPTY);
    }

    private static String word(Statement statement) {
        if (statement instanceof Statement.SetOn) {
            return "set";
        } else if (statement instanceof Statement.OrderTakes) {
            return "order";
        } else if (statement instanceof Statement.ReelUsed) {
            return "used";
        } else if (statement instanceof Statement.LoadAtMost) {
            return "load";
        } else if (statement instanceof Statement.CopiesAtMost) {
            return "copies";
        } else if (statement instanceof Statement.UndoneAtMost) {
            return "undone";
        }
        throw new IllegalArgumentException("a statement that a plan file has no word for: " + statement);
    }

    private static Head head(Members<Head> head) {
        String word = head.is("case", Head::word, ANY);
        return new Head(
                word,
                switch (word) {
                    case "leaf" -> head.among(each -> (ProofNode.Leaf) each.node(), ProofForm::leaf);
                    case "empty" -> ProofNode.EMPTY;
                    case "set" -> statement(head, Statement.SetOn.class, ProofForm::setOn);
                    case "order" -> statement(head, Statement.OrderTakes.class, ProofForm::orderTakes);
                    case "used" -> statement(head, Statement.ReelUsed.class, ProofForm::reelUsed);
                    case "load" -> statement(head, Statement.LoadAtMost.class, ProofForm::loadAtMost);
                    case "copies" -> statement(head, Statement.CopiesAtMost.class, ProofForm::copiesAtMost);
                    case "undone" -> statement(head, Statement.UndoneAtMost.class, ProofForm::undoneAtMost);
                    default -> unknown(head);
                });
    }

    private static <S extends Statement> ProofNode statement(Members<Head> head, Class<S> kind, Form<S> form) {
        return of(head.among(each -> kind.cast(((ProofNode.Branch) each.node()).statement()), form));
    }

    private static ProofNode unknown(Members<Head> head) {
        head.error("case", "one of: set, order, used, load, copies, undone, leaf, empty");
        head.leave();
        return of(new Statement.UndoneAtMost(0, 0));
    }

    private static ProofNode.Leaf leaf(Members<ProofNode.Leaf> leaf) {
        return new ProofNode.Leaf(leaf.is("prices", ProofNode.Leaf::prices, INDEX));
    }

    private static Statement.SetOn setOn(Members<Statement.SetOn> set) {
        return new Statement.SetOn(
                set.is("set", Statement.SetOn::set, ANY), set.among(Statement.SetOn::holder, ProofForm::holder));
    }

    private static Statement.OrderTakes orderTakes(Members<Statement.OrderTakes> order) {
        return new Statement.OrderTakes(
                order.is("order", Statement.OrderTakes::order, ANY),
                order.among(Statement.OrderTakes::lot, ProofForm::holder));
    }

    private static Statement.ReelUsed reelUsed(Members<Statement.ReelUsed> used) {
        return new Statement.ReelUsed(used.is("reel", Statement.ReelUsed::reel, ANY));
    }

    private static Statement.LoadAtMost loadAtMost(Members<Statement.LoadAtMost> load) {
        return new Statement.LoadAtMost(
                load.among(Statement.LoadAtMost::run, ProofForm::run),
                load.is("mm", Statement.LoadAtMost::mm, MILLIMETRES));
    }

    private static Statement.CopiesAtMost copiesAtMost(Members<Statement.CopiesAtMost> copies) {
        return new Statement.CopiesAtMost(
                copies.is("line", Statement.CopiesAtMost::line, INDEX),
                copies.among(Statement.CopiesAtMost::run, ProofForm::run),
                copies.is("pieces", Statement.CopiesAtMost::pieces, PIECES));
    }

    private static Statement.UndoneAtMost undoneAtMost(Members<Statement.UndoneAtMost> undone) {
        return new Statement.UndoneAtMost(
                undone.is("line", Statement.UndoneAtMost::line, INDEX),
                undone.is("pieces", Statement.UndoneAtMost::pieces, PIECES));
    }

    /** The nodes put together from the last one back; empty when they make no tree. */
    private static Optional<ProofNode> root(List<Head> heads) {
        Deque<ProofNode> done = new ArrayDeque<>();
        Deque<Integer> depths = new ArrayDeque<>();
        for (int i = heads.size() - 1; i >= 0; i--) {
            ProofNode node = heads.get(i).node();
            int depth = 0;
            if (!(node instanceof ProofNode.Branch branch)) {
                done.push(node);
            } else if (done.size() < 2) {
                return Optional.empty();
            } else {
                ProofNode yes = done.pop();
                done.push(new ProofNode.Branch(branch.statement(), yes, done.pop()));
                depth = 1 + Math.max(depths.pop(), depths.pop());
            }
            depths.push(depth);
            if (depth > ProofTree.DEEPEST) {
                return Optional.empty();
            }
        }
        return done.size() == 1 ? Optional.of(done.pop()) : Optional.empty();
    }

    /** A whole number from 0 to a limit. */
    private static <N> Codec<N> upTo(long most, Function<Long, N> as) {
        return new Codec<>(
                number -> number,
                text -> numbers(text)
                        .then(all -> all.size() == 1 && all.get(0) >= 0 && all.get(0) <= most
                                ? Parsed.of(as.apply(all.get(0)))
                                : Parsed.refused("a whole number from 0 to " + most)),
                as.apply(0L));
    }

    private static Parsed<List<Long>> numbers(String text) {
        return NUMBERS.matcher(text).matches()
                ? Parsed.of(Arrays.stream(text.split(" ")).map(Long::parseLong).toList())
                : Parsed.refused("whole numbers, such as 0 36 5");
    }
}
