/** What people decide about ordered pieces once they are cut, and how far the orders have come: one class for each verb. */
@NullMarked
package bitterend.work.orders;

import org.jspecify.annotations.NullMarked;
