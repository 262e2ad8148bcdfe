/** The rules of the bench for the constraint solver: one method, one price, one sentence each. */
@NullMarked
package bitterend.packing.rules;

import org.jspecify.annotations.NullMarked;
