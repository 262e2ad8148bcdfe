package bitterend.packing.bench;

import java.util.HashMap;
import java.util.Map;

/** Gives equal things one number, counted from zero in the order in which they are met. */
final class Numbering<T> {
    private final Map<T, Integer> numbers = new HashMap<>();

    int of(T thing) {
        Integer known = numbers.putIfAbsent(thing, numbers.size());
        return known == null ? numbers.size() - 1 : known;
    }

    int size() {
        return numbers.size();
    }
}
