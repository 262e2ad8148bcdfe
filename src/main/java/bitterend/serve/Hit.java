package bitterend.serve;

/**
 * Something that was looked up.
 *
 * @param what what it is
 * @param id its number
 * @param path where it is looked at
 */
public record Hit(String what, String id, String path) {}
