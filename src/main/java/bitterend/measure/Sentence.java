package bitterend.measure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

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

        /** For files in these units: what was typed as it was typed. */
        default String exact(Units units) {
            return print(units);
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
        public String exact(Units units) {
            return length.text().isEmpty() ? LengthText.print(length.roundedDown(), units) : length.text();
        }
    }

    /** The thickness of a rope or a pin. */
    private record Thickness(Diameter diameter) implements Term {
        @Override
        public String print(Units units) {
            return DiameterText.print(diameter, units);
        }
    }

    /** The thickness of a rope, in metric to 0.0001 mm: what lengths are counted in. */
    private record Measure(Diameter diameter) implements Term {
        @Override
        public String print(Units units) {
            return units == Units.METRIC ? DiameterText.exact(diameter) : DiameterText.print(diameter, units);
        }
    }

    /** What a piece weighs. */
    private record Weight(Mass mass) implements Term {
        @Override
        public String print(Units units) {
            return MassText.print(mass, units);
        }

        @Override
        public String exact(Units units) {
            return MassText.full(mass, units);
        }
    }

    /** A length brought to whole steps of the tape: millimetres, or sixteenths of an inch. */
    private record Stepped(FineLength length, Step step) implements Term {
        @Override
        public String print(Units units) {
            return switch (step) {
                case NEAREST -> LengthText.tape(length, units);
                case DOWN -> LengthText.print(TapeStep.down(length, units), units);
                case UP -> LengthText.print(TapeStep.up(length, units), units);
                case UP_IN_MILLIMETRES -> units == Units.METRIC
                        ? LengthText.exact(length.roundedUp())
                        : LengthText.print(length, units);
            };
        }
    }

    private enum Step {
        NEAREST,
        DOWN,
        UP,
        UP_IN_MILLIMETRES
    }

    /** Somebody wrote it, and its value is told to 0.0001 mm. */
    private record TypedFinely(Written length) implements Term {
        @Override
        public String print(Units units) {
            return length.print(units, exact -> LengthText.print(exact, units));
        }
    }

    /** Somebody wrote it within words, and its value is told to the nearest step of the tape. */
    private record TypedInWords(Written length, String text) implements Term {
        @Override
        public String print(Units units) {
            return length.print(units, exact -> LengthText.tape(exact, units));
        }

        @Override
        public String exact(Units units) {
            return text;
        }
    }

    /** As somebody wrote it, on a page in the other system alone. */
    private record TypedInOther(Written length, String behind) implements Term {
        @Override
        public String print(Units units) {
            String text = length.inOtherThan(units);
            return text.isEmpty() ? "" : text + behind;
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

    /** A length follows as it was written, with its value to 0.0001 mm. */
    public Sentence finely(Written length) {
        return with(new TypedFinely(length));
    }

    /** How a length was written follows, and words behind it, where that is in another system than the page. */
    public Sentence inOther(Written length, String behind) {
        return length.text().isEmpty() ? this : with(new TypedInOther(length, behind));
    }

    /** A length follows that stands in somebody's words as {@code text}. */
    Sentence inWords(Written length, String text) {
        return with(new TypedInWords(length, text));
    }

    /** A thickness follows. */
    public Sentence and(Diameter diameter) {
        return with(new Thickness(diameter));
    }

    /** A thickness follows that lengths are counted in. */
    public Sentence finely(Diameter diameter) {
        return with(new Measure(diameter));
    }

    /** A mass follows. */
    public Sentence and(Mass mass) {
        return with(new Weight(mass));
    }

    /** A length follows to the nearest step of the tape. */
    public Sentence tape(FineLength length) {
        return with(new Stepped(length, Step.NEAREST));
    }

    /** A length follows that is not exceeded: the largest step of the tape that is not longer. */
    public Sentence noMoreThan(FineLength length) {
        return with(new Stepped(length, Step.DOWN));
    }

    /** A length follows that is reached: the smallest step of the tape that is not shorter. */
    public Sentence noLessThan(FineLength length) {
        return with(new Stepped(length, Step.UP));
    }

    /** A length follows as millimetres that are no less, or in inches to the nearest sixteenth. */
    public Sentence upToMillimetres(FineLength length) {
        return with(new Stepped(length, Step.UP_IN_MILLIMETRES));
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
        return exact(Units.METRIC);
    }

    /** For files of a shop in these units: what was typed as it was typed. */
    public String exact(Units units) {
        StringBuilder words = new StringBuilder();
        terms.forEach(term -> words.append(term.exact(units)));
        return words.toString();
    }

    /** The lengths in metres, in the order in which they are read. */
    public List<Length> metres() {
        return terms.stream()
                .filter(Metres.class::isInstance)
                .map(term -> ((Metres) term).length)
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
