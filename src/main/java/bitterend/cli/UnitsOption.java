package bitterend.cli;

import bitterend.exchange.Shop;
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
    @Nullable
    Units units;

    Figures figures(Shop shop) {
        return new Figures(
                units == null ? shop.settings().units() : units, shop.settings().money());
    }
}
