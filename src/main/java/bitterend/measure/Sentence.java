package bitterend.measure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * A sentence in which every figure keeps its type until somebody reads it: pages print it in their units, files in
 * metric. Whoever has something to say writes it once, with lengths between the words.
 *
 * @param terms words and figures in the order in which they are read; no two texts beside each other
 */
public record Sentence(List<Term> terms) implements Comparable<Sentence> {
    /** Nothing said. */
    public static final Sentence NONE = new Sentence(List.of());

    public Sentence {
        terms = List.copyOf(terms);
    }

    /** Words, or one figure. */
    public sealed interface Term {
        /** For a page in these units. */
        String print(Units units);

        /** For files: metric, and what was typed as it was typed. */
        default String exact() {
            return print(Units.METRIC);
        }
    }

    private record Words(String text) implements Term {
        @Override
        public String print(Units units) {
            return text;
        }
    }

    /** Whole millimetres, as metres with three digits. */
    public record Metres(Length length) implements Term {
        @Override
        public String print(Units units) {
            return LengthText.print(length, units);
        }
    }

    /** To 0.0001 mm, as millimetres. */
    private record Fine(FineLength length) implements Term {
        @Override
        public String print(Units units) {
            return LengthText.print(length, units);
        }
    }

    /** Somebody wrote it. */
    private record Typed(Written length) implements Term {
        @Override
        public String print(Units units) {
            return length.print(
                    units,
                    exact -> units == Units.METRIC
                            ? LengthText.print(exact.toNearestMillimetre(), units)
                            : LengthText.print(exact, units));
        }

        @Override
        public String exact() {
            return length.text().isEmpty() ? LengthText.print(length.roundedDown(), Units.METRIC) : length.text();
        }
    }

    public static Sentence of(String words) {
        return NONE.and(words);
    }

    /** Words go on. */
    public Sentence and(String words) {
        return words.isEmpty() ? this : with(new Words(words));
    }

    /** A length in metres follows. */
    public Sentence and(Length length) {
        return with(new Metres(length));
    }

    /** A length in millimetres follows. */
    public Sentence and(FineLength length) {
        return with(new Fine(length));
    }

    /** A length follows that somebody wrote, or that is shown like one. */
    public Sentence and(Written length) {
        return with(new Typed(length));
    }

    /** Another sentence follows. */
    public Sentence and(Sentence other) {
        Sentence both = this;
        for (Term term : other.terms) {
            both = both.with(term);
        }
        return both;
    }

    /** Words between the sentences of a list. */
    public static Sentence joined(String between, Collection<Sentence> sentences) {
        Sentence all = NONE;
        boolean first = true;
        for (Sentence sentence : sentences) {
            all = (first ? all : all.and(between)).and(sentence);
            first = false;
        }
        return all;
    }

    private Sentence with(Term term) {
        List<Term> longer = new ArrayList<>(terms);
        int last = longer.size() - 1;
        if (term instanceof Words words && last >= 0 && longer.get(last) instanceof Words before) {
            longer.set(last, new Words(before.text + words.text));
        } else {
            longer.add(term);
        }
        return new Sentence(longer);
    }

    /** The same without the words that it begins with. */
    public Sentence without(String beginning) {
        if (!isEmpty() && terms.get(0) instanceof Words words && words.text.startsWith(beginning)) {
            return of(words.text.substring(beginning.length())).and(new Sentence(terms.subList(1, terms.size())));
        }
        return this;
    }

    public boolean isEmpty() {
        return terms.isEmpty();
    }

    /** For a page in these units. */
    public String print(Units units) {
        StringBuilder words = new StringBuilder();
        terms.forEach(term -> words.append(term.print(units)));
        return words.toString();
    }

    /** For files: metric, and what was typed as it was typed. */
    public String exact() {
        StringBuilder words = new StringBuilder();
        terms.forEach(term -> words.append(term.exact()));
        return words.toString();
    }

    /** The lengths in metres, in the order in which they are read. */
    public List<Length> metres() {
        return terms.stream()
                .flatMap(term -> term instanceof Metres metres ? Stream.of(metres.length) : null)
                .toList();
    }

    /** A sentence as a file keeps it: its words, and beside them the lengths that stand in them, in their order. */
    public static Sentence of(String exact, List<Length> metres) {
        Sentence read = NONE;
        int from = 0;
        for (Length length : metres) {
            int at = exact.indexOf(LengthText.print(length, Units.METRIC), from);
            if (at >= 0) {
                read = read.and(exact.substring(from, at)).and(length);
                from = at + LengthText.print(length, Units.METRIC).length();
            }
        }
        return read.and(exact.substring(from));
    }

    @Override
    public int compareTo(Sentence other) {
        return exact().compareTo(other.exact());
    }

    @Override
    public String toString() {
        return exact();
    }
}
