package bitterend.serve;

import bitterend.Folders;
import bitterend.store.SqliteLedgerPlace;
import bitterend.work.ShopAccess;
import bitterend.work.rack.BeginLedger;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** A copy of a demo loft, served by a process of its own, which may be killed and started anew at the same address. */
final class ServedLoft implements AutoCloseable {
    private final Path folder;
    private final int port;
    private @Nullable Process process;

    ServedLoft(String name, Path into) throws IOException {
        folder = into.resolve(name);
        Folders.copy(Path.of("demo-data", name), folder);
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
    }

    /** Where a server of this process writes faults that no test expects. */
    static PrintStream noFaults() {
        return System.err;
    }

    Path folder() {
        return folder;
    }

    ShopAccess access() {
        Clock clock = Clock.systemUTC();
        return new ShopAccess(folder, new SqliteLedgerPlace(folder, clock), clock);
    }

    /** Opens the ledger, as a shop does once. */
    ServedLoft withLedger() {
        ShopAccess shop = access();
        new BeginLedger(shop).begin(shop.read().found().orElseThrow().shop(), "Bo");
        return this;
    }

    String url() {
        return "http://127.0.0.1:" + port + "/";
    }

    /** Serves it from a process of its own. */
    ServedLoft start() throws IOException {
        Process started = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        "bitterend.cli.Main",
                        "serve",
                        folder.toString(),
                        "--port",
                        Integer.toString(port)))
                .redirectError(folder.resolveSibling("server.err").toFile())
                .start();
        process = started;
        BufferedReader out = started.inputReader(StandardCharsets.UTF_8);
        String line = out.readLine();
        if (line == null || !line.contains(url())) {
            throw new IOException("not served: " + line + " " + Files.readString(folder.resolveSibling("server.err")));
        }
        return this;
    }

    /** As when somebody pulls the plug. */
    void kill() throws InterruptedException {
        Process running = process;
        if (running != null) {
            running.destroyForcibly().waitFor(20, TimeUnit.SECONDS);
        }
        process = null;
    }

    void killAndStart() throws IOException, InterruptedException {
        kill();
        start();
    }

    @Override
    public void close() {
        Process running = process;
        if (running != null) {
            running.destroyForcibly();
        }
    }
}
