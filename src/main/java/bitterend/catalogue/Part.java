package bitterend.catalogue;

import org.jspecify.annotations.Nullable;

/**
 * A part that an end uses up besides rope: clips, a sleeve, twine.
 *
 * @param item what to pick
 * @param count how many
 * @param seizing the seizing that each of them makes; null for none
 */
public record Part(String item, PartCount count, @Nullable Seizing seizing) {}
