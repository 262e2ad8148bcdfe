package bitterend.work;

import bitterend.exchange.NewShop;
import bitterend.finding.Finding;
import java.nio.file.Path;
import java.util.List;

/** Makes a new shop folder. It is empty before or not there yet, so that nothing is overwritten. */
public final class BeginShop {
    private final Path folder;

    /** @param folder the folder to make */
    public BeginShop(Path folder) {
        this.folder = folder;
    }

    /** What became of it. */
    public sealed interface Result {
        /** It is there. */
        record Begun(Path folder, NewShop shop) implements Result {}

        /** It cannot be made; nothing was written. */
        record NotBegun(List<Finding> why) implements Result {
            public NotBegun {
                why = List.copyOf(why);
            }
        }
    }

    /**
     * Makes it, all of its files or none.
     *
     * @throws java.io.UncheckedIOException when the folder cannot be written; then it is as it was
     */
    public Result begin(NewShop shop) {
        List<Finding> findings = shop.writeInto(folder);
        return findings.isEmpty() ? new Result.Begun(folder, shop) : new Result.NotBegun(findings);
    }
}
