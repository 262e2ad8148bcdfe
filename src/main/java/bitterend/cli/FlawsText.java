package bitterend.cli;

import bitterend.exchange.FlawText;
import bitterend.measure.Parsed;
import bitterend.stock.Flaw;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads flaws as reels.csv writes them; nothing is no flaw. */
final class FlawsText implements ITypeConverter<FlawsText.Flaws> {
    /** The flaws of one option. */
    record Flaws(List<Flaw> list) {
        static final Flaws NONE = new Flaws(List.of());
    }

    @Override
    public Flaws convert(String text) {
        if (text.isEmpty()) {
            return Flaws.NONE;
        }
        Parsed<List<Flaw>> flaws = FlawText.parse(text);
        return flaws.map(Flaws::new)
                .value()
                .orElseThrow(() -> new TypeConversionException(
                        "expected " + flaws.refusal().orElse("flaws")));
    }
}
