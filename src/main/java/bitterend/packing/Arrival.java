package bitterend.packing;

import java.time.LocalDate;

/**
 * A reel that is on order and not in the house yet: when it comes.
 *
 * @param order the shop's number for the order of reels
 * @param expected the day it is on the rack, as the supplier says
 * @param from the first day its rope is counted on: later by what its supplier is usually late
 */
public record Arrival(String order, LocalDate expected, LocalDate from) {}
