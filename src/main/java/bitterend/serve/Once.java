package bitterend.serve;

import java.util.HashSet;
import java.util.Set;

/** The forms that were done, by the id that the page gave to each: a second tap does nothing more. */
final class Once {
    private final Set<String> done = new HashSet<>();

    /** Whether this very form was done before; from now on it was. */
    synchronized boolean was(String form) {
        return !form.isEmpty() && !done.add(form);
    }

    /** Whether this very form was done before. */
    synchronized boolean has(String form) {
        return done.contains(form);
    }

    /** From now on it was done. */
    synchronized void note(String form) {
        done.add(form);
    }

    /** It came to nothing, so that it can be sent again. */
    synchronized void forget(String form) {
        done.remove(form);
    }
}
