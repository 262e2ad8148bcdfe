package bitterend.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Earlier plans that a new one holds to, and sheets that it leaves on the bench or not. */
final class PlanFrom {
    @Option(
            names = "--from",
            paramLabel = "PLAN",
            description = "The number of an earlier plan, or its file: pieces stay on their reels where they may, and"
                    + " what changed is listed.")
    @Nullable
    String from;

    @Option(
            names = "--keep",
            paramLabel = "PLAN",
            description = "An earlier plan whose pieces must stay on their reels, like pins.")
    @Nullable
    String keep;

    boolean isNamed() {
        return from != null || keep != null;
    }
}
