package bitterend.exchange;

import bitterend.catalogue.Rope;
import bitterend.finding.Nearest;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The ropes of {@code ropes.json} or {@code ropes.csv} as far as they could be read.
 *
 * @param sound those that can be used, by id
 * @param stated every id that the file states
 * @param readable whether the file could be read at all
 * @param file its name
 */
record Ropes(List<Rope> sound, Set<String> stated, boolean readable, String file) {
    static final Ropes UNREAD = new Ropes(List.of(), Set.of(), false, RopesJson.NAME);

    Ropes {
        sound = List.copyOf(sound);
        stated = Set.copyOf(stated);
    }

    /** The same without the ropes of these ids among the sound ones. */
    Ropes without(Set<String> broken) {
        return new Ropes(
                sound.stream().filter(rope -> !broken.contains(rope.id())).toList(), stated, readable, file);
    }

    /** Whether the file states a rope that cannot be used. */
    boolean isBroken(String id) {
        return readable && stated.contains(id) && find(id).isEmpty();
    }

    /** Whether a row may speak of this rope; when the file could not be read, nobody can tell. */
    boolean mayKnow(String id) {
        return !readable || stated.contains(id);
    }

    /** The rope that was probably meant, in words. */
    String hint(String id) {
        return Nearest.hint(id, stated);
    }

    Optional<Rope> find(String id) {
        return sound.stream().filter(rope -> rope.id().equals(id)).findFirst();
    }
}
