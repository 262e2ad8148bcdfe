package bitterend.packing.search;

import java.util.Random;
import org.jspecify.annotations.Nullable;

/** One way to change a plan. */
@FunctionalInterface
interface MoveKind {
    /** A random move of this kind that keeps every hard rule; null when this draw came to nothing. */
    @Nullable
    PlaceMove draw(Snapshot bench, Random random);
}
