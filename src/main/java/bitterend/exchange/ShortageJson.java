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
        return tree(day, until, ropes).text();
    }

    /** The same as part of another answer. */
    static JsonTree tree(LocalDate day, LocalDate until, List<Shortage> ropes) {
        return new JsonTree()
                .with("format", "bitterend/shortage/1")
                .with("day", day.toString())
                .with("until", until.equals(LocalDate.MAX) ? "" : until.toString())
                .with("ropes", ropes.stream().map(ShortageJson::tree).toList());
    }

    private static JsonTree tree(Shortage rope) {
        return with(new JsonTree().with("rope", rope.rope()).with("short", LengthText.exact(rope.total())), rope.all())
                .with("days", rope.days().stream().map(ShortageJson::tree).toList());
    }

    private static JsonTree with(JsonTree tree, Shortage.Room room) {
        return tree.with("there", LengthText.exact(room.there()))
                .with("held", LengthText.exact(room.held()))
                .with("onOrder", LengthText.exact(room.onOrder()));
    }

    private static JsonTree tree(Shortage.Day day) {
        return with(
                        new JsonTree()
                                .with("cutBy", day.day().toString())
                                .with("wanted", LengthText.exact(day.wanted())),
                        day.room())
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
