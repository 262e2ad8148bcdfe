package bitterend.stock;

import bitterend.stock.PieceAccount.Made;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Good pieces of matched sets, and which of them came off rope that does not match. */
final class SetMates {
    private final Map<String, Made> good;
    private final Map<String, String> parents;
    private final Map<String, String> lots = new HashMap<>();

    /**
     * The sets of a ledger.
     *
     * @param movements all movements, oldest first; the lot of a reel is the one that it has by the last of them
     * @param pieces what they say of pieces
     */
    SetMates(List<Movement> movements, PieceAccount pieces) {
        good = pieces.good();
        parents = Standing.parents(movements);
        for (Movement movement : movements) {
            lots.put(movement.entry().reel(), movement.entry().after().lot());
        }
    }

    /** The movements since a release that made pieces of the set off rope that does not match what was released. */
    List<Movement> cutSince(Event release) {
        List<Made> released = release.named("piece").stream()
                .flatMap(piece -> Optional.ofNullable(good.get(piece)).stream())
                .filter(made -> made.made().event() < release.number())
                .toList();
        return good.values().stream()
                .filter(made -> made.made().event() > release.number())
                .filter(made -> release.named("set").contains(bond(made).set()))
                .filter(made -> released.stream().anyMatch(each -> !isMatch(each, made)))
                .map(Made::made)
                .toList();
    }

    /**
     * The movements that made pieces of its set off other rope while a piece was away, so that it cannot come back to them.
     *
     * @param back the piece that would be good again
     * @param away the movement that took it away
     * @param releases the sets that were released
     */
    List<Movement> tornBy(Made back, long away, List<Event> releases) {
        String set = bond(back).set();
        boolean free = bond(back).match().isEmpty()
                || releases.stream()
                        .anyMatch(release -> release.number() > back.made().event()
                                && release.named("set").contains(set));
        Stream<Made> since = good.values().stream()
                .filter(made -> !free && made.made().number() > away)
                .filter(made -> bond(made).set().equals(set) && !made.piece().equals(back.piece()));
        return since.filter(made -> !isMatch(back, made)).map(Made::made).toList();
    }

    private static Ordered.Bond bond(Made made) {
        return made.made().entry().piece().ordered().bond();
    }

    private boolean isMatch(Made one, Made other) {
        Reel was = one.cut().entry().after();
        Reel is = other.cut().entry().after();
        String lot = lots.getOrDefault(was.id(), was.lot());
        boolean sameReel = received(was.id()).equals(received(is.id()));
        boolean sameLot =
                !bond(one).match().equals("reel") && !lot.isEmpty() && lot.equals(lots.getOrDefault(is.id(), is.lot()));
        return was.rope().equals(is.rope()) && (sameReel || sameLot);
    }

    /** The reel as it came, of a coil that was cut off it. */
    private String received(String reel) {
        Set<String> line = new HashSet<>();
        String first = reel;
        for (String parent = parents.get(first); parent != null && line.add(first); parent = parents.get(first)) {
            first = parent;
        }
        return first;
    }
}
