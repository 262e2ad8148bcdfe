/**
 * Cutting days put to general solvers: models of a day in whole numbers, and the solvers of an open library that take
 * them. For the benchmark alone; never shipped.
 */
@NullMarked
package bitterend.bench.peers;

import org.jspecify.annotations.NullMarked;
