package bitterend.catalogue;

import java.util.List;

/**
 * How the wires of a wire rope are put together, as a row of data: 7x19 is seven strands of nineteen wires. Two of one name
 * are the same.
 *
 * @param word the word used in files and on paper; empty for one that is not stated
 * @param core the core that it always has; empty where ropes of it differ in theirs
 * @param tucked whether its strands can be opened and tucked
 * @param cautions what to know of it whenever it is cut
 * @param provenance where that comes from
 */
public record MakeUp(String word, String core, boolean tucked, List<String> cautions, Provenance provenance) {
    /** Not stated, as of every fibre rope: it forbids nothing. */
    public static final MakeUp NONE = named("");

    public MakeUp {
        cautions = List.copyOf(cautions);
    }

    /** One of which nothing but the name is known. */
    public static MakeUp named(String word) {
        return new MakeUp(word, "", true, List.of(), Provenance.ARITHMETIC);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MakeUp makeUp && makeUp.word.equals(word);
    }

    @Override
    public int hashCode() {
        return word.hashCode();
    }

    @Override
    public String toString() {
        return word;
    }
}
