package bitterend.serve;

/**
 * A reel that is to be counted: what one knows it by, and no length of the books.
 *
 * @param id its number
 * @param rope its rope
 * @param name the rope as people call it, colour and all
 * @param lot its lot
 * @param place where it should be
 * @param found what was found of it so far; empty for nothing yet
 * @param path where it is counted
 */
public record CountReel(String id, String rope, String name, String lot, String place, String found, String path) {}
