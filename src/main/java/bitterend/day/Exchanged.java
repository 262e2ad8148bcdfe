package bitterend.day;

import bitterend.demand.Piece;
import bitterend.packing.order.EqualPieces;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

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
        List<List<Piece>> open = new ArrayList<>(equals);
        open.removeIf(each -> reels(each, before).equals(reels(each, after)));
        List<List<String>> was = new ArrayList<>();
        open.forEach(each -> was.add(reels(each, before)));
        Predicate<List<Piece>> isThereNow = each -> was.remove(reels(each, after));
        List<List<Piece>> settled = open.stream().filter(isThereNow).toList();
        settled.forEach(each -> was(each, reels(each, after)));
        open.removeAll(settled);
        for (int i = 0; i < open.size(); i++) {
            was(open.get(i), was.get(i));
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
