package bitterend.quoting;

import bitterend.measure.Length;
import bitterend.measure.Money;

/**
 * The price of one line.
 *
 * @param line what is asked for
 * @param drawn rope drawn for it: its pieces, their cut losses, and of the scrap as much as falls to its length; nothing for a
 *     customer's own rope
 * @param within freight by reel and by weight that is in its rope
 * @param alone its share of the cost of cutting all lines of its rope from new reels
 * @param buildUp its price
 */
public record LineQuote(QuoteLine line, Length drawn, FreightWithin within, Money alone, BuildUp buildUp) {}
