/**
 * What a proof by cases is made of: a tree whose inner nodes ask a question of a plan and whose leaves hold whole numbers
 * that any reader can check. Engines make such trees, plan files keep them, {@code packing.check} reads them again; the
 * records here know none of the three.
 */
@NullMarked
package bitterend.packing.proof;

import org.jspecify.annotations.NullMarked;
