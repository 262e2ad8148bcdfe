package bitterend.packing.loads;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.DrawPrice;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Urgency;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts a day in the numbers of the engine; reels that take no piece are left out. */
final class LoadModelBuilder {
    /** Cells of a table times pieces of a day beyond which tables are too slow to be of use. */
    private static final long MOST_STATES = 60_000_000;

    private static final int MOST_CELLS = 400_000;
    private static final int MOST_LOTS = 10;
    private static final int MOST_HOLDERS = 62;
    /** Worth of all pieces of a run, and value that leaves with them, stay below these. */
    static final long MOST_GAIN = 500_000_000;

    private static final long MOST_DROP = 300_000_000;

    final PackingProblem problem;
    final List<Item> items = new ArrayList<>();
    final Map<String, SetOfPieces> sets = new LinkedHashMap<>();
    final Map<String, OrderOnLots> orders = new LinkedHashMap<>();
    final List<ReelOfRuns> reels = new ArrayList<>();
    long unit = 1;
    long cell = 1;
    int[] dear = {};
    long mostPieces = 1;
    /** Pieces that fit no reel, or whose set fits no holder, and their weight by class. */
    final List<Piece> nowhere = new ArrayList<>();

    final long[] floor = new long[LoadModel.CLASSES];

    private final List<Reel> racked = new ArrayList<>();
    private final Map<Reel, DrawPrice> prices = new HashMap<>();
    private final Map<Piece, long[]> sizes = new LinkedHashMap<>();

    private final boolean isShort;

    private LoadModelBuilder(PackingProblem problem, boolean isShort) {
        this.problem = problem;
        this.isShort = isShort;
    }

    /**
     * The day; empty when its runs have too many cells for tables to be of use.
     *
     * @param isShort whether rope is short: one more piece may then cost as much as any other piece that gives way to it
     */
    static Optional<LoadModel> of(PackingProblem problem, boolean isShort) {
        LoadModelBuilder builder = new LoadModelBuilder(problem, isShort);
        builder.measure();
        if (builder.racked.isEmpty() || builder.tooLarge()) {
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
        builder.chooseUnit();
        builder.buildReels();
        builder.linkAlike();
        return builder.sets.values().stream().anyMatch(set -> set.holders.size() > MOST_HOLDERS)
                ? Optional.empty()
                : Optional.of(new LoadModel(builder));
    }

    /** The size of every piece with its cut on every reel that may serve it, and the divisor of all of them. */
    private void measure() {
        Eligibility rules = new Eligibility(problem);
        Map<Piece, Map<Reel, Long>> all = new LinkedHashMap<>();
        for (Piece piece : problem.pieces()) {
            Map<Reel, Long> on = new HashMap<>();
            for (Reel reel : problem.reels()) {
                Optional<Length> cut = piece.lengthOn(reel.rope());
                if (cut.isPresent() && rules.allows(piece, reel) && fits(cut.get(), reel)) {
                    on.put(reel, cut.get().plus(lossOn(reel)).mm());
                }
            }
            all.put(piece, on);
        }
        problem.reels().stream()
                .filter(reel -> all.values().stream().anyMatch(on -> on.containsKey(reel)))
                .forEach(racked::add);
        long divisor = 0;
        for (Map.Entry<Piece, Map<Reel, Long>> entry : all.entrySet()) {
            long[] on = racked.stream()
                    .mapToLong(reel -> entry.getValue().getOrDefault(reel, 0L))
                    .toArray();
            for (long size : on) {
                divisor = gcd(divisor, size);
            }
            sizes.put(entry.getKey(), on);
        }
        cell = Math.max(1, divisor);
        racked.forEach(reel -> prices.put(reel, new DrawPrice(problem, reel)));
    }

    private static boolean fits(Length cut, Reel reel) {
        return reel.runs().stream().anyMatch(run -> !cut.isLongerThan(run.length()));
    }

    private Length lossOn(Reel reel) {
        return problem.ropeOn(reel).cutting().loss();
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private long room(Reel reel, Run run) {
        return run.length().plus(lossOn(reel)).mm() / cell;
    }

    private boolean tooLarge() {
        long room = racked.stream()
                .flatMap(reel -> reel.runs().stream().map(run -> room(reel, run)))
                .max(Long::compare)
                .orElse(0L);
        return room > MOST_CELLS || room * problem.pieces().size() > MOST_STATES;
    }

    private void listSets() {
        for (Piece piece : sizes.keySet()) {
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
        sizes.keySet().forEach(piece -> byOrder.computeIfAbsent(piece.order(), any -> new ArrayList<>())
                .add(piece));
        byOrder.forEach((number, pieces) -> {
            Map<String, List<Integer>> lots = lotsOf(pieces);
            long ropes = lots.values().stream()
                    .map(on -> racked.get(on.get(0)).rope())
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

    private Map<String, List<Integer>> lotsOf(List<Piece> pieces) {
        Map<String, List<Integer>> lots = new LinkedHashMap<>();
        for (int r = 0; r < racked.size(); r++) {
            int reel = r;
            if (pieces.stream().anyMatch(piece -> sizeOn(piece, reel) > 0)) {
                lots.computeIfAbsent(lotOf(r), any -> new ArrayList<>()).add(r);
            }
        }
        return lots;
    }

    private long sizeOn(Piece piece, int reel) {
        long[] on = sizes.get(piece);
        return on == null ? 0 : on[reel];
    }

    private String lotOf(int reel) {
        Reel there = racked.get(reel);
        return there.rope() + ", " + PlanPrice.lotOf(there);
    }

    private record Key(List<Integer> cells, List<Long> asked, int urgency, long weight, String order, String set) {}

    private void listItems() {
        Urgency urgencies = new Urgency(problem);
        Eligibility rules = new Eligibility(problem);
        Map<Key, List<Piece>> alike = new LinkedHashMap<>();
        sizes.forEach((piece, on) -> {
            List<Integer> cells =
                    Arrays.stream(on).mapToObj(size -> (int) (size / cell)).toList();
            String order = orders.containsKey(piece.order()) ? piece.order() : "";
            String set = piece.isMatched() ? piece.matching().set() : "";
            Key key = new Key(
                    cells, asked(piece, rules), urgencies.classOf(piece) - 1, Urgency.weight(piece), order, set);
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
            for (int r = 0; r < racked.size(); r++) {
                int reel = r;
                if (set.items.stream().anyMatch(item -> item.cells[reel] > 0)) {
                    holders.computeIfAbsent(
                                    PlanPrice.holderOf(any.matching().bond(), racked.get(r)), name -> new ArrayList<>())
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
            all += racked.get(r).runs().stream()
                    .mapToLong(run -> room(racked.get(r), run))
                    .sum();
        }
        for (Item item : set.items) {
            long copies = 0;
            int shortest = Integer.MAX_VALUE;
            for (int r : on) {
                int size = item.cells[r];
                if (size > 0) {
                    shortest = Math.min(shortest, size);
                    copies += racked.get(r).runs().stream()
                            .mapToLong(run -> room(racked.get(r), run) / size)
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
        nowhere.forEach(sizes::remove);
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
            List<Piece> pieces = sizes.keySet().stream()
                    .filter(piece -> piece.order().equals(order.number))
                    .toList();
            List<String> ropes = new ArrayList<>();
            List<Integer> ropeOfLot = new ArrayList<>();
            lotsOf(pieces).forEach((name, on) -> {
                String rope = racked.get(on.get(0)).rope();
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

    /** Prices of leaving pieces out that no plan pays, and a unit of money in which tables of int hold all sums. */
    private void chooseUnit() {
        long mostOpening = 0;
        double dearest = 0;
        long mostDrop = 1;
        double longest = 0;
        int shortest = items.stream()
                .flatMapToInt(item -> Arrays.stream(item.cells))
                .filter(size -> size > 0)
                .min()
                .orElse(1);
        for (Reel reel : racked) {
            mostOpening =
                    Math.max(mostOpening, DrawPrice.fixedCost(problem, reel).millis());
            StockValue value = problem.valueOn(reel);
            for (Run run : reel.runs()) {
                long room = Math.max(1, room(reel, run));
                long whole = value.of(run.length()).millis();
                dearest = Math.max(dearest, (double) whole / room);
                mostDrop = Math.max(mostDrop, whole);
                longest = Math.max(longest, (double) room);
                mostPieces = Math.max(mostPieces, room / shortest);
            }
        }
        double fixed = 2.0 * mostOpening + 2.0 * problem.prices().splitOrder().millis() + 1000;
        int largest = items.stream()
                .flatMapToInt(item -> Arrays.stream(item.cells))
                .max()
                .orElse(1);
        double gain =
                isShort ? (3 * dearest * largest + fixed) * mostPieces : 3 * dearest * longest + fixed * mostPieces;
        unit = (long) Math.ceil(Math.max(1, Math.max(gain / MOST_GAIN, (double) mostDrop / MOST_DROP)));
        dear = new int[items.size()];
        for (Item item : items) {
            int size = isShort ? largest : Arrays.stream(item.cells).max().orElse(0);
            dear[item.index] = (int) ((3 * dearest * size + fixed) / unit);
        }
    }

    private void buildReels() {
        long handling = problem.prices().handling().millis() / unit;
        Map<List<Object>, int[]> known = new HashMap<>();
        int index = 0;
        for (Reel reel : racked) {
            List<Run> sound = reel.runs();
            RunOfCells[] own = new RunOfCells[sound.size()];
            for (int j = 0; j < own.length; j++) {
                Run run = sound.get(j);
                List<Object> key =
                        List.of(run.length(), reel.rope(), reel.custody().isCustomersOwn());
                int[] drop = known.computeIfAbsent(key, any -> drops(reel, run));
                own[j] = new RunOfCells(index++, reels.size(), j, drop.length - 1, drop);
            }
            int opening = (int) (DrawPrice.fixedCost(problem, reel).millis() / unit);
            reels.add(new ReelOfRuns(reels.size(), reel.id(), opening, (int) handling, own));
        }
    }

    /** Value that leaves the rack under each load, rounded down. */
    private int[] drops(Reel reel, Run run) {
        StockValue value = problem.valueOn(reel);
        int[] drop = new int[(int) room(reel, run) + 1];
        long whole = value.of(run.length()).millis();
        for (int c = 1; c < drop.length; c++) {
            Length left = Length.max(Length.ZERO, run.length().minus(new Length(c * cell)));
            drop[c] = (int) ((whole - value.of(left).millis()) / unit);
        }
        return drop;
    }

    /** Reels of one run that are alike for every piece: there is always a best plan that loads them in falling order. */
    private void linkAlike() {
        boolean lotsMatter = !sets.isEmpty() || problem.prices().splitOrder().millis() > 0;
        Map<List<Object>, Integer> last = new HashMap<>();
        List<ReelOfRuns> byId = new ArrayList<>(reels);
        byId.sort(java.util.Comparator.comparing((ReelOfRuns reel) -> reel.id));
        for (ReelOfRuns reel : byId) {
            Reel there = racked.get(reel.index);
            if (reel.runs.length != 1) {
                continue;
            }
            List<Object> key = List.of(
                    there.rope(),
                    lotsMatter ? PlanPrice.lotOf(there) : "",
                    there.runs().get(0).length(),
                    there.custody().isCustomersOwn(),
                    DrawPrice.fixedCost(problem, there),
                    items.stream().map(item -> item.cells[reel.index]).toList());
            Integer before = last.put(key, reel.index);
            if (before != null) {
                reels.get(before).next = reel.index;
            }
        }
    }
}
