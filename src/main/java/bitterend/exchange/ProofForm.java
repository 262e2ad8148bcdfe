package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
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
import java.util.stream.Collectors;

/**
 * A proof by cases as a plan file keeps it. The nodes stand in one list, each statement before the cases in which it is
 * true and those before the cases in which it is not; prices that hold for the whole rack stand in one text, a whole
 * number for each line.
 */
final class ProofForm {
    private ProofForm() {}

    static JsonTree tree(ProofTree proof) {
        List<JsonTree> nodes = new ArrayList<>();
        Deque<ProofNode> open = new ArrayDeque<>(List.of(proof.root()));
        while (!open.isEmpty()) {
            ProofNode node = open.pop();
            nodes.add(tree(node));
            if (node instanceof ProofNode.Branch branch) {
                open.push(branch.no());
                open.push(branch.yes());
            }
        }
        return new JsonTree()
                .with("scale", proof.scale())
                .with(
                        "lines",
                        proof.lines().stream()
                                .map(line -> new JsonTree().with("pieces", (Object) line.pieces()))
                                .toList())
                .with(
                        "prices",
                        proof.prices().stream()
                                .map(list -> tree(list, proof.lines().size()))
                                .toList())
                .with("tree", nodes);
    }

    private static JsonTree tree(ProofNode node) {
        if (node instanceof ProofNode.Branch branch) {
            return tree(branch.statement());
        }
        return node instanceof ProofNode.Leaf leaf
                ? new JsonTree().with("case", "leaf").with("prices", leaf.prices())
                : new JsonTree().with("case", "empty");
    }

    private static JsonTree tree(Statement statement) {
        JsonTree tree = new JsonTree();
        if (statement instanceof Statement.SetOn set) {
            return with(tree.with("case", "set").with("set", set.set()), set.holder());
        } else if (statement instanceof Statement.OrderTakes order) {
            return with(tree.with("case", "order").with("order", order.order()), order.lot());
        } else if (statement instanceof Statement.ReelUsed used) {
            return tree.with("case", "used").with("reel", used.reel());
        } else if (statement instanceof Statement.LoadAtMost load) {
            return with(tree.with("case", "load"), load.run()).with("mm", load.mm());
        } else if (statement instanceof Statement.CopiesAtMost copies) {
            return with(tree.with("case", "copies").with("line", copies.line()), copies.run())
                    .with("pieces", copies.pieces());
        } else if (statement instanceof Statement.UndoneAtMost undone) {
            return tree.with("case", "undone").with("line", undone.line()).with("pieces", undone.pieces());
        }
        throw new IllegalArgumentException("a statement that a plan file has no word for: " + statement);
    }

    private static JsonTree with(JsonTree tree, RunOfReel run) {
        return tree.with("reel", run.reel()).with("run", run.run());
    }

    private static JsonTree with(JsonTree tree, Holder holder) {
        if (holder instanceof Holder.Lot lot) {
            return tree.with("rope", lot.rope()).with("lot", lot.number());
        }
        return holder instanceof Holder.OneReel one ? tree.with("reel", one.reel()) : tree;
    }

    private static JsonTree tree(PriceList list, int lines) {
        long[] rack = new long[lines];
        List<JsonTree> elsewhere = new ArrayList<>();
        for (PiecePrice price : list.pieces()) {
            if (price.where() instanceof Holder.Rack) {
                rack[price.line()] = price.price();
            } else {
                elsewhere.add(with(new JsonTree().with("line", price.line()), price.where())
                        .with("price", price.price()));
            }
        }
        return new JsonTree()
                .with("rack", Arrays.stream(rack).mapToObj(String::valueOf).collect(Collectors.joining(" ")))
                .with("elsewhere", elsewhere)
                .with("orders", list.orders().stream().map(ProofForm::tree).toList())
                .with("sets", list.sets().stream().map(ProofForm::tree).toList())
                .with("undone", list.undone().stream().map(String::valueOf).collect(Collectors.joining(" ")));
    }

    private static JsonTree tree(Touch touch) {
        return with(new JsonTree().with("of", touch.whose()), touch.run()).with("price", touch.price());
    }
}
