/** What is bought, quoted and learned: questions of the purchaser and the estimator, one class for each. */
@NullMarked
package bitterend.work.trade;

import org.jspecify.annotations.NullMarked;
