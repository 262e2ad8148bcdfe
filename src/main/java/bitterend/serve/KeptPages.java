package bitterend.serve;

import bitterend.report.page.Document;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Pages that were worked out, kept while the server runs: the last of them, the newest first. */
final class KeptPages {
    private static final int MOST = 20;

    private final Map<String, Kept> kept = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Kept> eldest) {
            return size() > MOST;
        }
    };

    /**
     * What was worked out once, of the files as they were then.
     *
     * @param id what an address calls it
     * @param title what it is
     * @param at when it was worked out, as people read it
     * @param pages its pages by a word each, the usual one first
     * @param ways to what it led to
     */
    record Kept(String id, String title, String at, Map<String, Document> pages, List<Way> ways) {
        Kept(String id, String title, String at, Map<String, Document> pages) {
            this(id, title, at, pages, List.of());
        }

        /** The page of a word; the usual one where there is no such page. */
        Document page(String word) {
            Document usual = pages.values().iterator().next();
            return pages.getOrDefault(word, usual);
        }
    }

    synchronized void keep(Kept page) {
        kept.put(page.id(), page);
    }

    synchronized Optional<Kept> find(String id) {
        return Optional.ofNullable(kept.get(id));
    }

    /** Ways to all of them, the newest first. */
    synchronized List<Way> ways(String path) {
        List<Way> ways = new ArrayList<>();
        kept.values().forEach(each -> ways.add(0, new Way(path + "?id=" + each.id(), each.title() + ", " + each.at())));
        return ways;
    }
}
