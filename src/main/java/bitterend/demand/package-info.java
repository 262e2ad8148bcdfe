/** Ordered assemblies become pieces: how much rope each really uses, and why. */
@NullMarked
package bitterend.demand;

import org.jspecify.annotations.NullMarked;
