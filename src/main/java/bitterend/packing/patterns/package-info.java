/**
 * The pattern engine: which pieces to cut together from which kind of reel, with a lower bound on the cost of any plan.
 *
 * <p>It speaks whole numbers only and knows nothing of ropes: lengths in any one unit, prices in any one unit. Column
 * generation after Gilmore and Gomory gives the bound and most of the plan; see {@link
 * bitterend.packing.patterns.PatternPacker}. {@code double} lives in {@code Simplex}, {@code Lu} and {@code Master}
 * only; what they propose is priced and bounded again in {@code long}.
 */
@NullMarked
package bitterend.packing.patterns;

import org.jspecify.annotations.NullMarked;
