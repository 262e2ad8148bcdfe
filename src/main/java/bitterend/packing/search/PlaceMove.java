package bitterend.packing.search;

import bitterend.packing.model.Bench;
import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.RunOfReel;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Puts some pieces on other runs, all at once. A piece without a run is not planned. */
final class PlaceMove extends AbstractMove<Bench> {
    private final PieceToCut[] pieces;
    private final @Nullable RunOfReel[] runs;

    /** The runs belong to the pieces one by one. */
    PlaceMove(PieceToCut[] pieces, @Nullable RunOfReel[] runs) {
        this.pieces = pieces;
        this.runs = runs;
    }

    static PlaceMove of(PieceToCut piece, @Nullable RunOfReel run) {
        return new PlaceMove(new PieceToCut[] {piece}, new @Nullable RunOfReel[] {run});
    }

    @Override
    public boolean isMoveDoable(ScoreDirector<Bench> director) {
        return changesAnything();
    }

    boolean changesAnything() {
        for (int i = 0; i < pieces.length; i++) {
            if (pieces[i].getRun() != runs[i]) {
                return true;
            }
        }
        return false;
    }

    @Override
    protected PlaceMove createUndoMove(ScoreDirector<Bench> director) {
        @Nullable RunOfReel[] now = new @Nullable RunOfReel[pieces.length];
        for (int i = 0; i < pieces.length; i++) {
            now[i] = pieces[i].getRun();
        }
        return new PlaceMove(pieces, now);
    }

    @Override
    protected void doMoveOnGenuineVariables(ScoreDirector<Bench> director) {
        for (int i = 0; i < pieces.length; i++) {
            if (pieces[i].getRun() != runs[i]) {
                director.beforeVariableChanged(pieces[i], PieceToCut.RUN);
                pieces[i].setRun(runs[i]);
                director.afterVariableChanged(pieces[i], PieceToCut.RUN);
            }
        }
    }

    @Override
    public Collection<?> getPlanningEntities() {
        return List.of(pieces);
    }

    @Override
    public Collection<?> getPlanningValues() {
        Collection<@Nullable RunOfReel> values = new ArrayList<>();
        for (RunOfReel run : runs) {
            values.add(run);
        }
        return values;
    }

    @Override
    public String toString() {
        return List.of(pieces) + " to " + getPlanningValues();
    }
}
