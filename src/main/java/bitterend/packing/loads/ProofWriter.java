package bitterend.packing.loads;

import bitterend.demand.Piece;
import bitterend.packing.proof.Holder;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.ProofNode;
import bitterend.packing.proof.ProofTree;
import bitterend.packing.proof.RunOfReel;
import bitterend.packing.proof.Statement;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Writes a tree down as a proof that a reader can check: as much of it as so many leaves show, the lowest bounds opened
 * first.
 */
final class ProofWriter {
    private final LoadModel model;
    private final int stage;
    private final Map<String, Reel> reels = new HashMap<>();
    private final IdentityHashMap<Duals, Integer> numbers = new IdentityHashMap<>();
    private final List<PriceList> prices = new ArrayList<>();
    private final Set<Node> opened = new HashSet<>();
    private final long proven;

    /** @param leaves at most so many */
    ProofWriter(LoadModel model, int stage, Node root, int leaves) {
        this.model = model;
        this.stage = stage;
        model.problem.reels().forEach(reel -> reels.put(reel.id(), reel));
        proven = open(root, leaves);
    }

    /** Opens nodes until so many leaves are there; the lowest bound of those. */
    private long open(Node root, int leaves) {
        PriorityQueue<Node> frontier = new PriorityQueue<>(Comparator.comparingLong((Node node) -> node.bound));
        frontier.add(root);
        while (frontier.size() < leaves) {
            Node lowest = frontier.peek();
            if (lowest == null || lowest.yes == null || lowest.no == null || lowest.depth >= ProofTree.DEEPEST) {
                break;
            }
            frontier.remove();
            opened.add(lowest);
            for (Node child : List.of(lowest.yes, lowest.no)) {
                if (!child.empty) {
                    frontier.add(child);
                }
            }
        }
        Node lowest = frontier.peek();
        return lowest == null ? WorkBound.IMPOSSIBLE : lowest.bound;
    }

    /** What the proof shows, in units; {@link WorkBound#IMPOSSIBLE} when no plan is left. */
    long proven() {
        return proven;
    }

    ProofTree proof(Node root) {
        List<ProofTree.Line> lines = Arrays.stream(model.items)
                .map(item ->
                        new ProofTree.Line(item.pieces.stream().map(Piece::id).toList()))
                .toList();
        ProofNode tree = node(root);
        return new ProofTree(lines, stage == Item.NONE ? 1 : Penalty.unit(model), prices, tree);
    }

    private ProofNode node(Node node) {
        Decision decision = node.decision;
        Node yes = node.yes;
        Node no = node.no;
        if (decision != null && yes != null && no != null && opened.contains(node)) {
            return new ProofNode.Branch(statement(decision), node(yes), node(no));
        }
        return new ProofNode.Leaf(numbers.computeIfAbsent(node.duals, this::list));
    }

    private Statement statement(Decision decision) {
        if (decision instanceof Decision.LoadAtMost load) {
            return new Statement.LoadAtMost(run(load.run()), load.cells() * model.cell);
        }
        if (decision instanceof Decision.SetOn set) {
            SetOfPieces pieces = model.sets[set.set()];
            return new Statement.SetOn(pieces.name, holder(pieces, set.holder()));
        }
        if (decision instanceof Decision.OrderTakes order) {
            OrderOnLots lots = model.orders[order.order()];
            return new Statement.OrderTakes(lots.number, lot(lots.lots.get(order.lot())[0]));
        }
        if (decision instanceof Decision.UndoneAtMost undone) {
            return new Statement.UndoneAtMost(undone.item(), undone.count());
        }
        if (decision instanceof Decision.CopiesAtMost copies) {
            return new Statement.CopiesAtMost(copies.item(), run(copies.run()), copies.count());
        }
        throw new IllegalArgumentException("a branch of an unknown kind: " + decision);
    }

    private RunOfReel run(int index) {
        RunOfCells run = model.runs[index];
        return new RunOfReel(model.reels[run.reel].id, run.place + 1);
    }

    private Holder holder(SetOfPieces set, int holder) {
        int reel = set.holders.get(holder)[0];
        boolean oneReel = set.items.get(0).pieces.get(0).matching().bond() == Piece.Bond.ONE_REEL;
        return oneReel ? new Holder.OneReel(model.reels[reel].id) : lot(reel);
    }

    private Holder lot(int index) {
        Reel reel = reel(index);
        return reel.lot().isEmpty() ? new Holder.OneReel(reel.id()) : new Holder.Lot(reel.rope(), reel.lot());
    }

    private Reel reel(int index) {
        Reel reel = reels.get(model.reels[index].id);
        if (reel == null) {
            throw new IllegalStateException("no reel " + model.reels[index].id);
        }
        return reel;
    }

    private int list(Duals duals) {
        long unit = stage == Item.NONE ? model.unit : 1;
        List<PriceList.PiecePrice> pieces = new ArrayList<>();
        for (Item item : model.items) {
            for (int slot = 0; slot < item.slots; slot++) {
                long price = duals.piece[item.index][slot] * unit;
                if (price != 0) {
                    pieces.add(new PriceList.PiecePrice(item.index, where(item, slot), price));
                }
            }
        }
        List<PriceList.Touch> orders = new ArrayList<>();
        List<PriceList.Touch> sets = new ArrayList<>();
        duals.touch.forEach((touch, price) -> {
            String whose = touch.ofSet() ? model.sets[touch.index()].name : model.orders[touch.index()].number;
            (touch.ofSet() ? sets : orders).add(new PriceList.Touch(whose, run(touch.run()), price * unit));
        });
        List<Long> undone =
                Arrays.stream(duals.undone).mapToObj(price -> price * unit).toList();
        prices.add(new PriceList(pieces, orders, sets, stage == Item.NONE ? undone : undone.subList(0, stage)));
        return prices.size() - 1;
    }

    private Holder where(Item item, int slot) {
        if (item.set != Item.NONE) {
            return holder(model.sets[item.set], slot);
        }
        return item.order == Item.NONE
                ? Holder.RACK
                : lot(model.orders[item.order].lots.get(slot)[0]);
    }
}
