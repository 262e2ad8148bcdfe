package bitterend.packing.loads;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Urgency;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts a day in the numbers of the engine; reels that take no piece are left out. */
final class LoadModelBuilder {
    private static final int MOST_LOTS = 10;
    private static final int MOST_HOLDERS = 62;

    final PackingProblem problem;
    final List<Item> items = new ArrayList<>();
    final Map<String, SetOfPieces> sets = new LinkedHashMap<>();
    final Map<String, OrderOnLots> orders = new LinkedHashMap<>();
    /** Pieces that fit no reel, or whose set fits no holder, and their weight by class. */
    final List<Piece> nowhere = new ArrayList<>();

    final long[] floor = new long[LoadModel.CLASSES];

    final RackOfCells rack;

    private LoadModelBuilder(PackingProblem problem) {
        this.problem = problem;
        rack = new RackOfCells(problem);
    }

    /**
     * The day; empty when its runs have too many cells for tables to be of use.
     *
     * @param isShort whether rope is short: one more piece may then cost as much as any other piece that gives way to it
     */
    static Optional<LoadModel> of(PackingProblem problem, boolean isShort) {
        LoadModelBuilder builder = new LoadModelBuilder(problem);
        if (builder.rack.racked.isEmpty() || builder.rack.isTooLarge()) {
            return Optional.empty();
        }
        builder.listSets();
        builder.listOrders();
        builder.listItems();
        builder.giveHolders();
        builder.leaveOutWhatFitsNowhere();
        builder.giveLots();
        if (builder.items.isEmpty()) {
            return Optional.empty();
        }
        PricedReels priced = new PricedReels(problem, builder.rack, builder.items, isShort);
        priced.linkAlike(
                !builder.sets.isEmpty() || problem.prices().splitOrder().millis() > 0);
        return builder.sets.values().stream().anyMatch(set -> set.holders.size() > MOST_HOLDERS)
                ? Optional.empty()
                : Optional.of(new LoadModel(builder, priced));
    }

    private void listSets() {
        for (Piece piece : rack.sizes.keySet()) {
            if (piece.isMatched()) {
                String name = piece.matching().set();
                sets.computeIfAbsent(name, any -> new SetOfPieces(sets.size(), name));
            }
        }
    }

    /** Orders that may lie on two lots of a rope, where that costs anything. */
    private void listOrders() {
        if (problem.prices().splitOrder().millis() == 0) {
            return;
        }
        Map<String, List<Piece>> byOrder = new LinkedHashMap<>();
        rack.sizes.keySet().forEach(piece -> byOrder.computeIfAbsent(piece.order(), any -> new ArrayList<>())
                .add(piece));
        byOrder.forEach((number, pieces) -> {
            Map<String, List<Integer>> lots = rack.lotsOf(pieces);
            long ropes = lots.values().stream()
                    .map(on -> rack.racked.get(on.get(0)).rope())
                    .distinct()
                    .count();
            if (parts(pieces) > 1 && lots.size() > ropes && lots.size() <= MOST_LOTS) {
                orders.put(number, new OrderOnLots(orders.size(), number));
            }
        });
    }

    /** Single pieces and whole sets. */
    private static long parts(List<Piece> pieces) {
        return pieces.stream()
                .map(piece -> piece.isMatched() ? "set " + piece.matching().set() : piece.id())
                .distinct()
                .count();
    }

    private record Key(List<Integer> cells, List<Long> asked, int urgency, long weight, String order, String set) {}

    private void listItems() {
        Urgency urgencies = new Urgency(problem);
        Eligibility rules = new Eligibility(problem);
        Map<Key, List<Piece>> alike = new LinkedHashMap<>();
        rack.sizes.forEach((piece, on) -> {
            List<Integer> cells =
                    Arrays.stream(on).mapToObj(size -> (int) (size / rack.cell)).toList();
            String order = orders.containsKey(piece.order()) ? piece.order() : "";
            String set = piece.isMatched() ? piece.matching().set() : "";
            Key key = new Key(
                    cells, asked(piece, rules), urgencies.classOf(piece) - 1, urgencies.weightOf(piece), order, set);
            alike.computeIfAbsent(key, any -> new ArrayList<>()).add(piece);
        });
        alike.forEach((key, pieces) -> {
            SetOfPieces set = sets.get(key.set());
            OrderOnLots order = orders.get(key.order());
            Item item = new Item(
                    items.size(),
                    pieces,
                    key.urgency(),
                    key.weight(),
                    order == null || set != null ? Item.NONE : order.index,
                    set == null ? Item.NONE : set.index,
                    key.cells().stream().mapToInt(Integer::intValue).toArray());
            items.add(item);
            if (set != null) {
                set.items.add(item);
            } else if (order != null) {
                order.items.add(item);
            }
        });
    }

    /** The length on every reel that may serve the piece, whether it is long enough or not. */
    private List<Long> asked(Piece piece, Eligibility rules) {
        return problem.reels().stream()
                .map(reel -> rules.allows(piece, reel)
                        ? piece.lengthOn(reel.rope()).orElseThrow().mm()
                        : 0L)
                .toList();
    }

    private void giveHolders() {
        for (SetOfPieces set : sets.values()) {
            Piece any = set.items.get(0).pieces.get(0);
            Map<String, List<Integer>> holders = new LinkedHashMap<>();
            for (int r = 0; r < rack.racked.size(); r++) {
                int reel = r;
                if (set.items.stream().anyMatch(item -> item.cells[reel] > 0)) {
                    holders.computeIfAbsent(
                                    PlanPrice.holderOf(any.matching().bond(), rack.racked.get(r)),
                                    name -> new ArrayList<>())
                            .add(r);
                }
            }
            set.items.forEach(item -> Arrays.fill(item.slot, Item.NONE));
            holders.forEach((name, on) -> {
                if (hasRoom(set, on)) {
                    addHolder(set, name, on);
                }
            });
            set.items.forEach(item -> item.slots = Math.max(1, set.holders.size()));
        }
    }

    private static void addHolder(SetOfPieces set, String name, List<Integer> on) {
        int[] reels = on.stream().mapToInt(Integer::intValue).toArray();
        for (Item item : set.items) {
            for (int r : reels) {
                if (item.cells[r] > 0) {
                    item.slot[r] = set.holders.size();
                }
            }
        }
        set.holders.add(reels);
        set.names.add(name);
    }

    /** Whether the set could lie there if nothing else did, as far as lengths one by one and in all tell. */
    private boolean hasRoom(SetOfPieces set, List<Integer> on) {
        long all = 0;
        long least = 0;
        for (int r : on) {
            all += rack.racked.get(r).runs().stream()
                    .mapToLong(run -> rack.room(rack.racked.get(r), run))
                    .sum();
        }
        for (Item item : set.items) {
            long copies = 0;
            int shortest = Integer.MAX_VALUE;
            for (int r : on) {
                int size = item.cells[r];
                if (size > 0) {
                    shortest = Math.min(shortest, size);
                    copies += rack.racked.get(r).runs().stream()
                            .mapToLong(run -> rack.room(rack.racked.get(r), run) / size)
                            .sum();
                }
            }
            if (copies < item.count()) {
                return false;
            }
            least += (long) shortest * item.count();
        }
        return least <= all;
    }

    /** Work that no plan can do is no work of the engine's. */
    private void leaveOutWhatFitsNowhere() {
        for (Item item : items) {
            if (Arrays.stream(item.slot).allMatch(slot -> slot == Item.NONE)) {
                nowhere.addAll(item.pieces);
                floor[item.urgency] += item.weight * item.count();
            }
        }
        if (nowhere.isEmpty()) {
            return;
        }
        nowhere.forEach(rack.sizes::remove);
        items.clear();
        sets.clear();
        orders.clear();
        listSets();
        listOrders();
        listItems();
        giveHolders();
    }

    private void giveLots() {
        for (OrderOnLots order : orders.values()) {
            List<Piece> pieces = rack.sizes.keySet().stream()
                    .filter(piece -> piece.order().equals(order.number))
                    .toList();
            List<String> ropes = new ArrayList<>();
            List<Integer> ropeOfLot = new ArrayList<>();
            rack.lotsOf(pieces).forEach((name, on) -> {
                String rope = rack.racked.get(on.get(0)).rope();
                if (!ropes.contains(rope)) {
                    ropes.add(rope);
                }
                ropeOfLot.add(ropes.indexOf(rope));
                order.names.add(name);
                order.lots.add(on.stream().mapToInt(Integer::intValue).toArray());
            });
            order.rope = ropeOfLot.stream().mapToInt(Integer::intValue).toArray();
            giveLots(order);
        }
    }

    private void giveLots(OrderOnLots order) {
        for (Item item : order.items) {
            item.slots = order.lots.size();
            for (int l = 0; l < item.slots; l++) {
                for (int r : order.lots.get(l)) {
                    item.slot[r] = item.cells[r] > 0 ? l : Item.NONE;
                }
            }
        }
        for (SetOfPieces set : sets.values()) {
            boolean mine = set.items.stream()
                    .flatMap(item -> item.pieces.stream())
                    .allMatch(piece -> piece.order().equals(order.number));
            if (mine) {
                set.order = order.index;
                order.sets.add(set);
                set.lotOfHolder = set.holders.stream()
                        .mapToInt(on -> lotWith(order, on[0]))
                        .toArray();
            }
        }
    }

    private static int lotWith(OrderOnLots order, int reel) {
        for (int l = 0; l < order.lots.size(); l++) {
            if (Arrays.stream(order.lots.get(l)).anyMatch(r -> r == reel)) {
                return l;
            }
        }
        throw new IllegalStateException("no lot of order " + order.number + " has reel " + reel);
    }
}
