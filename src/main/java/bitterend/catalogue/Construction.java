package bitterend.catalogue;

import java.util.List;

/**
 * How a rope is built, as a row of data; rules ask what it can be, never what it is called. Two of one name are the same
 * construction, however much is known of either: a shop may correct what is known without making another rope of it.
 *
 * @param word the word used in files and on paper
 * @param form how it is put together
 * @param can what can be done with it
 * @param cautions what to know of it whenever it is cut
 * @param notForLifting why no sling is made of it; empty where slings are
 * @param provenance where that comes from
 */
public record Construction(
        String word, Form form, Can can, List<String> cautions, String notForLifting, Provenance provenance) {
    public Construction {
        cautions = List.copyOf(cautions);
    }

    /**
     * How it is put together.
     *
     * @param strands how many strands; 0 where that is not counted
     * @param laid whether the strands are laid, so that their direction matters
     * @param wire whether it is of wire
     * @param flat whether it is a band, whose width takes the place of a diameter
     */
    public record Form(int strands, boolean laid, boolean wire, boolean flat) {
        static final Form UNKNOWN = new Form(0, false, false, false);

        public Form {
            if (strands < 0) {
                throw new IllegalArgumentException("strands " + strands);
            }
        }
    }

    /**
     * What can be done with it.
     *
     * @param tucked whether its strands can be opened and tucked
     * @param buried whether a tail can be buried in it
     * @param knotted whether a knot in it does its work
     */
    public record Can(boolean tucked, boolean buried, boolean knotted) {
        static final Can NOTHING = new Can(false, false, false);
    }

    /** One of which nothing but the name is known, as in a plan of a shop that has taken out its row. */
    public static Construction named(String word) {
        return new Construction(word, Form.UNKNOWN, Can.NOTHING, List.of(), "", Provenance.ARITHMETIC);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Construction construction && construction.word.equals(word);
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
