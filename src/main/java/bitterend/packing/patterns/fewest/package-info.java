/**
 * Whether so many reels are enough, where all of them are alike and cut flat: a search whose linear program knows that every
 * piece is cut just once and that no reel wastes more than all of them may, with an exact table for its patterns and branches
 * that change nothing but limits of that table. What it denies it denies by whole numbers.
 */
@NullMarked
package bitterend.packing.patterns.fewest;

import org.jspecify.annotations.NullMarked;
