package bitterend.cli;

import picocli.CommandLine.Option;

/** Who accepts that a price leaves something out. */
final class AcceptOption {
    @Option(
            names = "--accept",
            paramLabel = "NAME",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "Who accepts that minutes or prices of fittings are missing: without, there is then no page"
                    + " for the customer. Kept in the quote.")
    private String name = "";

    String name() {
        return name.strip();
    }
}
