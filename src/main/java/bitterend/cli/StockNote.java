package bitterend.cli;

import bitterend.finding.CommandWord;
import bitterend.stock.Event;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Why something is booked, in the words of who books it, and under which id. */
final class StockNote {
    /** Options that change how a booking is shown, not what is booked; and who sends it. */
    private static final Set<String> SHOWN_ONLY =
            Set.of("--once", "--who", "--json", "--units", "--debug", "--html", "--pdf", "--paper", "--sure");

    @Spec(Spec.Target.MIXEE)
    @Nullable
    private CommandSpec command;

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

    /** Puts into an act who does it, and its id with the words it was asked for in. */
    UnaryOperator<Event.Act> caller(StockAccess at) {
        String own = id;
        return act ->
                own == null ? act.by(at.who()) : act.by(at.who()).withId(own).with(Event.ASKED, asked());
    }

    /** The command as it was typed, as it may be typed again. */
    String typed(String name, Set<String> without) {
        CommandSpec spec = command;
        StringBuilder typed = new StringBuilder(name);
        List<ArgSpec> said =
                spec == null ? List.of() : spec.commandLine().getParseResult().matchedArgs();
        said.stream()
                .filter(PositionalParamSpec.class::isInstance)
                .flatMap(place -> place.originalStringValues().stream())
                .forEach(word -> typed.append(' ').append(CommandWord.of(word)));
        for (ArgSpec each : said) {
            if (each instanceof OptionSpec option && !without.contains(option.longestName())) {
                boolean isWord = option.arity().max() == 0;
                for (String value : isWord ? List.of("") : option.originalStringValues()) {
                    typed.append(' ').append(option.longestName());
                    typed.append(isWord ? "" : " " + CommandWord.of(value));
                }
            }
        }
        return typed.toString();
    }

    /** The command with its words, in an order that does not depend on how they were typed. */
    private String asked() {
        CommandSpec spec = command;
        if (spec == null) {
            return "";
        }
        Set<String> words = new TreeSet<>();
        for (ArgSpec said : spec.commandLine().getParseResult().matchedArgs()) {
            if (said instanceof OptionSpec option && !SHOWN_ONLY.contains(option.longestName())) {
                words.add(option.longestName() + " " + String.join(" ", option.originalStringValues()));
            } else if (said instanceof PositionalParamSpec place
                    && place.index().min() > 0) {
                words.add(place.index().min() + " " + String.join(" ", place.originalStringValues()));
            }
        }
        return spec.name() + "; " + String.join("; ", words);
    }
}
