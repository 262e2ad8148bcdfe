package bitterend.quoting;

import bitterend.finding.Finding;

/**
 * A line of a request that has no price.
 *
 * @param line its name
 * @param why for the customer, in a sentence without a full stop
 * @param finding the same for the shop, with its place
 */
public record Lacking(String line, String why, Finding finding) {}
