package bitterend.serve;

import java.util.List;

/**
 * What is still open of one kind in the evening.
 *
 * @param heading what it is
 * @param none what is said where there is none
 * @param ways each with where it is dealt with
 */
public record StillOpen(String heading, String none, List<Way> ways) {
    public StillOpen {
        ways = List.copyOf(ways);
    }
}
