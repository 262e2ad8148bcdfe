/**
 * The pattern engine: which pieces to cut together from which kind of reel, with a lower bound on the cost of any plan.
 *
 * <p>It speaks whole numbers only and knows nothing of ropes: lengths in any one unit, prices in any one unit. Column
 * generation after Gilmore and Gomory gives the bound and most of the plan; see {@link
 * bitterend.packing.patterns.PatternPacker}.
 *
 * <p>Lengths, prices, costs, plans and every bound that is claimed are {@code long}. {@code double} is for linear
 * programs: their coefficients, the methods that solve them, and whoever reads their values and duals to choose what to
 * price, to cut off, to branch on or to round. Nothing rests on such a choice being right: what is proposed is priced
 * and bounded again in {@code long}.
 */
@NullMarked
package bitterend.packing.patterns;

import org.jspecify.annotations.NullMarked;
