package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.exchange.ShopFolder;
import bitterend.exchange.ShopReading;
import bitterend.report.FindingsPage;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Parameters;

/** The shop folder that nearly every command begins with. */
final class ShopArgument {
    @Parameters(index = "0", paramLabel = "SHOP", description = "The shop folder, such as demo-data/small-loft.")
    Path folder = Path.of("");

    ShopReading read() {
        return ShopFolder.read(folder);
    }

    /** The shop, when it has no errors; its problems go to the error stream either way. */
    Optional<Shop> readOrComplain(Terminal terminal) {
        ShopReading reading = read();
        terminal.err().print(new FindingsPage(terminal.ink()).text(reading.findings()));
        if (reading.shop().isEmpty()) {
            terminal.err().println(FindingsPage.summary(reading.findings()) + ": nothing was planned or written.");
        }
        return reading.shop();
    }
}
