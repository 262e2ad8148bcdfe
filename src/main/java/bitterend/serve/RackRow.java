package bitterend.serve;

/**
 * A reel in the list of the rack, every value as it is printed.
 *
 * @param id its number
 * @param rope the rope on it
 * @param lot its lot
 * @param length how much is on it
 * @param place where it stands
 * @param know what is to be known: whether it may be cut, and for whom, flaws, papers, note
 * @param worth what it is worth on the rack today
 * @param path its screen
 */
public record RackRow(
        String id, String rope, String lot, String length, String place, String know, String worth, String path) {}
