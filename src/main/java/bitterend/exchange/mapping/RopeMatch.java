package bitterend.exchange.mapping;

import bitterend.catalogue.Rope;
import bitterend.finding.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Meets a rope in somebody's words with the ropes of the shop; where two fit, or a word means nothing, it is asked. */
final class RopeMatch {
    private static final String ONE_OF_SIZE = " is met by its size alone.";
    private static final int MOST_CHOICES = 6;

    private final List<Rope> ropes;
    private final Answers answers;

    RopeMatch(List<Rope> ropes, Answers answers) {
        this.ropes = List.copyOf(ropes);
        this.answers = answers;
    }

    /** Whether a text is the id or the name of a rope, whatever its blanks and signs. */
    boolean isExact(String text) {
        return exact(text).isPresent();
    }

    /** Whether a text means one rope of the shop, without asking. */
    boolean isSure(String text) {
        RopeWords words = RopeWords.of(text);
        return isExact(text)
                || ropes.stream()
                                .filter(rope -> words.mayMean(rope) && words.isSure(rope))
                                .count()
                        == 1;
    }

    private Optional<Rope> exact(String text) {
        String bare = bare(text);
        List<Rope> same = ropes.stream()
                .filter(rope -> rope.id().equals(text))
                .findFirst()
                .map(List::of)
                .orElseGet(() -> ropes.stream()
                        .filter(rope -> bare(rope.id()).equals(bare)
                                || bare(rope.name()).equals(bare))
                        .toList());
        return same.size() == 1 ? Optional.of(same.get(0)) : Optional.empty();
    }

    private static String bare(String text) {
        return TradeWords.plain(text).replace(" ", "");
    }

    /** The rope, {@value Question#LEFT_OUT}, or nothing while it is asked. */
    Optional<String> of(String text) {
        Optional<Rope> exact = exact(text);
        if (exact.isPresent()) {
            return exact.map(Rope::id);
        }
        List<Rope> named = ropes.stream()
                .filter(rope -> (" " + TradeWords.plain(text) + " ").contains(" " + TradeWords.plain(rope.id()) + " "))
                .toList();
        RopeWords words = RopeWords.of(named.size() == 1 ? without(text, named.get(0)) : text);
        if (named.size() == 1 && words.isOf(named.get(0))) {
            return Optional.of(named.get(0).id());
        }
        List<Rope> able = ropes.stream()
                .filter(rope -> words.mayMean(rope) || named.contains(rope))
                .toList();
        List<Rope> sure = able.stream().filter(words::isSure).toList();
        if (sure.size() == 1) {
            return Optional.of(sure.get(0).id());
        }
        List<String> choices = new ArrayList<>(Stream.concat(sure.stream(), able.stream())
                .map(Rope::id)
                .distinct()
                .limit(MOST_CHOICES)
                .toList());
        if (choices.isEmpty()) {
            List<String> ids = ropes.stream().map(Rope::id).toList();
            Nearest.of(text, ids)
                    .ifPresentOrElse(
                            choices::add, () -> ids.stream().limit(MOST_CHOICES).forEach(choices::add));
        }
        choices.add(Question.LEFT_OUT);
        return answers.find(id(text))
                .filter(this::isKnown)
                .or(() -> answers.ask(question(text, choices)
                        .since(
                                words.isSizeAlone() && able.size() == 1
                                        ? able.get(0).id() + ONE_OF_SIZE
                                        : "")));
    }

    private boolean isKnown(String answer) {
        return answer.equals(Question.LEFT_OUT) || find(answer).isPresent();
    }

    private static Question question(String text, List<String> choices) {
        return new Question(
                id(text), "Which rope is \"" + text + "\"? One of these, or the id of another.", choices, false);
    }

    private static String without(String text, Rope rope) {
        return (" " + TradeWords.plain(text) + " ")
                .replace(" " + TradeWords.plain(rope.id()) + " ", " ")
                .strip();
    }

    private static String id(String text) {
        return "rope " + text;
    }

    Optional<Rope> find(String id) {
        return ropes.stream().filter(rope -> rope.id().equals(id)).findFirst();
    }
}
