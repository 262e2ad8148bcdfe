package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.PackingProblem;
import bitterend.packing.proof.Holder;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.PriceList.PiecePrice;
import bitterend.packing.proof.PriceList.Touch;
import bitterend.packing.proof.ProofNode;
import bitterend.packing.proof.ProofTree;
import bitterend.packing.proof.RunOfReel;
import bitterend.packing.proof.Statement;
import bitterend.stock.Reel;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;

/**
 * A proof made up by a seed: statements of every kind, and prices that climb for as long as a leaf proves more. A checker
 * that proves too much is thereby led to show it.
 */
final class RandomProof {
    private final PackingProblem shop;
    private final ProofGoal goal;
    private final SplittableRandom random;
    private final List<List<Piece>> lines;
    private final List<Reel> reels;
    private @Nullable ProofDay day;
    private int leaves;

    RandomProof(PackingProblem shop, ProofGoal goal, long seed) {
        this.shop = shop;
        this.goal = goal;
        random = new SplittableRandom(seed);
        reels = shop.reels().stream().filter(reel -> !reel.runs().isEmpty()).toList();
        Map<List<Object>, List<Piece>> alike = new LinkedHashMap<>();
        Facts facts = new Facts(shop);
        UndoneWork undone = new UndoneWork(shop);
        boolean apart = random.nextBoolean();
        for (Piece piece : shop.pieces()) {
            List<Boolean> may = shop.reels().stream()
                    .map(reel -> facts.broken(piece, reel).isEmpty())
                    .toList();
            List<Object> terms = List.of(
                    piece.choices(),
                    piece.matching(),
                    may,
                    undone.classOf(piece),
                    undone.weight(piece),
                    apart ? piece.order() : "");
            alike.computeIfAbsent(terms, any -> new ArrayList<>()).add(piece);
        }
        lines = new ArrayList<>(alike.values());
        if (lines.size() > 1 && random.nextInt(4) == 0) {
            lines.remove(lines.size() - 1);
        }
    }

    /** A tree so deep at most, with prices that nobody chose. */
    ProofTree tree(int depth) {
        ProofNode root = node(depth);
        List<PriceList> prices = new ArrayList<>();
        for (int leaf = 0; leaf < leaves; leaf++) {
            prices.add(prices());
        }
        List<ProofTree.Line> named = lines.stream()
                .map(line -> new ProofTree.Line(line.stream().map(Piece::id).toList()))
                .toList();
        return new ProofTree(named, goal.scale(), prices, root);
    }

    /** The same tree with prices that prove more, as far as some steps lead. */
    ProofTree climb(ProofTree tree, int steps) {
        ProofTree best = tree;
        List<Optional<BigInteger>> proven = leavesOf(best);
        for (int step = 0; step < steps; step++) {
            ProofTree next = changed(best);
            List<Optional<BigInteger>> now = leavesOf(next);
            boolean falls = false;
            for (int leaf = 0; leaf < now.size(); leaf++) {
                falls |= proven.get(leaf).isPresent()
                        && now.get(leaf).isPresent()
                        && now.get(leaf).get().compareTo(proven.get(leaf).get()) < 0;
            }
            if (!falls) {
                best = next;
                proven = now;
            }
        }
        return best;
    }

    private List<Optional<BigInteger>> leavesOf(ProofTree tree) {
        if (day == null) {
            day = new ProofDay(new Facts(shop), shop.reels(), shop.pieces(), tree);
        }
        return new ProofCheck(day, tree, goal, new LoadStates.Work(BoundChecker.WORK)).leaves();
    }

    static ProofCheck check(PackingProblem shop, ProofTree tree, ProofGoal goal) {
        ProofDay day = new ProofDay(new Facts(shop), shop.reels(), shop.pieces(), tree);
        return new ProofCheck(day, tree, goal, new LoadStates.Work(BoundChecker.WORK));
    }

    private ProofNode node(int depth) {
        if (depth == 0 || random.nextInt(5) == 0) {
            return new ProofNode.Leaf(leaves++);
        }
        return statement()
                .<ProofNode>map(said -> new ProofNode.Branch(said, node(depth - 1), node(depth - 1)))
                .orElseGet(() -> new ProofNode.Leaf(leaves++));
    }

    private Optional<Statement> statement() {
        if (reels.isEmpty()) {
            return Optional.empty();
        }
        Reel reel = pick(reels);
        RunOfReel run = new RunOfReel(reel.id(), random.nextInt(reel.runs().size()) + 1);
        int line = random.nextInt(lines.size());
        int pieces = random.nextInt(lines.get(line).size());
        return switch (random.nextInt(9)) {
            case 0, 1 -> setOn(reel);
            case 2 -> Optional.of(new Statement.OrderTakes(pick(shop.pieces()).order(), lot(reel)));
            case 3 -> Optional.of(new Statement.ReelUsed(reel.id()));
            case 4 -> Optional.of(new Statement.CopiesAtMost(line, run, pieces));
            case 5 -> Optional.of(new Statement.UndoneAtMost(line, pieces));
            default -> Optional.of(new Statement.LoadAtMost(run, load(reel, run)));
        };
    }

    private Optional<Statement> setOn(Reel reel) {
        List<Piece> matched = shop.pieces().stream().filter(Piece::isMatched).toList();
        if (matched.isEmpty()) {
            return Optional.empty();
        }
        Piece.Matching set = pick(matched).matching();
        Holder holder = set.bond() == Bond.ONE_REEL ? new Holder.OneReel(reel.id()) : lot(reel);
        return Optional.of(new Statement.SetOn(set.set(), holder));
    }

    private static Holder lot(Reel reel) {
        return reel.lot().isEmpty() ? new Holder.OneReel(reel.id()) : new Holder.Lot(reel.rope(), reel.lot());
    }

    /** The load of some pieces, or one millimetre beside it, or any. */
    private long load(Reel reel, RunOfReel run) {
        long room = reel.runs().get(run.run() - 1).length().mm();
        if (random.nextInt(3) == 0) {
            return random.nextLong(room + 1);
        }
        long loss = shop.ropeOn(reel).cutting().loss().mm();
        long load = 0;
        for (Piece piece : shop.pieces()) {
            if (random.nextBoolean() && piece.lengthOn(reel.rope()).isPresent()) {
                long more = piece.lengthOn(reel.rope()).orElseThrow().mm() + loss;
                load += load + more <= room + loss ? more : 0;
            }
        }
        return Math.max(0, load - random.nextInt(2));
    }

    private <T> T pick(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private PriceList prices() {
        List<PiecePrice> pieces = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            pieces.add(new PiecePrice(line, Holder.RACK, price(worth(line))));
        }
        return new PriceList(
                pieces,
                List.of(),
                List.of(),
                LongStream.range(0, 5).map(k -> price(20_000)).boxed().toList());
    }

    /** About what the rope of a piece is worth, or its weight. */
    private long worth(int line) {
        Piece piece = lines.get(line).get(0);
        return goal.isMoney()
                ? shop.rope(piece.orderedRope()).price().of(piece.cut()).millis()
                : new UndoneWork(shop).weight(piece);
    }

    private long price(long about) {
        return goal.scale() * random.nextLong(0, 2 * about + 2);
    }

    private ProofTree changed(ProofTree tree) {
        List<PriceList> prices = new ArrayList<>(tree.prices());
        int list = random.nextInt(prices.size());
        prices.set(list, changed(prices.get(list)));
        return new ProofTree(tree.lines(), tree.scale(), prices, tree.root());
    }

    private PriceList changed(PriceList list) {
        List<PiecePrice> pieces = new ArrayList<>(list.pieces());
        List<Touch> orders = new ArrayList<>(list.orders());
        List<Touch> sets = new ArrayList<>(list.sets());
        List<Long> undone = new ArrayList<>(list.undone());
        int what = reels.isEmpty() ? 0 : random.nextInt(10);
        if (what < 4) {
            int at = random.nextInt(pieces.size());
            PiecePrice old = pieces.get(at);
            pieces.set(at, new PiecePrice(old.line(), old.where(), moved(old.price(), worth(old.line()))));
        } else if (what < 6) {
            Reel reel = pick(reels);
            Holder where = random.nextBoolean() ? lot(reel) : new Holder.OneReel(reel.id());
            int line = random.nextInt(lines.size());
            pieces.removeIf(old -> old.line() == line && old.where().equals(where));
            pieces.add(new PiecePrice(line, where, price(worth(line))));
        } else if (what < 8) {
            touch(orders, pick(shop.pieces()).order());
        } else if (what == 8) {
            shop.pieces().stream()
                    .filter(Piece::isMatched)
                    .findAny()
                    .ifPresent(piece -> touch(sets, piece.matching().set()));
        } else if (!undone.isEmpty()) {
            int at = random.nextInt(undone.size());
            undone.set(at, Math.max(0, moved(undone.get(at), 50_000)));
        }
        return new PriceList(pieces, orders, sets, undone);
    }

    private long moved(long price, long about) {
        return switch (random.nextInt(4)) {
            case 0 -> price + price(about) / 20;
            case 1 -> price - price(about) / 20;
            case 2 -> price + price(about) / 500;
            default -> price(about);
        };
    }

    private void touch(List<Touch> touches, String whose) {
        Reel reel = pick(reels);
        RunOfReel run = new RunOfReel(reel.id(), random.nextInt(reel.runs().size()) + 1);
        touches.removeIf(old -> old.whose().equals(whose) && old.run().equals(run));
        long most = goal.isMoney() ? 1 + shop.prices().splitOrder().millis() + 100_000 : 20;
        touches.add(new Touch(whose, run, price(most) / 2));
    }
}
