package bitterend.cli;

import bitterend.exchange.AnswerJson;
import bitterend.exchange.Settings;
import bitterend.measure.Units;
import bitterend.serve.Listening;
import bitterend.serve.Secured;
import bitterend.serve.ShopServer;
import bitterend.work.ShopAccess;
import bitterend.work.ShopNow;
import java.io.Console;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code serve SHOP}: the page in the browser. */
@Command(
        name = "serve",
        header = "Serves the page of the shop to a browser, until Ctrl-C.",
        description = {
            "",
            "For the shop's own machine; with --listen for tablets in the loft, too: each is",
            "paired once, with a code that is printed here. Needs no network beyond the loft.",
            ""
        },
        sortOptions = false)
final class ServeCommand implements Callable<Integer> {
    private static final long PAUSE_MILLIS = 100;

    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "7411",
            description = "Port to serve at; 0 for any that is free. Default: ${DEFAULT-VALUE}.")
    private int port;

    @Option(
            names = "--listen",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            converter = Address.class,
            description = "Address of this machine to serve at. Default: ${DEFAULT-VALUE}, for this machine alone.")
    private InetAddress listen = InetAddress.getLoopbackAddress();

    @Option(
            names = "--keystore",
            paramLabel = "FILE",
            description =
                    "Serve over https with the key in this PKCS 12 file. Its password is taken from the environment,"
                            + " BITTEREND_KEYSTORE_PASSWORD, else asked for.")
    private @Nullable Path keystore;

    @Option(names = "--open", description = "Open it in the browser of this machine.")
    private boolean open;

    @Option(
            names = "--for",
            paramLabel = "TIME",
            converter = DurationText.class,
            description = "End by itself after so long, such as 600m.")
    private @Nullable Duration lasts;

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    ServeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        ShopAccess access = shop.access();
        Units printed = units.of(access.settings().map(Settings::units).orElse(Units.METRIC));
        Listening at = new Listening(listen, port, keystore == null ? null : Secured.of(keystore, password()));
        CompletableFuture<ShopServer> starting = CompletableFuture.supplyAsync(() -> started(access, at, printed));
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            starting.thenAccept(ShopServer::close).exceptionally(fault -> null).join();
            return ExitCode.BAD_INPUT.number();
        }
        long begun = System.nanoTime();
        try (Interrupt interrupt = Interrupt.listening(terminal, "the page of the shop was there");
                ShopServer server = there(starting)) {
            interrupt.begin("the pages of the shop are closed");
            tell(server.url(), at.isLoopback() ? "" : server.pairingCode());
            if (open && !OpenedBrowser.at(server.url())) {
                terminal.err().println("There is no command here that opens a browser: type the address into one.");
            }
            while (!interrupt.isAsked() && !isOver(begun)) {
                Thread.sleep(PAUSE_MILLIS);
            }
        }
        return ExitCode.DONE.number();
    }

    /** The server gets ready while the files are read: both take about a second. */
    private ShopServer started(ShopAccess access, Listening at, Units printed) {
        try {
            return ShopServer.start(access, at, printed, terminal.err());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static ShopServer there(CompletableFuture<ShopServer> starting) throws IOException {
        try {
            return starting.join();
        } catch (CompletionException fault) {
            if (fault.getCause() instanceof UncheckedIOException cannot) {
                throw cannot.getCause();
            }
            throw fault;
        }
    }

    /** From JDK 22 on there is a console without a terminal, too: it reads nothing, and that is no password either. */
    @SuppressWarnings("SystemConsoleNull")
    private static String password() {
        String set = System.getenv("BITTEREND_KEYSTORE_PASSWORD");
        Console console = System.console();
        char[] typed = set != null || console == null ? null : console.readPassword("Password of the key store: ");
        return set != null ? set : typed == null ? "" : new String(typed);
    }

    private void tell(String url, String code) {
        if (common.json) {
            terminal.out().print(AnswerJson.serving(url, code));
        } else {
            terminal.out().println("The page of the shop: " + url);
            if (!code.isEmpty()) {
                terminal.out().println("Code that pairs one device, for ten minutes: " + code);
                terminal.out().println("A code for one more: on this machine, " + url + "pair");
            }
            terminal.out().println("Ctrl-C ends it.");
        }
        terminal.out().flush();
    }

    private boolean isOver(long begun) {
        return lasts != null && System.nanoTime() - begun >= lasts.toNanos();
    }

    static final class Address implements ITypeConverter<InetAddress> {
        @Override
        public InetAddress convert(String text) {
            Optional<InetAddress> address = Listening.address(text);
            return address.orElseThrow(() -> new TypeConversionException(
                    "found \"" + text + "\", expected an address of this machine in figures, such as 192.168.1.20"));
        }
    }
}
