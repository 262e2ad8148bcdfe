/** What the cutter holds in the hand: cut sheets, splice layouts and tags, as HTML, PDF and CSV. */
@NullMarked
package bitterend.report.sheet;

import org.jspecify.annotations.NullMarked;
