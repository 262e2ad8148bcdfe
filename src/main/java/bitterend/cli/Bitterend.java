package bitterend.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The root command: it only knows the others. */
@Command(
        name = Bitterend.NAME,
        synopsisSubcommandLabel = "COMMAND",
        versionProvider = Version.class,
        description = {
            "",
            "Tells a rope shop how long to cut every piece, off which reel and in what",
            "order, and what is left. Computes lengths; never certifies strength.",
            ""
        },
        optionListHeading = "Options:%n",
        commandListHeading = "%nCommands:%n",
        footer = {
            "",
            "A SHOP is a folder such as demo-data/eider-shed.",
            "\"bitterend\" stands for: java -jar target/bitterend.jar"
        })
final class Bitterend {
    static final String NAME = "bitterend";
    static final String COMPLETION = "--completion";
    static final String MAN = "--man";

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    boolean help;

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "Show the version.")
    boolean version;

    @Option(
            names = COMPLETION,
            description =
                    "Print a script that completes commands in bash:%n" + "source <(target/bitterend --completion)")
    boolean completion;

    @Option(
            names = MAN,
            description = "Print the manual page:%n" + "target/bitterend --man > bitterend.1; man ./bitterend.1")
    boolean man;
}
