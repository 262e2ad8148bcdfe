package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.buying.Advice;
import bitterend.buying.ReelSet;
import bitterend.buying.Spending;
import bitterend.buying.Tie;
import bitterend.front.TradePages;
import bitterend.measure.Cost;
import bitterend.measure.Units;
import bitterend.report.Figures;
import bitterend.report.page.Ink;
import bitterend.store.SqliteLedgerPlace;
import bitterend.work.ShopAccess;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.trade.AdviseReels;
import bitterend.work.trade.AdviseReels.Result.Advised;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ties put by hand into an advice that was found, so that how many there are does not depend on the search. */
final class BuyTiesTest {
    private static final Tie TIE = new Tie(
            new ReelSet(new TreeMap<>(Map.of("B12-200", 1))),
            new ReelSet(new TreeMap<>(Map.of("B12-100", 1))),
            new Cost(2_000),
            new Cost(3_000),
            new Cost(170_000));

    private ShopNow now;
    private Advised found;

    @BeforeEach
    void advise(@TempDir Path folder) throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,quantity,due
                E-40,1,BRAID-12,60 m,6,2026-03-20
                """);
        Clock clock = Clock.systemUTC();
        now = new ShopAccess(shop, new SqliteLedgerPlace(shop, clock), clock)
                .read()
                .found()
                .orElseThrow();
        found = (Advised) new AdviseReels(now)
                .advise(
                        new AdviseReels.Request(
                                LocalDate.of(2026, 3, 2), Duration.ofSeconds(2), 0, 1, Spending.UNLIMITED),
                        Watcher.NOBODY);
    }

    @Test
    void noTie_isNotSpokenOf() {
        String page = pageWith(List.of());
        assertFalse(page.contains("A tie: ") || page.contains("but for") || page.contains("Ties ----"), page);
    }

    @Test
    void oneTie_isASentence() {
        String page = pageWith(List.of(TIE));
        assertTrue(page.contains("A tie: "), page);
        assertTrue(page.contains("but for a tie the least cost"), page);
        assertTrue(page.contains("lies inside what is unproven of BRAID-12 alone (0.03 EUR)"), page);
        assertFalse(page.contains("Ties ----"), page);
    }

    @Test
    void severalTies_areATable() {
        String page = pageWith(List.of(TIE, TIE));
        assertTrue(page.contains("but for ties the least cost"), page);
        assertTrue(page.contains("Ties ----"), page);
        assertTrue(page.contains("What each would cost less lies inside what is unproven of its rope alone"), page);
        assertFalse(page.contains("A tie: "), page);
    }

    /** The page on one line. */
    private String pageWith(List<Tie> ties) {
        Advice advice = found.advice();
        Advice tied = new Advice(
                advice.ways(),
                advice.ways().size() - 1,
                advice.paidBound(),
                ties,
                advice.next(),
                advice.unheld(),
                advice.late(),
                advice.tooLong(),
                null,
                List.of(),
                true);
        Advised other = new Advised(found.orders(), tied, found.assumed(), found.forecast());
        return TradePages.of(
                        now.shop(),
                        other,
                        new Figures(Units.METRIC, now.shop().settings().money()))
                .text(Ink.PLAIN)
                .replaceAll("\\s+", " ");
    }
}
