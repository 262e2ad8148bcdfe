/** What is done at the rack: reels come, are counted, corrected, cut off plan; pieces go wrong. One record for each deed. */
@NullMarked
package bitterend.work.rack;

import org.jspecify.annotations.NullMarked;
