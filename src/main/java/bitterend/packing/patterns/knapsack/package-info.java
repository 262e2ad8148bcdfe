/**
 * The knapsack problems of one run: which items to take at given prices, so that what they bring less what the run loses
 * is most. Items of one rope, densest first; a bound on what can still be reached; the search depth first; and the table
 * of all loads for where that search does not end.
 *
 * <p>Loads are lengths with their cut loss, in the unit of the pattern problem; prices are whole numbers, {@code scale} of
 * them to a unit of cost, and so is all worth. No bound is ever too low: what does not divide is rounded up.
 */
@NullMarked
package bitterend.packing.patterns.knapsack;

import org.jspecify.annotations.NullMarked;
