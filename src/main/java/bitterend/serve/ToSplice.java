package bitterend.serve;

/**
 * A piece that is cut and waits for its ends, every value as it is printed.
 *
 * @param piece its id
 * @param due the day it is wanted
 * @param ends how its ends are made
 * @param finished how long it must come out
 */
public record ToSplice(String piece, String due, String ends, String finished) {}
