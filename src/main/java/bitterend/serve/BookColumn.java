package bitterend.serve;

/**
 * A column of the order book that is shown.
 *
 * @param at its place in the file, from 0
 * @param name its name there
 */
public record BookColumn(int at, String name) {}
