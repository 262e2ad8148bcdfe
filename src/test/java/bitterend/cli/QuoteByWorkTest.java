package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.QuoteRequestFile;
import bitterend.front.TradePages;
import bitterend.measure.Units;
import bitterend.quoting.Quote;
import bitterend.quoting.QuoteRequest;
import bitterend.report.Figures;
import bitterend.report.page.Ink;
import bitterend.store.SqliteLedgerPlace;
import bitterend.work.ShopAccess;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.trade.PriceRequest;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A quote is worked out by a fixed amount of work: the clock alone changes nothing but where it ends the work. */
final class QuoteByWorkTest {
    private static final String CUT_SHORT = "worked out as far as the time went";

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    private Path folder = Path.of("");

    private ShopNow now;

    @BeforeEach
    void copyDemo() throws IOException {
        Path shop = DemoShop.copy("gannet-loft", folder);
        Clock clock = Clock.fixed(Instant.parse("2026-03-02T08:00:00Z"), ZoneOffset.UTC);
        now = new ShopAccess(shop, new SqliteLedgerPlace(shop, clock), clock)
                .read()
                .found()
                .orElseThrow();
    }

    private String page(LongSupplier nanos, Duration time) {
        return page(QuoteRequestFile.ofOrder(now.shop(), "G-2101", DAY).orElseThrow(), nanos, time);
    }

    private String page(QuoteRequest request, LongSupplier nanos, Duration time) {
        return page(request, 1, nanos, time);
    }

    private String page(QuoteRequest request, int threads, LongSupplier nanos, Duration time) {
        PriceRequest.Result result = new PriceRequest(now, threads, nanos).price(request, DAY, time, Watcher.NOBODY);
        Quote quote = ((PriceRequest.Result.Priced) result).quote();
        Figures figures = new Figures(Units.METRIC, now.shop().settings().money());
        return TradePages.forFile(now.shop(), quote, figures).text(Ink.PLAIN);
    }

    /** A clock that gets on by a thousandth of a second with each look, and one that does not. */
    @Test
    void slowClockAndOtherTime_giveTheSameBytes() {
        AtomicLong ticks = new AtomicLong();
        String slow = page(() -> ticks.addAndGet(1_000_000), Duration.ofDays(1));
        assertEquals(page(() -> 0, Duration.ofMillis(1)), slow);
        assertFalse(slow.contains(CUT_SHORT), slow);
    }

    @Test
    void workThatTheTimeEnds_isSaidOnThePageForTheFile() {
        AtomicLong ticks = new AtomicLong();
        String page = page(() -> ticks.addAndGet(3_600_000_000_000L), Duration.ofSeconds(1));
        assertTrue(page.contains(CUT_SHORT), page);
    }

    @Test
    void anyNumberOfThreads_givesTheSameBytes() {
        QuoteRequest request =
                QuoteRequestFile.ofOrder(now.shop(), "G-2101", DAY).orElseThrow();
        Duration ages = Duration.ofDays(1);
        assertEquals(page(request, 1, System::nanoTime, ages), page(request, 3, System::nanoTime, ages));
    }

    /** What these lines add to the booked work is not proven at once: by a time it would come out as the machine has it. */
    @Test
    void machineThatIsBusy_givesTheSameBytes() throws InterruptedException {
        QuoteRequest request =
                QuoteRequestFile.ofOrder(now.shop(), "G-2101", DAY).orElseThrow();
        Duration ages = Duration.ofDays(1);
        String calm = page(request, System::nanoTime, ages);
        AtomicBoolean done = new AtomicBoolean();
        List<Thread> others = new ArrayList<>();
        for (int i = 0; i < Runtime.getRuntime().availableProcessors(); i++) {
            others.add(new Thread(() -> {
                while (!done.get()) {
                    Thread.onSpinWait();
                }
            }));
        }
        others.forEach(Thread::start);
        try {
            assertEquals(calm, page(request, System::nanoTime, ages));
        } finally {
            done.set(true);
            for (Thread other : others) {
                other.join();
            }
        }
        assertFalse(calm.contains(CUT_SHORT), calm);
    }
}
