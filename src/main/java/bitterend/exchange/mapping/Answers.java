package bitterend.exchange.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What was answered about sheets with one set of headings, and what is asked. An answer is known by the id of its question.
 */
public final class Answers {
    private final Map<String, String> given;
    private final Map<String, Question> asked = new LinkedHashMap<>();
    private final Map<String, String> used = new TreeMap<>();

    /** @param given by id of the question */
    public Answers(Map<String, String> given) {
        this.given = new TreeMap<>(given);
    }

    /** What was answered, without asking. */
    Optional<String> find(String id) {
        Optional<String> answer = Optional.ofNullable(given.get(id));
        answer.ifPresent(text -> used.put(id, text));
        return answer;
    }

    /** The answer to a question, which is asked where there is none that it takes. */
    Optional<String> ask(Question question) {
        Optional<String> answer = find(question.id()).filter(question::takes);
        if (answer.isEmpty()) {
            asked.putIfAbsent(question.id(), question);
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
}
