package bitterend.cli;

import bitterend.exchange.Shop;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The day that is planned, quoted or ordered for. */
final class DayOption {
    @Option(
            names = "--day",
            paramLabel = "DATE",
            converter = Typed.Day.class,
            description = "The day it is for, such as 2026-03-02; else the day in shop.json, else today.")
    private @Nullable LocalDate day;

    /** As given, else as the shop says, else today. */
    LocalDate of(Shop shop) {
        return day != null ? day : shop.day().orElseGet(() -> LocalDate.now(ZoneId.systemDefault()));
    }
}
