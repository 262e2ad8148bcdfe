/** Chains start, search, proof, cutting order and check into a plan. The only room that sees engines. */
@NullMarked
package bitterend.packing.strategy;

import org.jspecify.annotations.NullMarked;
