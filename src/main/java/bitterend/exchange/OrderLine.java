package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.demand.Demanded;

/**
 * One line of an order and what it asks of the bench.
 *
 * @param assembly the line as ordered
 * @param demanded its pieces with their derivations
 */
public record OrderLine(Assembly assembly, Demanded demanded) {}
