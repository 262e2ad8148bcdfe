package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.PlanFolder;
import bitterend.finding.Findings;
import bitterend.packing.LengthBook;
import bitterend.packing.ReelDraw;
import bitterend.store.LoftServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Random histories of a ledger through the command line, beside a model that knows nothing of it: what is on every reel, what
 * can be taken back, and where the rope went. Some commands are killed in mid-work and sent again under the same id: they
 * must count once. Reels come, are counted, split, moved, sold, sent away; pieces are cut by a plan and without one, and
 * spoiled, cut short, made spare, given to another line, returned to the rack and delivered; the two legs of a set match by
 * lot or reel unless a person releases them; postings are taken back by event or by plan and reel; backups are put in the
 * ledger's place.
 * {@code -Dhistories=N -Doperations=N -DhistoryKills=N} make it longer, {@code -DfirstHistory=N} begins elsewhere, as
 * {@code .ci/ledger} does.
 */
final class LedgerHistoryTest {
    private static final int HISTORIES = Integer.getInteger("histories", 2);
    private static final int FIRST = Integer.getInteger("firstHistory", 0);
    private static final int OPERATIONS = Integer.getInteger("operations", 60);
    private static final int KILLS = Integer.getInteger("historyKills", 1);
    private static final String SET = "1003/1.1";
    private static final List<String> LEGS = List.of(SET + "-1", SET + "-2");
    private static final Pattern REEL = Pattern.compile(
            "\"reel\": \"([^\"]+)\",\\s+\"rope\": \"[^\"]*\",\\s+\"lot\": \"[^\"]*\",\\s+\"length\": \"([0-9]+) mm\"");

    private static final Pattern COIL =
            Pattern.compile("\"kind\": \"kept\"[\\s\\S]*?\"reel\": \\{\\s*\"reel\": \"([^\"]+)\"");
    private static final Pattern GIVEN_COIL = Pattern.compile("what is cut off is coil (\\S+),\\s+([0-9.]+)\\s+m");
    private static final Pattern RETURNED_COIL = Pattern.compile("on\\s+the\\s+rack\\s+as\\s+coil\\s+([^\\s.]+)");
    private static final Pattern HEAD = Pattern.compile("head of the ledger: [0-9a-f]+\\.([0-9]+)\\.");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void randomHistories_agreeWithTheModel() throws Exception {
        for (int seed = FIRST; seed < FIRST + HISTORIES; seed++) {
            live(shop(seed), seed);
        }
    }

    /** The same on a server; a backup comes back by way of a file, from where the ledger is carried to another loft. */
    @Test
    void randomHistoriesOnAServer_agreeWithTheModel() throws Exception {
        for (int seed = FIRST; seed < FIRST + (HISTORIES + 1) / 2; seed++) {
            Path shop = shop(seed);
            LoftServer.shared().name(shop);
            Run moved = Run.of("stock", "move-ledger", shop.toString());
            assertEquals(0, moved.code(), moved.err());
            live(shop, seed);
        }
    }

    private static void live(Path shop, int seed) throws Exception {
        History history = new History(shop, new SplittableRandom(seed));
        for (int i = 0; i < OPERATIONS; i++) {
            boolean killed = KILLS > 0 && i % Math.max(1, OPERATIONS / KILLS) == OPERATIONS / (2 * KILLS);
            history.step("seed " + seed + " step " + i, killed);
            if (i % 10 == 9) {
                history.compare("seed " + seed + " step " + i);
            }
        }
        history.compare("seed " + seed);
    }

    private Path shop(int seed) throws IOException {
        Path shop = TestShop.in(Files.createDirectory(folder.resolve("shop" + seed)))
                .path();
        Path orders = shop.resolve("orders.csv");
        List<String> rows = new ArrayList<>();
        for (String row : Files.readAllLines(orders)) {
            rows.add(row + (rows.isEmpty() ? ",match,legs" : ",,"));
        }
        rows.add("1003,1,Hollow Quay,DB12,5 m,plain,plain,1,2026-03-12,5,lot,2");
        Files.write(orders, rows);
        Run opened = Run.of("stock", "open", shop.toString());
        assertEquals(0, opened.code(), opened.err());
        Run counted = Run.of("stock", "count", shop.toString(), "R-104", "120 m");
        assertEquals(0, counted.code(), counted.err());
        return shop;
    }

    /**
     * What the model knows of one reel: its lengths and lots, the newest last, with the event that brought each; 0 when it is
     * gone.
     */
    private static final class Line {
        private final List<Long> lengths = new ArrayList<>();
        private final List<String> lots = new ArrayList<>();
        private final List<Long> events = new ArrayList<>();

        Line copy() {
            Line copy = new Line();
            copy.lengths.addAll(lengths);
            copy.lots.addAll(lots);
            copy.events.addAll(events);
            return copy;
        }

        long length() {
            return lengths.isEmpty() ? 0 : lengths.get(lengths.size() - 1);
        }

        long last() {
            return events.isEmpty() ? 0 : events.get(events.size() - 1);
        }

        String lot() {
            return lots.isEmpty() ? "" : lots.get(lots.size() - 1);
        }

        void add(long event, long length, String lot) {
            events.add(event);
            lengths.add(length);
            lots.add(lot);
        }

        void takeBack() {
            events.remove(events.size() - 1);
            lengths.remove(lengths.size() - 1);
            lots.remove(lots.size() - 1);
        }
    }

    /** A piece that is cut: off which reel, and how long. */
    private record Made(String reel, long mm) {}

    /**
     * An event of the model: the reels it touched, what it did to the accounts of the balance, the pieces that it made and
     * unmade, and by which words else it can be taken back.
     */
    private record Done(
            List<String> reels,
            Map<String, Long> accounts,
            Map<String, Made> made,
            Map<String, Made> unmade,
            List<String> words,
            Map<String, Made> spared,
            Map<String, Made> unspared) {
        Done(List<String> reels, Map<String, Long> accounts) {
            this(reels, accounts, Map.of(), Map.of(), List.of());
        }

        Done(
                List<String> reels,
                Map<String, Long> accounts,
                Map<String, Made> made,
                Map<String, Made> unmade,
                List<String> words) {
            this(reels, accounts, made, unmade, words, Map.of(), Map.of());
        }

        boolean isOfAPieceOf(Done earlier) {
            return Stream.concat(made.keySet().stream(), unmade.keySet().stream())
                    .anyMatch(piece -> earlier.made.containsKey(piece) || earlier.unmade.containsKey(piece));
        }

        /** The same event that also makes these spare pieces and takes those. */
        Done with(Map<String, Made> spare, Map<String, Made> taken) {
            return new Done(reels, accounts, made, unmade, words, spare, taken);
        }
    }

    /** All that the model knew when a backup was made. */
    private record Backup(
            Path file,
            Map<String, Line> rack,
            Map<Long, Done> done,
            Map<String, Long> accounts,
            Map<String, Made> made,
            Map<String, Made> spares,
            Map<String, Long> delivered,
            Map<Long, List<String>> releases,
            long events) {}

    private static final class History {
        private final Path shop;
        private final SplittableRandom random;
        private final TreeMap<String, Line> rack = new TreeMap<>();
        private final TreeMap<Long, Done> done = new TreeMap<>();
        private final TreeMap<String, Long> accounts = new TreeMap<>();
        private final TreeMap<String, Made> made = new TreeMap<>();
        private final TreeMap<String, Made> spares = new TreeMap<>();
        private final TreeMap<String, Long> delivered = new TreeMap<>();
        private final TreeMap<Long, List<String>> releases = new TreeMap<>();
        private final TreeMap<String, String> parents = new TreeMap<>();
        private @Nullable Backup backup;
        private String printed = "";
        private long events = 2;
        private int names;

        History(Path shop, SplittableRandom random) {
            this.shop = shop;
            this.random = random;
            touch("R-104", 120_000, "P22-118");
            touch("R-105", 220_000, "P22-119");
            accounts.put("received", 340_000L);
        }

        private void touch(String reel, long length) {
            Line line = rack.computeIfAbsent(reel, id -> new Line());
            line.add(events, length, line.lot());
        }

        private void touch(String reel, long length, String lot) {
            rack.computeIfAbsent(reel, id -> new Line()).add(events, length, lot);
        }

        private void coil(String coil, long length, String from) {
            touch(coil, length, line(from).lot());
            parents.put(coil, from);
        }

        void step(String name, boolean killed) throws Exception {
            switch (random.nextInt(26)) {
                case 0 -> receive(name, killed);
                case 1 -> count(name, killed);
                case 2 -> split(name, killed);
                case 3 -> quiet(name, killed, "hold");
                case 4 -> quiet(name, killed, "move", "bay " + random.nextInt(9));
                case 5 -> remove(name, killed);
                case 6 -> counter(name, killed);
                case 7 -> sample(name, killed);
                case 8 -> quiet(name, killed, "correct", "--lot", random.nextBoolean() ? "L" : "L" + events);
                case 9, 10 -> piece(name, killed);
                case 11 -> spoil(name, killed);
                case 12 -> post(name, killed);
                case 13 -> copy();
                case 14, 15 -> spare(name, killed);
                case 16 -> give(name, killed);
                case 17 -> back(name, killed);
                case 18 -> deliver(name, killed);
                case 19, 20 -> leg(name, killed);
                case 21 -> release(name, killed);
                default -> undo(name);
            }
        }

        /** The pieces that are ordered, and the least that each takes. */
        private static Map<String, Long> wanted() {
            Map<String, Long> wanted = new TreeMap<>();
            for (int serial = 1; serial <= 6; serial++) {
                if (serial <= 4) {
                    wanted.put("1001/1." + serial, 12_350L);
                }
                wanted.put("1002/1." + serial, 9_200L);
            }
            wanted.put("1001/2.1", 31_000L);
            return wanted;
        }

        private void piece(String name, boolean killed) throws Exception {
            List<String> open = wanted().keySet().stream()
                    .filter(piece -> !made.containsKey(piece))
                    .toList();
            if (open.isEmpty()) {
                return;
            }
            String piece = open.get(random.nextInt(open.size()));
            String reel = any();
            long was = line(reel).length();
            boolean isShort = random.nextInt(4) == 0;
            long mm = Objects.requireNonNull(wanted().get(piece)) + random.nextInt(20) - (isShort ? 1_000 : 0);
            if (book(name, killed, mm <= was && free(reel), "cut", reel, mm + " mm", "--piece", piece, "--sure")) {
                long taken = Math.min(was, mm + 10);
                touch(reel, was - taken);
                Map<String, Long> flows = new TreeMap<>(Map.of(isShort ? "spare" : "good", mm, "cut loss", taken - mm));
                Map<String, Made> cut = Map.of(isShort ? piece + " short " + events : piece, new Made(reel, mm));
                close(new Done(List.of(reel), flows, isShort ? Map.of() : cut, Map.of(), List.of())
                        .with(isShort ? cut : Map.of(), Map.of()));
            }
        }

        /** One of two legs that match by lot: the lot of a reel is the one that it has now, and a coil is rope of its reel. */
        private void leg(String name, boolean killed) throws Exception {
            String leg = LEGS.get(random.nextInt(2));
            if (made.containsKey(leg)) {
                return;
            }
            String reel = any();
            long was = line(reel).length();
            long mm = 5_000L + random.nextInt(20);
            boolean allowed = mm <= was && free(reel) && !isTornFrom(mate(leg), reel);
            if (book(name, killed, allowed, "cut", reel, mm + " mm", "--piece", leg, "--sure")) {
                long taken = Math.min(was, mm + 10);
                touch(reel, was - taken);
                close(new Done(
                        List.of(reel),
                        new TreeMap<>(Map.of("good", mm, "cut loss", taken - mm)),
                        Map.of(leg, new Made(reel, mm)),
                        Map.of(),
                        List.of()));
            }
        }

        private void release(String name, boolean killed) throws Exception {
            List<String> cut = LEGS.stream().filter(made::containsKey).toList();
            if (bookOrder(name, killed, !cut.isEmpty(), "release", SET)) {
                releases.put(events, cut);
                close(List.of(), "quiet", 0);
            }
        }

        private static String mate(String leg) {
            return LEGS.get(1 - LEGS.indexOf(leg));
        }

        /** Whether a leg that is cut would not match a reel, and nobody released the set since. */
        private boolean isTornFrom(String leg, String reel) {
            Made cut = made.get(leg);
            return cut != null && releases.tailMap(madeBy(leg), false).isEmpty() && !isMatch(cut.reel(), reel);
        }

        /** The event that made a good piece. */
        private long madeBy(String piece) {
            return done.descendingMap().entrySet().stream()
                    .filter(event -> event.getValue().made().containsKey(piece))
                    .findFirst()
                    .orElseThrow()
                    .getKey();
        }

        private boolean isMatch(String one, String other) {
            String lot = line(one).lot();
            return received(one).equals(received(other))
                    || (!lot.isEmpty() && lot.equals(line(other).lot()));
        }

        private String received(String reel) {
            String parent = parents.get(reel);
            return parent == null ? reel : received(parent);
        }

        /** Whether taking an event back would tear the set, or take from a release what it speaks of. */
        private boolean isBuiltOn(long number, Done wrong) {
            boolean spoken = releases.tailMap(number, false).values().stream()
                    .anyMatch(legs -> legs.stream().anyMatch(wrong.made()::containsKey));
            return spoken
                    || wrong.unmade().keySet().stream()
                            .filter(LEGS::contains)
                            .anyMatch(leg -> isTornBack(leg, number, wrong))
                    || (releases.containsKey(number) && isReliedOn(number));
        }

        /** A leg that would be good again, beside one that was cut since off other rope. */
        private boolean isTornBack(String leg, long away, Done wrong) {
            Made back = Objects.requireNonNull(wrong.unmade().get(leg));
            Made other = made.get(mate(leg));
            long cut = done.headMap(away, false).descendingMap().entrySet().stream()
                    .filter(event -> event.getValue().made().containsKey(leg))
                    .findFirst()
                    .orElseThrow()
                    .getKey();
            return other != null
                    && madeBy(mate(leg)) > away
                    && releases.tailMap(cut, false).isEmpty()
                    && !isMatch(back.reel(), other.reel());
        }

        /** A leg cut after a release that matches only because of it. */
        private boolean isReliedOn(long release) {
            return LEGS.stream()
                    .filter(leg -> made.containsKey(leg) && madeBy(leg) > release)
                    .anyMatch(leg -> Objects.requireNonNull(releases.get(release)).stream()
                            .filter(each -> made.containsKey(each) && madeBy(each) < release)
                            .anyMatch(each -> !isMatch(
                                    Objects.requireNonNull(made.get(each)).reel(),
                                    Objects.requireNonNull(made.get(leg)).reel())));
        }

        private void spoil(String name, boolean killed) throws Exception {
            List<String> pieces = here();
            if (pieces.isEmpty()) {
                return;
            }
            String piece = pieces.get(random.nextInt(pieces.size()));
            Made was = Objects.requireNonNull(made.get(piece));
            long back = random.nextInt(3) == 0 ? 0 : 1 + random.nextLong(was.mm());
            book(name, killed, true, "spoil", piece, "--back", back + " mm", "--json");
            List<String> reels = new ArrayList<>(List.of(was.reel()));
            touch(was.reel(), line(was.reel()).length());
            if (back > 0) {
                Matcher coil = COIL.matcher(printed);
                assertTrue(coil.find(), printed);
                reels.add(coil.group(1));
                coil(coil.group(1), back, was.reel());
            }
            Map<String, Long> flows = new TreeMap<>(Map.of("good", -was.mm(), "spoiled", was.mm() - back));
            close(new Done(reels, flows, Map.of(), Map.of(piece, was), List.of()));
        }

        /** Good pieces that are not delivered. */
        private List<String> here() {
            return made.keySet().stream()
                    .filter(piece -> !delivered.containsKey(piece))
                    .toList();
        }

        private void spare(String name, boolean killed) throws Exception {
            List<String> pieces = here();
            if (pieces.isEmpty()) {
                return;
            }
            String piece = pieces.get(random.nextInt(pieces.size()));
            Made was = Objects.requireNonNull(made.get(piece));
            bookOrder(name, killed, true, "spare", piece);
            touch(was.reel(), line(was.reel()).length());
            Map<String, Long> flows = new TreeMap<>(Map.of("good", -was.mm(), "spare", was.mm()));
            close(new Done(List.of(was.reel()), flows, Map.of(), Map.of(piece, was), List.of())
                    .with(Map.of(piece + " spare " + events, was), Map.of()));
        }

        /** To an open piece of the line of 9.2 m; what is cut off is a coil or scrap, as the answer says. */
        private void give(String name, boolean killed) throws Exception {
            List<String> open = wanted().keySet().stream()
                    .filter(piece -> piece.startsWith("1002/") && !made.containsKey(piece))
                    .toList();
            if (spares.isEmpty() || open.isEmpty()) {
                return;
            }
            String from = List.copyOf(spares.keySet()).get(random.nextInt(spares.size()));
            String to = open.get(random.nextInt(open.size()));
            Made was = Objects.requireNonNull(spares.get(from));
            long needed = 9_200;
            if (line(was.reel()).length() == 0 || !free(was.reel())) {
                return;
            }
            if (!bookOrder(name, killed, was.mm() >= needed, "give", from, to)) {
                return;
            }
            List<String> reels = new ArrayList<>(List.of(was.reel()));
            touch(was.reel(), line(was.reel()).length());
            long surplus = was.mm() - needed;
            long kept = 0;
            Matcher coil = GIVEN_COIL.matcher(printed);
            if (coil.find()) {
                kept = Math.round(Double.parseDouble(coil.group(2)) * 1_000);
                reels.add(coil.group(1));
                coil(coil.group(1), kept, was.reel());
            }
            Map<String, Long> flows =
                    new TreeMap<>(Map.of("spare", -was.mm(), "good", needed, "scrap", surplus - kept));
            close(new Done(reels, flows, Map.of(to, new Made(was.reel(), needed)), Map.of(), List.of())
                    .with(Map.of(), Map.of(from, was)));
        }

        private void back(String name, boolean killed) throws Exception {
            if (spares.isEmpty()) {
                return;
            }
            String from = List.copyOf(spares.keySet()).get(random.nextInt(spares.size()));
            Made was = Objects.requireNonNull(spares.get(from));
            bookOrder(name, killed, true, "back", from);
            Matcher coil = RETURNED_COIL.matcher(printed);
            assertTrue(coil.find(), printed);
            touch(was.reel(), line(was.reel()).length());
            coil(coil.group(1), was.mm(), was.reel());
            close(new Done(List.of(was.reel(), coil.group(1)), new TreeMap<>(Map.of("spare", -was.mm())))
                    .with(Map.of(), Map.of(from, was)));
        }

        private void deliver(String name, boolean killed) throws Exception {
            List<String> pieces = here();
            if (pieces.isEmpty()) {
                return;
            }
            String piece = pieces.get(random.nextInt(pieces.size()));
            String order = piece.substring(0, piece.indexOf('/'));
            bookOrder(name, killed, true, "deliver", order, "--piece", piece, "--unpassed");
            delivered.put(piece, events);
            close(List.of(), "quiet", 0);
        }

        /** One reel of a new plan, as its book says; the book itself is checked elsewhere. */
        private void post(String name, boolean killed) throws Exception {
            Run planned = Run.of("plan", shop.toString(), "--time", "200ms", "--json");
            assertTrue(planned.code() == 0 || planned.code() == 4, name + planned.err());
            Matcher head =
                    HEAD.matcher(Run.of("stock", "export", shop.toString()).err());
            assertTrue(head.find(), name);
            events = Long.parseLong(head.group(1));
            PlanFolder plans = new PlanFolder(shop);
            List<Integer> numbers = plans.numbers();
            PlanFolder.Kept kept =
                    plans.read(numbers.get(numbers.size() - 1), new Findings()).orElseThrow();
            List<ReelDraw> draws = kept.document().plan().draws();
            if (draws.isEmpty()) {
                return;
            }
            ReelDraw draw = draws.get(random.nextInt(draws.size()));
            String number = Integer.toString(kept.document().number());
            book(name, killed, true, "post", "--plan", number, "--reel", draw.reel());
            LengthBook book = draw.book();
            long trims = book.leadTrim().plus(book.flaws()).plus(book.scrap()).mm();
            boolean stays = draw.leftOnReel().isPositive();
            long wraps = book.innerWraps().mm();
            touch(draw.reel(), stays ? draw.leftOnReel().mm() + wraps : 0);
            Map<String, Long> flows = new TreeMap<>(Map.of(
                    "good", book.pieces().mm(), "cut loss", book.cutLoss().mm(), "scrap", trims + (stays ? 0 : wraps)));
            Map<String, Made> pieces = new TreeMap<>();
            draw.cuts()
                    .forEach(cut -> pieces.put(
                            cut.piece(), new Made(draw.reel(), cut.length().mm())));
            List<String> words = List.of("--plan", number, "--reel", draw.reel());
            close(new Done(List.of(draw.reel()), flows, pieces, Map.of(), words));
        }

        /** A backup, and later that in the place of the ledger. */
        private void copy() throws IOException {
            Backup old = backup;
            if (old == null) {
                Path file = shop.resolveSibling("backup" + names++ + ".db");
                assertEquals(
                        0,
                        Run.of("stock", "backup", shop.toString(), file.toString())
                                .code());
                backup = new Backup(
                        file,
                        copyOf(rack),
                        Map.copyOf(done),
                        Map.copyOf(accounts),
                        Map.copyOf(made),
                        Map.copyOf(spares),
                        Map.copyOf(delivered),
                        Map.copyOf(releases),
                        events);
                return;
            }
            boolean served = !Files.exists(shop.resolve("stock.db"));
            if (served) {
                assertEquals(
                        0,
                        Run.of("stock", "move-ledger", shop.toString(), "--to-file")
                                .code());
                LoftServer.forget(shop);
            }
            Run restored =
                    Run.of("stock", "restore", shop.toString(), old.file().toString());
            assertEquals(0, restored.code(), restored.err());
            if (served) {
                LoftServer.shared().name(shop);
                assertEquals(0, Run.of("stock", "move-ledger", shop.toString()).code());
            }
            rack.clear();
            rack.putAll(copyOf(old.rack()));
            done.clear();
            done.putAll(old.done());
            accounts.clear();
            accounts.putAll(old.accounts());
            made.clear();
            made.putAll(old.made());
            spares.clear();
            spares.putAll(old.spares());
            delivered.clear();
            delivered.putAll(old.delivered());
            releases.clear();
            releases.putAll(old.releases());
            events = old.events() + 1;
            backup = null;
        }

        private static Map<String, Line> copyOf(Map<String, Line> rack) {
            Map<String, Line> copy = new TreeMap<>();
            rack.forEach((reel, line) -> copy.put(reel, line.copy()));
            return copy;
        }

        private Line line(String reel) {
            return Objects.requireNonNull(rack.get(reel), reel);
        }

        private String any() {
            List<String> ids = List.copyOf(rack.keySet());
            return ids.get(random.nextInt(ids.size()));
        }

        private void receive(String name, boolean killed) throws Exception {
            String reel = "N" + names++;
            long mm = 1_000L + random.nextInt(90_000);
            if (book(name, killed, true, "receive", reel, "DB12", mm + " mm")) {
                touch(reel, mm);
                close(List.of(reel), "received", mm);
            }
        }

        private void count(String name, boolean killed) throws Exception {
            String reel = any();
            Line line = line(reel);
            long mm = Math.max(1, line.length() - 500 + random.nextInt(1_000));
            long was = line.length();
            if (book(name, killed, was > 0, "count", reel, mm + " mm")) {
                touch(reel, mm);
                close(List.of(reel), "differences", mm - was);
            }
        }

        private void split(String name, boolean killed) throws Exception {
            String reel = any();
            long was = line(reel).length();
            long mm = 1L + random.nextInt(5_000);
            String coil = reel.substring(0, Math.min(30, reel.length())) + "s" + names++;
            if (book(name, killed, mm < was, "split", reel, mm + " mm", coil)) {
                touch(reel, was - mm);
                coil(coil, mm, reel);
                close(List.of(reel, coil), "split", 0);
            }
        }

        private void quiet(String name, boolean killed, String command, String... words) throws Exception {
            String reel = any();
            long was = line(reel).length();
            List<String> all = new ArrayList<>(List.of(command, reel));
            all.addAll(List.of(words));
            int lot = all.indexOf("--lot") + 1;
            boolean says = lot > 0 && all.get(lot).equals(line(reel).lot());
            if (book(name, killed, was > 0 && !says, all.toArray(String[]::new))) {
                touch(reel, was, lot > 0 ? all.get(lot) : line(reel).lot());
                close(List.of(reel), "quiet", 0);
            }
            if (command.equals("hold") && was > 0) {
                quiet(name + " released", false, "release");
            }
        }

        private void remove(String name, boolean killed) throws Exception {
            String reel = any();
            long was = line(reel).length();
            String[] commands = {"sell", "condemn", "return", "send"};
            String[] names = {"sold", "condemned", "returned", "sent"};
            int which = random.nextInt(4);
            List<String> words = new ArrayList<>(List.of(commands[which], reel));
            if (which == 3) {
                words.add("the other loft");
            }
            if (random.nextInt(3) == 0 && book(name, killed, was > 0, words.toArray(String[]::new))) {
                touch(reel, 0);
                close(List.of(reel), names[which], was);
            }
        }

        private void counter(String name, boolean killed) throws Exception {
            String reel = any();
            long was = line(reel).length();
            long mm = 1L + random.nextInt(9_000);
            if (book(name, killed, mm <= was && free(reel), "cut", reel, mm + " mm", "--for", "Ferry Co")) {
                long taken = Math.min(was, mm + 10);
                touch(reel, was - taken);
                Map<String, Long> flows = new TreeMap<>();
                flows.put("sold", mm);
                flows.put("cut loss", taken - mm);
                close(List.of(reel), flows);
            }
        }

        private void sample(String name, boolean killed) throws Exception {
            String reel = any();
            long was = line(reel).length();
            long mm = 1L + random.nextInt(900);
            if (book(name, killed, mm <= was && free(reel), "cut", reel, mm + " mm", "--sample", "test")) {
                long taken = Math.min(was, mm + 10);
                touch(reel, was - taken);
                close(List.of(reel), "scrap", taken);
            }
        }

        /** Whether a reel may be cut; a hold that was left by an undo is known by asking. */
        private boolean free(String reel) {
            String list =
                    Run.of("stock", "list", shop.toString(), "--json", "--all").out();
            return !list.replaceAll("(?s).*\"reel\": \"" + reel + "\",(.*?)\"place\".*", "$1")
                    .contains("on hold");
        }

        private void undo(String name) throws Exception {
            if (done.isEmpty()) {
                return;
            }
            List<Long> numbers = List.copyOf(done.keySet());
            long number = numbers.get(numbers.size() - 1 - random.nextInt(Math.min(4, numbers.size())));
            Done wrong = Objects.requireNonNull(done.get(number));
            boolean madeAgain =
                    done.tailMap(number, false).values().stream().anyMatch(later -> later.isOfAPieceOf(wrong));
            boolean sent = wrong.made().keySet().stream().anyMatch(delivered::containsKey);
            boolean last = !madeAgain
                    && !sent
                    && !isBuiltOn(number, wrong)
                    && wrong.reels().stream().allMatch(reel -> line(reel).last() == number);
            List<String> words = new ArrayList<>(List.of("undo"));
            words.addAll(last && random.nextBoolean() ? wrong.words() : List.of());
            if (words.size() == 1) {
                words.add("" + number);
            }
            if (book(name, false, last, words.toArray(String[]::new))) {
                made.keySet().removeAll(wrong.made().keySet());
                made.putAll(wrong.unmade());
                spares.keySet().removeAll(wrong.spared().keySet());
                spares.putAll(wrong.unspared());
                delivered.values().removeIf(event -> event == number);
                releases.remove(number);
                wrong.reels().forEach(reel -> line(reel).takeBack());
                wrong.accounts().forEach((account, mm) -> accounts.merge(account, -mm, Long::sum));
                done.remove(number);
            }
        }

        private void close(List<String> reels, String account, long mm) {
            Map<String, Long> flows = new TreeMap<>();
            flows.put(account, mm);
            close(reels, flows);
        }

        private void close(List<String> reels, Map<String, Long> flows) {
            close(new Done(reels, flows));
        }

        private void close(Done event) {
            event.accounts().forEach((account, mm) -> accounts.merge(account, mm, Long::sum));
            made.putAll(event.made());
            made.keySet().removeAll(event.unmade().keySet());
            spares.putAll(event.spared());
            spares.keySet().removeAll(event.unspared().keySet());
            done.put(events, event);
        }

        /** Books something; whether it was booked is what the model expects. */
        private boolean book(String name, boolean killed, boolean expected, String... words) throws Exception {
            return book("stock", name, killed, expected, words);
        }

        private boolean bookOrder(String name, boolean killed, boolean expected, String... words) throws Exception {
            return book("orders", name, killed, expected, words);
        }

        private boolean book(String group, String name, boolean killed, boolean expected, String... words)
                throws Exception {
            List<String> all = new ArrayList<>(List.of(group, words[0], shop.toString()));
            all.addAll(List.of(words).subList(1, words.length));
            all.add("--once");
            all.add(name);
            if (killed) {
                kill(all);
            }
            Run run = Run.of(all.toArray(String[]::new));
            assertEquals(expected ? 0 : 3, run.code(), name + ": " + all + "\n" + run.err());
            assertFalse(run.err().contains("Exception"), run.err());
            printed = run.out();
            events += expected ? 1 : 0;
            return expected;
        }

        private void kill(List<String> words) throws Exception {
            List<String> command = new ArrayList<>(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:TieredStopAtLevel=1",
                    "-Dorg.sqlite.tmpdir=" + shop.getParent(),
                    "-cp",
                    System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                    "bitterend.cli.Main"));
            command.addAll(words);
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            process.waitFor(random.nextInt(1_500), TimeUnit.MILLISECONDS);
            process.destroyForcibly();
            assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        }

        /** The rack reel by reel, the equation account by account, and the ledger's own opinion. */
        void compare(String name) {
            TreeMap<String, Long> mine = new TreeMap<>();
            rack.forEach((reel, line) -> {
                if (line.length() > 0) {
                    mine.put(reel, line.length());
                }
            });
            TreeMap<String, Long> theirs = new TreeMap<>();
            Matcher reels = REEL.matcher(
                    Run.of("stock", "list", shop.toString(), "--json").out());
            while (reels.find()) {
                theirs.put(reels.group(1), Long.parseLong(reels.group(2)));
            }
            assertEquals(mine, theirs, name);
            Run verified = Run.of("stock", "verify", shop.toString(), "--json");
            assertEquals(0, verified.code(), name + verified.err());
            long sum = mine.values().stream().mapToLong(Long::longValue).sum();
            assertAccount(name, verified.out(), "rack", sum);
            for (String account : List.of(
                    "received",
                    "differences",
                    "good",
                    "spare",
                    "spoiled",
                    "sold",
                    "condemned",
                    "returned",
                    "sent",
                    "cut loss",
                    "scrap")) {
                assertAccount(name, verified.out(), account, accounts.getOrDefault(account, 0L));
            }
        }

        private static void assertAccount(String name, String json, String account, long mm) {
            assertTrue(
                    json.contains("\"" + account + "\": \"" + mm + " mm\""), name + ": " + account + " " + mm + json);
        }
    }
}
