package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.exchange.ShopFolder;
import bitterend.exchange.ShopReading;
import bitterend.finding.Finding;
import bitterend.report.FindingsPage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Parameters;

/** The shop folder that nearly every command begins with. */
final class ShopArgument {
    @Parameters(index = "0", paramLabel = "SHOP", description = "The shop folder, such as demo-data/eider-shed.")
    Path folder = Path.of("");

    ShopReading read() {
        return ShopFolder.read(folder);
    }

    /** The shop, when it has no errors. Its errors go to the error stream; of mere warnings it is told where they stand. */
    Optional<Shop> readOrComplain(Terminal terminal) {
        ShopReading reading = read();
        String summary = FindingsPage.summary(reading.findings());
        if (reading.shop().isEmpty()) {
            List<Finding> errors =
                    reading.findings().stream().filter(Finding::isError).toList();
            terminal.err().print(new FindingsPage(terminal.ink()).text(errors));
            terminal.err().println(summary + ": nothing was planned or written.");
        } else if (!reading.findings().isEmpty()) {
            terminal.err().println(summary + "; to read all of them: bitterend check " + folder);
        }
        return reading.shop();
    }
}
