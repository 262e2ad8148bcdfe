package bitterend.cli;

import bitterend.stock.Event;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Why something is booked, in the words of who books it, and under which id. */
final class StockNote {
    @Option(
            names = "--note",
            paramLabel = "TEXT",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "Why, in your words.")
    String text = "";

    @Option(
            names = "--once",
            paramLabel = "ID",
            converter = Typed.Words.class,
            description = "An id of your own for this booking: sent twice, it counts once.")
    @Nullable
    String id;

    /** Puts into an act who does it, and its id. */
    UnaryOperator<Event.Act> caller(StockAccess at) {
        String own = id;
        return act -> own == null ? act.by(at.who()) : act.by(at.who()).withId(own);
    }
}
