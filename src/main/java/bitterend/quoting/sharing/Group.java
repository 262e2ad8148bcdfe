package bitterend.quoting.sharing;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Some of the parties, by their places in the list.
 *
 * @param members one bit for each party
 */
record Group(int members) {
    static Group all(int parties) {
        return new Group((1 << parties) - 1);
    }

    static Group alone(int party) {
        return new Group(1 << party);
    }

    /** Every group of at least one, but not of all. */
    static List<Group> proper(int parties) {
        return IntStream.range(1, (1 << parties) - 1).mapToObj(Group::new).toList();
    }

    boolean has(int party) {
        return (members >> party & 1) == 1;
    }

    int size() {
        return Integer.bitCount(members);
    }

    IntStream places() {
        return IntStream.range(0, 31).filter(this::has);
    }
}
