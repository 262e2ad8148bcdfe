package bitterend.exchange;

import bitterend.buying.Shortage;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.measure.Sentence;
import java.time.LocalDate;
import java.util.List;

/** Where rope is short over the days ahead, exact and for programs. */
public final class ShortageJson {
    private ShortageJson() {}

    /**
     * The ropes in which anything is ordered.
     *
     * @param until the last day that was looked at; {@link LocalDate#MAX} for all
     */
    public static String text(LocalDate day, LocalDate until, List<Shortage> ropes) {
        return new JsonTree()
                .with("format", "bitterend/shortage/1")
                .with("day", day.toString())
                .with("until", until.equals(LocalDate.MAX) ? "" : until.toString())
                .with(
                        "ropes",
                        ropes.stream()
                                .map(rope -> new JsonTree()
                                        .with("rope", rope.rope())
                                        .with("short", LengthText.exact(rope.total()))
                                        .with(
                                                "days",
                                                rope.days().stream()
                                                        .map(ShortageJson::tree)
                                                        .toList()))
                                .toList())
                .text();
    }

    private static JsonTree tree(Shortage.Day day) {
        return new JsonTree()
                .with("cutBy", day.day().toString())
                .with("wanted", LengthText.exact(day.wanted()))
                .with("there", LengthText.exact(day.room().there()))
                .with("held", LengthText.exact(day.room().held()))
                .with("onOrder", LengthText.exact(day.room().onOrder()))
                .with("shortUpTo", LengthText.exact(day.shortUpTo()))
                .with(
                        "undone",
                        day.undone().stream()
                                .map(each -> new JsonTree()
                                        .with("piece", each.piece().id())
                                        .with(
                                                "cut",
                                                LengthText.exact(each.piece().cut()))
                                        .with("customer", each.customer()))
                                .toList())
                .with("help", (Object) day.help().stream().map(Sentence::exact).toList());
    }
}
