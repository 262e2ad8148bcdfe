package bitterend.cli;

import bitterend.catalogue.BenchTools;
import bitterend.exchange.NewBench;
import bitterend.exchange.TypedFid;
import bitterend.measure.Parsed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Asks a person what the splicers of a new shop measure with. */
final class BenchQuestions {
    private final Terminal terminal;

    BenchQuestions(Terminal terminal) {
        this.terminal = terminal;
    }

    /** What the bench has; as {@code usual} where nothing is answered, or where nobody sits there to answer. */
    NewBench answered(BenchTools usual) {
        Optional<BenchTools> tools = tools(usual);
        return tools.isEmpty() ? new NewBench(usual, List.of()) : new NewBench(tools.get(), fids());
    }

    private Optional<BenchTools> tools(BenchTools usual) {
        while (true) {
            Optional<String> answer =
                    ask("Do your splicers measure with metric or inch tools? [" + usual.word() + "] ");
            if (answer.isEmpty() || answer.get().isEmpty()) {
                return answer.map(nothing -> usual);
            }
            for (BenchTools tools : BenchTools.values()) {
                if (tools.word().startsWith(answer.get().toLowerCase(Locale.ROOT))) {
                    return Optional.of(tools);
                }
            }
            terminal.err().println("Expected metric or inch.");
        }
    }

    private List<TypedFid> fids() {
        List<TypedFid> fids = new ArrayList<>();
        while (true) {
            Optional<String> answer = ask(
                    fids.isEmpty()
                            ? "Fids of your own, such as 12 mm: 95 mm + 165 mm (rope: short + long section);"
                                    + " nothing for those of practice: "
                            : "The next one, or nothing: ");
            if (answer.isEmpty() || answer.get().isEmpty()) {
                return fids;
            }
            Parsed<TypedFid> fid = TypedFid.parse(answer.get());
            fid.value().ifPresent(fids::add);
            fid.refusal().ifPresent(why -> terminal.err().println("Expected " + why + "."));
        }
    }

    private Optional<String> ask(String question) {
        return Optional.ofNullable(terminal.asking().ask(question)).map(String::strip);
    }
}
