/** What is done with the plan of a day: it is made, asked, printed, and what was cut by it is booked. */
@NullMarked
package bitterend.work.plans;

import org.jspecify.annotations.NullMarked;
