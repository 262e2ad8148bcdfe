package bitterend.catalogue;

/**
 * Rope that must stay free of any splice between two splices.
 *
 * @param suits the ropes it is for
 * @param lifting whether it holds for slings and lifting only
 * @param length how much at least
 */
public record ClearRope(Suits suits, boolean lifting, Allowance length) {}
