package bitterend.report;

import bitterend.demand.Assembly;
import bitterend.demand.Demanded;

/**
 * An order line behind the pieces of a plan.
 *
 * @param ordered who wants how many, when, and what the order says besides
 * @param demanded what it asks of the bench
 */
public record WorkLine(Assembly.Ordered ordered, Demanded demanded) {}
