package bitterend.exchange.mapping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What was answered about sheets with one set of headings, and what is asked. An answer is known by the id of its question.
 */
public final class Answers {
    private final Map<String, String> kept;
    private final Map<String, String> given;
    private final Map<String, String> doubts = new HashMap<>();
    private final Map<String, Question> asked = new LinkedHashMap<>();
    private final Map<String, String> used = new TreeMap<>();

    /**
     * @param kept those of last time, by id of the question
     * @param given those of now, which come before them
     */
    public Answers(Map<String, String> kept, Map<String, String> given) {
        this.kept = new TreeMap<>(kept);
        this.given = new TreeMap<>(given);
        this.kept.keySet().removeAll(given.keySet());
    }

    /** What was answered, without asking. */
    Optional<String> find(String id) {
        Optional<String> answer = Optional.ofNullable(given.get(id)).or(() -> kept(id));
        answer.ifPresent(text -> used.put(id, text));
        return answer;
    }

    /** What was answered last time, unless it was answered anew. */
    Optional<String> kept(String id) {
        return Optional.ofNullable(kept.get(id));
    }

    /** Forgets what was answered last time, so that it is asked again with the words why. */
    void doubt(String id, String why) {
        kept.remove(id);
        doubts.put(id, why);
    }

    /** The answer to a question, which is asked where there is none that it takes. */
    Optional<String> ask(Question question) {
        Optional<String> answer = find(question.id()).filter(question::takes);
        if (answer.isEmpty()) {
            asked.putIfAbsent(question.id(), question.since(doubts.getOrDefault(question.id(), "")));
        }
        return answer;
    }

    /** The open questions, in the order in which they came up. */
    List<Question> asked() {
        return new ArrayList<>(asked.values());
    }

    /** The answers that somebody wanted to know. */
    Map<String, String> used() {
        return new TreeMap<>(used);
    }

    /** Those of them that are of last time. */
    Map<String, String> usedOfLastTime() {
        Map<String, String> both = new TreeMap<>(used);
        both.keySet().retainAll(kept.keySet());
        return both;
    }
}
