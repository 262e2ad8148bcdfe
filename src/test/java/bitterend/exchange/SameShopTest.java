package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.GreedyStrategy;
import bitterend.work.DayProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the machine, the separator or the order of the rows: the same shop and the same plan. */
final class SameShopTest {
    private static final Path LOFT = Path.of("demo-data/gannet-loft");
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @AfterEach
    void putBack() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    @ParameterizedTest
    @ValueSource(strings = {"byte-order-mark", "semicolons", "tabs", "carriage-returns"})
    void waysToSaveAFile_giveTheSameShop(String name, @TempDir Path folder) throws IOException {
        SampleFolder.lay(SampleFolder.BAD.resolve(name), folder);
        assertEquals(withoutDigests(shop(SampleFolder.GOOD)), withoutDigests(shop(folder)));
        assertNotEquals(shop(SampleFolder.GOOD).digests(), shop(folder).digests());
    }

    @ParameterizedTest
    @CsvSource({
        "de-DE, Europe/Berlin",
        "tr-TR, Asia/Istanbul",
        "ar-EG, Pacific/Kiritimati",
        "hi-IN-u-nu-deva, America/St_Johns",
        "en-US, Pacific/Pago_Pago"
    })
    void localeAndTimeZone_doNotMatter(String language, String place, @TempDir Path folder) throws IOException {
        String usual = planText(LOFT);
        List<String> findings = badFindings(folder.resolve("usual"));
        Locale.setDefault(Locale.forLanguageTag(language));
        TimeZone.setDefault(TimeZone.getTimeZone(place));
        assertEquals(usual, planText(LOFT));
        assertEquals(findings, badFindings(folder.resolve("there")));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void orderOfRows_doesNotMatter(long seed, @TempDir Path folder) throws IOException {
        SampleFolder.copy(LOFT, folder);
        for (String name : List.of("orders.csv", "reels.csv", "pins.csv")) {
            List<String> lines = new ArrayList<>(Files.readAllLines(folder.resolve(name)));
            Collections.shuffle(lines.subList(1, lines.size()), new Random(seed));
            Files.write(folder.resolve(name), lines);
        }
        assertEquals(DayProblem.of(shop(LOFT), DAY), DayProblem.of(shop(folder), DAY));
        assertEquals(planText(LOFT, Map.of()), planText(folder, Map.of()));
    }

    @Test
    void orderOfColumns_andTheirSpelling_doNotMatter(@TempDir Path folder) throws IOException {
        SampleFolder.copy(SampleFolder.GOOD, folder);
        Files.writeString(folder.resolve("pins.csv"), "REEL,Piece\nR-2,G-101/1.1\n");
        Path reels = folder.resolve("reels.csv");
        Files.writeString(reels, Files.readString(reels).replace("lead trim", "Lead_Trim"));
        assertEquals(withoutDigests(shop(SampleFolder.GOOD)), withoutDigests(shop(folder)));
    }

    private static List<String> badFindings(Path folder) throws IOException {
        List<String> findings = new ArrayList<>();
        for (Path bad : SampleFolder.files(SampleFolder.BAD)) {
            Path laid = Files.createDirectories(folder.resolve(bad.getFileName().toString()));
            SampleFolder.lay(bad, laid);
            ShopFolder.read(laid).findings().forEach(finding -> findings.add(finding.toString()));
        }
        return findings;
    }

    private static String planText(Path folder) {
        return planText(folder, shop(folder).digests());
    }

    private static String planText(Path folder, Map<String, String> digests) {
        Shop shop = shop(folder);
        PackingProblem problem = DayProblem.of(shop, DAY);
        CutPlan plan = new DayPlanner(new GreedyStrategy()).plan(problem, Effort.of(Duration.ofSeconds(60)));
        return PlanJson.text(new PlanDocument(
                1,
                plan,
                shop.settings().money(),
                new PlanDocument.Made("test", 0, "quick", Duration.ofSeconds(60), digests, List.of()),
                new PlanFacts.Whole(PlanFacts.LedgerMark.NONE, Map.of(), problem)));
    }

    private static Shop shop(Path folder) {
        ShopReading reading = ShopFolder.read(folder);
        return reading.shop().orElseThrow(() -> new AssertionError(reading.findings()));
    }

    private static Shop withoutDigests(Shop shop) {
        return new Shop(
                shop.settings(),
                shop.catalogue(),
                shop.orders(),
                shop.reels(),
                shop.pins(),
                shop.supplies(),
                shop.customers(),
                Map.of(),
                shop.leftOut());
    }
}
