package bitterend.cli;

import picocli.CommandLine.Option;

/** Why something is booked, in the words of who books it. */
final class StockNote {
    @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "Why, in your words.")
    String text = "";
}
