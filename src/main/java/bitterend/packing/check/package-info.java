/**
 * The second opinion: every rule, length, mark, value and total of a plan derived again from the plan and what it was made
 * from. Shares no code with the engines on purpose; what looks like a repetition here is the point.
 */
@NullMarked
package bitterend.packing.check;

import org.jspecify.annotations.NullMarked;
