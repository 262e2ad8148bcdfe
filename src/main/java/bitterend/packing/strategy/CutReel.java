package bitterend.packing.strategy;

import bitterend.demand.Piece.Bond;
import bitterend.packing.DrawPrice;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import java.util.Arrays;

/** A reel and what is cut from each of its runs. */
final class CutReel {
    private final Reel reel;
    private final int number;
    private final int lot;
    private final DrawPrice price;
    private final RunLoad[] loads;
    private final String lotOfRope;

    /** @param lot number of its lot, which is of one rope */
    CutReel(Reel reel, int number, int lot, DrawPrice price) {
        this.reel = reel;
        this.number = number;
        this.lot = lot;
        this.price = price;
        loads = new RunLoad[price.runs().size()];
        Arrays.fill(loads, RunLoad.NONE);
        lotOfRope = PlanPrice.holderOf(Bond.ONE_LOT, reel);
    }

    Reel reel() {
        return reel;
    }

    int number() {
        return number;
    }

    int lot() {
        return lot;
    }

    String holderOf(Bond bond) {
        return bond == Bond.ONE_REEL ? reel.id() : lotOfRope;
    }

    RunLoad load(int run) {
        return loads[run];
    }

    void setLoad(int run, RunLoad load) {
        loads[run] = load;
    }

    boolean fits(int run, RunLoad load) {
        return load.fits(price.runs().get(run).length(), price.loss());
    }

    /** The price of the draw as it is, in 1/1000 minor unit. */
    long millis() {
        return price.of(loads).millis();
    }
}
