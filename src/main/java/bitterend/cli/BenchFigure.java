package bitterend.cli;

import bitterend.exchange.StockText;
import bitterend.measure.Length;
import bitterend.measure.Parsed;
import bitterend.stock.LedgerException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A figure from the bench: {@code 1041/3.2=16.95 m}.
 *
 * @param name the piece or the reel
 * @param length what was measured
 */
record BenchFigure(String name, Length length) {
    /** By name, each once. */
    static Map<String, Length> byName(List<BenchFigure> figures) {
        Map<String, Length> byName = new TreeMap<>();
        for (BenchFigure figure : figures) {
            if (byName.put(figure.name(), figure.length()) != null) {
                throw new LedgerException.Contradictory("two figures for " + figure.name());
            }
        }
        return byName;
    }

    private static BenchFigure read(String text, Function<String, Parsed<Length>> rule) {
        int sign = text.indexOf('=');
        if (sign < 1) {
            throw new TypeConversionException("expected a name, = and a length, such as \"1041/3.2=16.95 m\"");
        }
        Parsed<Length> length = rule.apply(text.substring(sign + 1).strip());
        return new BenchFigure(
                text.substring(0, sign).strip(),
                length.value()
                        .orElseThrow(() -> new TypeConversionException(
                                "expected " + length.refusal().orElse("a length"))));
    }

    /** Of a piece: above nothing. */
    static final class OfRope implements ITypeConverter<BenchFigure> {
        @Override
        public BenchFigure convert(String text) {
            return read(text, StockText::length);
        }
    }

    /** Of a rest: it may be nothing. */
    static final class OfRest implements ITypeConverter<BenchFigure> {
        @Override
        public BenchFigure convert(String text) {
            return read(text, StockText::allowance);
        }
    }
}
