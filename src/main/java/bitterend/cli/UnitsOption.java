package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.front.QuoteUnits;
import bitterend.measure.Units;
import bitterend.report.Figures;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The system that figures are printed in. */
final class UnitsOption {
    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            description = "Print in metric or imperial units; else as shop.json says.")
    private @Nullable Units units;

    Figures figures(Shop shop) {
        return new Figures(of(shop.settings().units()), shop.settings().money());
    }

    /** In which units the pages of a quote are. */
    QuoteUnits quotes(Shop shop) {
        return new QuoteUnits(figures(shop), isAsked());
    }

    /** Whether a system was asked for. */
    boolean isAsked() {
        return units != null;
    }

    /** As asked for, else the usual system. */
    Units of(Units usual) {
        return units == null ? usual : units;
    }
}
