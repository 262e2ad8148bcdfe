package bitterend.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LoftAddress;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * Fifty clients book into two lofts at once, each booking on a way of its own, while the server is killed in between and
 * started again. A client that was told that nothing was booked, or that nobody knows, sends the same booking again under the
 * same id, as the page and {@code --once} do. {@code -DclientBookings=N -DserverKills=N} make it longer.
 */
final class ServedClientsTest {
    private static final int CLIENTS = 50;
    private static final int BOOKINGS = Integer.getInteger("clientBookings", 8);
    private static final int KILLS = Integer.getInteger("serverKills", 3);
    private static final long PATIENCE_S = 240;

    private final ConcurrentLinkedQueue<String> acknowledged = new ConcurrentLinkedQueue<>();
    private final ConcurrentLinkedQueue<String> told = new ConcurrentLinkedQueue<>();
    private final AtomicInteger working = new AtomicInteger(CLIENTS);

    @Test
    void fiftyClientsAndAKilledServer_loseNothingAndDoubleNothing() throws Exception {
        try (LoftServer server = LoftServer.ofItsOwn()) {
            List<LoftAddress> lofts = List.of(server.loft("gannet"), server.loft("eider"));
            for (LoftAddress loft : lofts) {
                place(loft).begin(Event.Act.of(Event.Kind.OPENED, "test", ""), books -> {});
            }
            ExecutorService clients = Executors.newFixedThreadPool(CLIENTS);
            List<Future<?>> done = new ArrayList<>();
            for (int i = 0; i < CLIENTS; i++) {
                String name = "c" + i;
                LoftAddress loft = lofts.get(i % lofts.size());
                done.add(clients.submit(() -> work(loft, name)));
            }
            killNowAndThen(server);
            for (Future<?> each : done) {
                each.get(PATIENCE_S, TimeUnit.SECONDS);
            }
            clients.shutdown();
            assertEquals(CLIENTS * BOOKINGS, acknowledged.size());
            assertAllThereOnce(lofts);
            assertTrue(told.size() > KILLS, "the clients noticed nothing: " + told);
            told.forEach(sentence -> assertTrue(
                    sentence.startsWith("loft ") && !sentence.contains("Exception") && !sentence.contains("\n"),
                    sentence));
        }
    }

    /** Each time so much further on: when a share of the bookings has been acknowledged. */
    private void killNowAndThen(LoftServer server) throws Exception {
        for (int kill = 1; kill <= KILLS; kill++) {
            long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
            while (acknowledged.size() < CLIENTS * BOOKINGS * kill / (KILLS + 1) && System.nanoTime() < until) {
                Thread.sleep(2);
            }
            assertTrue(working.get() > 0, "the clients were done before the server was killed");
            server.kill();
            server.start();
        }
    }

    private void work(LoftAddress loft, String name) {
        for (int i = 0; i < BOOKINGS; i++) {
            String id = name + "-" + i;
            while (!isBooked(loft, id, i % 2 == 0)) {
                pause();
            }
            acknowledged.add(id);
        }
        working.decrementAndGet();
    }

    private boolean isBooked(LoftAddress loft, String id, boolean comes) {
        try (Ledger ledger = place(loft).toWrite()) {
            Rack rack = new Rack(ledger, act -> act.by("client").withId(id));
            String reel = id.substring(0, id.indexOf('-'));
            if (comes) {
                rack.receive(LedgerContract.reel(id, "L1", List.of()), "");
            } else {
                rack.count(
                        reel + "-" + (Integer.parseInt(id.substring(id.indexOf('-') + 1)) - 1),
                        Written.worked(new Length(20_000)),
                        Length.ZERO,
                        Reel.Known.COUNTED,
                        "");
            }
            return true;
        } catch (LedgerException away) {
            told.add(away.sentence());
            return false;
        }
    }

    private static void pause() {
        try {
            Thread.sleep(20);
        } catch (InterruptedException stop) {
            throw new IllegalStateException(stop);
        }
    }

    private void assertAllThereOnce(List<LoftAddress> lofts) {
        Map<String, Integer> there = new HashMap<>();
        for (LoftAddress loft : lofts) {
            try (Ledger ledger = place(loft).toRead()) {
                assertEquals(List.of(), ledger.verify());
                ledger.read(Ledger.Stock::events)
                        .forEach(event -> there.merge(event.act().id(), 1, Integer::sum));
                assertEquals(
                        CLIENTS / lofts.size() * BOOKINGS,
                        ledger.read(Ledger.Stock::movements).size());
            }
        }
        acknowledged.forEach(id -> assertEquals(1, there.getOrDefault(id, 0), id));
    }

    private static ServedLedgerPlace place(LoftAddress loft) {
        return new ServedLedgerPlace(loft, Path.of(""), Clock.systemUTC());
    }
}
