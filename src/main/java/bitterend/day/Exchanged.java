package bitterend.day;

import bitterend.demand.Piece;
import bitterend.packing.order.EqualPieces;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Numbers that equal pieces exchange between two plans. Who was where is settled among them so that as few as possible
 * have moved.
 */
final class Exchanged {
    private final Map<String, String> before;
    private final Map<String, String> after;

    /**
     * @param before reel of each piece in the earlier plan, by id; settled in place
     * @param after the same in the new one
     */
    Exchanged(Map<String, String> before, Map<String, String> after) {
        this.before = before;
        this.after = after;
    }

    void settle(EqualPieces equals) {
        equals.sets().forEach(this::settle);
        equals.groups().forEach(group -> settle(group.stream().map(List::of).toList()));
    }

    /** Who stays as numbered stays; then a place goes to whoever is there now, the rest by number. */
    private void settle(List<List<Piece>> equals) {
        List<List<Piece>> open = equals.stream()
                .filter(each -> !reels(each, before).equals(reels(each, after)))
                .toList();
        List<List<String>> was = open.stream().map(each -> reels(each, before)).toList();
        Map<List<String>, Integer> free = new HashMap<>();
        was.forEach(places -> free.merge(places, 1, Integer::sum));
        Map<List<String>, Integer> taken = new HashMap<>();
        List<List<Piece>> moved = new ArrayList<>();
        for (List<Piece> each : open) {
            List<String> now = reels(each, after);
            if (taken.getOrDefault(now, 0) < free.getOrDefault(now, 0)) {
                taken.merge(now, 1, Integer::sum);
                was(each, now);
            } else {
                moved.add(each);
            }
        }
        Iterator<List<Piece>> next = moved.iterator();
        for (List<String> places : was) {
            if (taken.merge(places, -1, Integer::sum) < 0) {
                was(next.next(), places);
            }
        }
    }

    private void was(List<Piece> pieces, List<String> reels) {
        for (int i = 0; i < pieces.size(); i++) {
            before.put(pieces.get(i).id(), reels.get(i));
        }
    }

    private static List<String> reels(List<Piece> pieces, Map<String, String> places) {
        return pieces.stream().map(piece -> places.getOrDefault(piece.id(), "")).toList();
    }
}
