/**
 * The constraint solver at work: moves of the bench, profiles of how to look, and a search that takes a start and never
 * hands back anything worse.
 */
@NullMarked
package bitterend.packing.search;

import org.jspecify.annotations.NullMarked;
