package bitterend.cli;

import bitterend.catalogue.BenchTools;
import bitterend.exchange.NewBench;
import bitterend.exchange.NewRope;
import bitterend.exchange.NewShop;
import bitterend.exchange.TypedFid;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Asks a person what a new shop is like. */
final class ShopQuestions {
    private final Terminal terminal;

    ShopQuestions(Terminal terminal) {
        this.terminal = terminal;
    }

    /** What the bench has; as {@code usual} where nothing is answered, or where nobody sits there to answer. */
    NewBench answered(BenchTools usual) {
        return new NewBench(tools(usual), fids());
    }

    /** Metric or imperial. */
    Units units(Units usual) {
        return answered(
                "What is printed, metric or imperial? [" + usual.name().toLowerCase(Locale.ROOT) + "] ",
                usual,
                text -> Stream.of(Units.values())
                        .filter(units -> units.name().startsWith(text.toUpperCase(Locale.ROOT)))
                        .findFirst()
                        .map(Parsed::of)
                        .orElse(Parsed.refused("metric or imperial")));
    }

    /** The shop's currency. */
    MoneyText money(MoneyText usual) {
        return answered("Which currency? [" + usual.currency() + "] ", usual, CurrencyText::parse);
    }

    /** Where days and figures are typed as they are; empty for the form of the files. */
    String locale() {
        return answered(
                "How are days and figures typed, by language and country, such as de-DE, en-GB or en-US?"
                        + " Nothing for 2026-03-05 and 12.5: ",
                "",
                NewShop::locale);
    }

    /** Kinds of rope to begin with. */
    List<NewRope> ropes(List<NewRope> usual) {
        return answered(
                "Which kinds of rope: " + NewRope.words() + "? [" + usual.get(0).word() + "] ",
                usual,
                NewRope::several);
    }

    private <T> T answered(String question, T usual, Function<String, Parsed<T>> rule) {
        while (true) {
            Optional<String> answer = ask(question);
            if (answer.isEmpty() || answer.get().isEmpty()) {
                return usual;
            }
            Parsed<T> parsed = rule.apply(answer.get());
            if (parsed.value().isPresent()) {
                return parsed.value().get();
            }
            terminal.err().println("Expected " + parsed.refusal().orElse("") + ".");
        }
    }

    private BenchTools tools(BenchTools usual) {
        return answered(
                "Do your splicers measure with metric or inch tools? [" + usual.word() + "] ", usual, text -> Stream.of(
                                BenchTools.values())
                        .filter(tools -> tools.word().startsWith(text.toLowerCase(Locale.ROOT)))
                        .findFirst()
                        .map(Parsed::of)
                        .orElse(Parsed.refused("metric or inch")));
    }

    private List<TypedFid> fids() {
        List<TypedFid> fids = new ArrayList<>();
        while (true) {
            Optional<TypedFid> fid = answered(
                    fids.isEmpty()
                            ? "Fids of your own, such as 12 mm: 95 mm + 165 mm (rope: short + long section);"
                                    + " nothing for those of practice: "
                            : "The next one, or nothing: ",
                    Optional.empty(),
                    text -> TypedFid.parse(text).map(Optional::of));
            if (fid.isEmpty()) {
                return fids;
            }
            fids.add(fid.get());
        }
    }

    private Optional<String> ask(String question) {
        return Optional.ofNullable(terminal.asking().ask(question)).map(String::strip);
    }
}
