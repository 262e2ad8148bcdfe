/** Benchmarks that {@code .ci/bench} runs. */
@NullMarked
package bitterend.bench;

import org.jspecify.annotations.NullMarked;
