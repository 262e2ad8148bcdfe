package bitterend.serve;

import bitterend.measure.Units;
import bitterend.serve.Visitor.Seen;
import bitterend.stock.LedgerPlace;
import bitterend.stock.LoftAddress;
import bitterend.store.ServedLedgerPlace;
import bitterend.store.SqliteLedgerPlace;
import bitterend.work.ShopAccess;
import bitterend.work.rack.BeginLedger;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.stream.Stream;

/** A copy of a demo loft with its page, and a visitor who has said who she is. */
final class Served implements AutoCloseable {
    final ShopAccess shop;
    private ShopServer server;
    private Visitor ada;

    private Served(ShopAccess shop) throws IOException {
        this.shop = shop;
        server = start();
        ada = greeted();
    }

    /** @param folder where the copy goes */
    static Served copy(String loft, Path folder) throws IOException {
        Path copy = folder.resolve(loft);
        Clock clock = Clock.systemUTC();
        return copy(loft, copy, new SqliteLedgerPlace(copy, clock));
    }

    /** The same with its ledger on a server. */
    static Served on(LoftAddress server, String loft, Path folder) throws IOException {
        Path copy = folder.resolve(loft);
        return copy(loft, copy, new ServedLedgerPlace(server, copy, Clock.systemUTC()));
    }

    private static Served copy(String loft, Path copy, LedgerPlace ledger) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data", loft))) {
            Files.createDirectories(copy);
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return new Served(new ShopAccess(copy, ledger, Clock.systemUTC()));
    }

    /** The same with a ledger. */
    static Served withLedger(String loft, Path folder) throws IOException {
        Served served = copy(loft, folder);
        served.shop.read().found().ifPresent(now -> new BeginLedger(served.shop).begin(now.shop(), "Bo"));
        return served;
    }

    private ShopServer start() throws IOException {
        return ShopServer.start(
                shop, new Listening(InetAddress.getLoopbackAddress(), 0), Units.METRIC, ServedLoft.noFaults());
    }

    private Visitor greeted() {
        Visitor visitor = new Visitor(server);
        visitor.post("/who", Map.of("name", "Ada"));
        return visitor;
    }

    /** The program ends and is started anew. */
    void again() throws IOException {
        server.close();
        server = start();
        ada = greeted();
    }

    ShopServer server() {
        return server;
    }

    Visitor ada() {
        return ada;
    }

    /** Plans the day on the page and puts the plan in force. */
    void plans() throws InterruptedException {
        ada.post("/plan", Map.of());
        Seen seen = ada.get("/plan");
        for (int i = 0; i < 300 && !seen.page().contains("data-done"); i++) {
            Thread.sleep(100);
            seen = ada.get("/plan");
        }
        ada.post("/plan/accept", Map.of("run", seen.field("run")));
    }

    Path file(String name) {
        return shop.folder().resolve(name);
    }

    /** How many events its ledger has. */
    int events() {
        return shop.reading(ledger -> ledger.read(stock -> stock.events().size()));
    }

    @Override
    public void close() {
        server.close();
    }
}
