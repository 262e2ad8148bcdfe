/** What was ordered in the past, week by week, and how a future is drawn from it. */
@NullMarked
package bitterend.history;

import org.jspecify.annotations.NullMarked;
