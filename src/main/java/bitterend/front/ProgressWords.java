package bitterend.front;

import bitterend.measure.Cost;
import bitterend.measure.MoneyText;
import bitterend.packing.Effort;

/** How far it is, for whoever waits. */
public final class ProgressWords {
    private ProgressWords() {}

    /** How far a study is with a rope. */
    public static String scenarios(String rope, int done, int all) {
        return rope + ": " + done + " of " + all + " scenarios";
    }

    /** How far the engines are with one group of ropes, in one line; a bound of nothing says nothing. */
    public static String of(Effort.Progress progress, MoneyText money) {
        String bound = progress.bound().rounded().minor() > 0
                ? money.print(progress.bound().rounded())
                : "not known yet";
        return progress.ropes() + ": best " + money.print(progress.cost().rounded()) + ", bound " + bound
                + avoidable(progress, money)
                + (progress.unplanned() == 0 ? "" : ", " + progress.unplanned() + " not planned");
    }

    /** By how much it may at most become better; nothing where that is not known, or less than a minor unit. */
    private static String avoidable(Effort.Progress progress, MoneyText money) {
        Cost bound = progress.bound();
        Cost gap = progress.cost().minus(bound);
        return bound.rounded().minor() > 0 && gap.rounded().minor() > 0
                ? ", at most " + money.print(gap.rounded()) + " avoidable"
                : "";
    }
}
