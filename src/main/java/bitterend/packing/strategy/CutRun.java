package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import java.util.ArrayList;
import java.util.List;

/** A run and the pieces cut from it. */
final class CutRun {
    private final CutReel reel;
    private final int run;
    private final int number;
    private final List<Integer> pieces = new ArrayList<>();

    /** @param run its place on the reel from 0 */
    CutRun(CutReel reel, int run, int number) {
        this.reel = reel;
        this.run = run;
        this.number = number;
    }

    RunId id() {
        return new RunId(reel.reel().id(), run + 1);
    }

    CutReel reel() {
        return reel;
    }

    /** Counts the runs of the bench from 0. */
    int number() {
        return number;
    }

    int lot() {
        return reel.lot();
    }

    String rope() {
        return reel.reel().rope();
    }

    /** What is cut from it, by the number of the piece. */
    List<Integer> pieces() {
        return pieces;
    }

    RunLoad load() {
        return reel.load(run);
    }

    /** Whether it would hold a load if that were all. */
    boolean fits(RunLoad load) {
        return reel.fits(run, load);
    }

    void add(int number, Piece piece) {
        pieces.add(number);
        reel.setLoad(run, load().plus(cut(piece)));
    }

    void remove(int number, Piece piece) {
        pieces.remove(Integer.valueOf(number));
        reel.setLoad(run, load().minus(cut(piece)));
    }

    /** Cut length of a piece on this rope. */
    Length cut(Piece piece) {
        return piece.lengthOn(rope()).orElseThrow();
    }
}
