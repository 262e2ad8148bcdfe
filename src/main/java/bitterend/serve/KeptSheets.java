package bitterend.serve;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** The last few sheets that browsers sent, each for the browser that sent it, until it is taken over or the program ends. */
final class KeptSheets {
    private static final int MOST = 3;

    private final Deque<KeptSheet> kept = new ArrayDeque<>();

    /** Keeps one; beyond a few the oldest goes. */
    synchronized void keep(KeptSheet sheet) {
        kept.addLast(sheet);
        if (kept.size() > MOST) {
            kept.removeFirst();
        }
    }

    synchronized Optional<KeptSheet> find(String id, String browser) {
        return kept.stream()
                .filter(sheet -> sheet.id().equals(id) && sheet.isOf(browser))
                .findFirst();
    }

    synchronized void drop(KeptSheet sheet) {
        kept.remove(sheet);
    }
}
