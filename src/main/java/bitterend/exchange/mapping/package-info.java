/** What a sheet that somebody keeps means in the words of a shop's files: headings, days, figures, ropes and ends. */
@NullMarked
package bitterend.exchange.mapping;

import org.jspecify.annotations.NullMarked;
