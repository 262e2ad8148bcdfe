package bitterend.serve;

/**
 * A way to another screen.
 *
 * @param path where it leads
 * @param words what it is called
 */
public record Way(String path, String words) {}
