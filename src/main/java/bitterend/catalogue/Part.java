package bitterend.catalogue;

/**
 * A part that an end uses up besides rope: clips, a sleeve, twine.
 *
 * @param item what to pick
 * @param count how many
 */
public record Part(String item, PartCount count) {}
