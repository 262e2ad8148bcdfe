/** The packing problem in the words of the bench, its rules, and the plan that answers it. Engines live in packages of their own. */
@NullMarked
package bitterend.packing;

import org.jspecify.annotations.NullMarked;
