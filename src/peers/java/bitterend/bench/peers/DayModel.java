package bitterend.bench.peers;

import bitterend.packing.patterns.Draw;
import java.util.List;

/** A cutting problem as a linear program of whole numbers. */
public interface DayModel {
    /** The program. */
    LinearModel program();

    /** The reels to cut by values of all variables. */
    List<Draw> draws(long[] values);

    /** Values to start from, one for each variable; none where a model takes no start. */
    default long[] start() {
        return new long[0];
    }

    /** Whether what a solver proves of the program holds for every plan of the day. */
    default boolean isWhole() {
        return true;
    }
}
