package bitterend.front;

import bitterend.measure.MoneyText;
import bitterend.packing.Effort;

/** How far the engines are with one group of ropes. */
public final class ProgressWords {
    private ProgressWords() {}

    /** In one line; a bound of nothing says nothing. */
    public static String of(Effort.Progress progress, MoneyText money) {
        String bound = progress.bound().rounded().minor() > 0
                ? money.print(progress.bound().rounded())
                : "not known yet";
        return progress.ropes() + ": best " + money.print(progress.cost().rounded()) + ", bound " + bound
                + (progress.unplanned() == 0 ? "" : ", " + progress.unplanned() + " not planned");
    }
}
