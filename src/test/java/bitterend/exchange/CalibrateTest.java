package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Assembly;
import bitterend.demand.DemandModel;
import bitterend.demand.calibration.Calibration;
import bitterend.demand.calibration.Effect;
import bitterend.demand.calibration.MeasuredAssembly;
import bitterend.demand.calibration.TakeUpFit;
import bitterend.finding.Finding;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From measured.csv to splices.json, and what it changes in the open orders. */
final class CalibrateTest {
    private static final String HEADER = "id,rope,end a,end b,cut,finished,measured,bedded in,splicer\n";
    /** Everything of a 10 m leg but its take-up, to 0.1 mm: 10,570.97 (see the worked length of this eye). */
    private static final long REST = 10_571;

    @TempDir
    private Path folder;

    @BeforeEach
    void aShop() throws IOException {
        write("shop.json", "{'format': 'bitterend/shop/1', 'name': 'A loft', 'currency': 'EUR', 'labour': '45 EUR/h'}");
        write(
                "ropes.json",
                """
                {'format': 'bitterend/ropes/1', 'ropes': [
                  {'id': 'DB12', 'construction': 'double braid', 'fibre': 'polyester', 'diameter': '12 mm',
                   'price': '2 EUR/m', 'usualReel': '200 m', 'cutToNearest': '1 mm'}]}
                """);
        write(
                "orders.csv",
                "order,line,rope,length,end a,quantity\n7,1,DB12,10 m,double-braid-eye perimeter 600 mm,10\n");
        write("reels.csv", "reel,rope,length\nR1,DB12,200 m\n");
    }

    @Test
    void takeUp_isTheCutLengthLessEverythingElse() throws IOException {
        Calibration calibration = calibrate(rows(150, 152, 154));
        TakeUpFit fit = calibration.fits().get(0);
        assertEquals("double-braid-eye", fit.termination());
        assertEquals("DB12", fit.rope());
        assertEquals(152.03, fit.mean().units() / 10_000.0, 0.01);
        // 152 + 2.92 x 2 x sqrt(4/3) = 158.7
        assertEquals(new Length(159), fit.upper());
        assertEquals(new Length(7), fit.spread());
    }

    /** Twenty simulated splices with known take-up: the mean is found, the next is covered, the outlier is named. */
    @Test
    void simulatedSplices_giveTheirTakeUpBack() throws IOException {
        Random random = new Random(7);
        long[] takeUps = new long[20];
        for (int i = 0; i < takeUps.length; i++) {
            takeUps[i] = Math.round(160 + 6 * random.nextGaussian());
        }
        takeUps[11] += 400;
        TakeUpFit fit = calibrate(rows(takeUps)).fits().get(0);
        assertEquals(160, fit.mean().units() / 10_000.0, 4);
        assertTrue(fit.upper().mm() > 165 && fit.upper().mm() < 180, fit::toString);
        assertEquals(
                List.of("M11"),
                fit.outliers().stream().map(MeasuredAssembly::id).toList());
        assertEquals("Jansen", fit.outliers().get(0).splicer());
    }

    @Test
    void twoEndsAlike_eachGetHalfOfTheirSum() throws IOException {
        // 10 m less two eyes of 300, twice 618.97 and 252: 11,141.94
        String eye = "double-braid-eye perimeter 600 mm";
        StringBuilder rows = new StringBuilder();
        for (int sum : new int[] {300, 304, 308}) {
            rows.append("M%d,DB12,%s,%s,%d mm,10 m,,no,\n".formatted(sum, eye, eye, 11_142 + sum));
        }
        TakeUpFit fit = calibrate(rows.toString()).fits().get(0);
        assertEquals(2, fit.ends());
        assertEquals(152.03, fit.mean().units() / 10_000.0, 0.01);
    }

    @Test
    void fewerThanThree_areRefusedWithAWarning() throws IOException {
        Calibration calibration = calibrate(rows(150, 152));
        assertEquals(List.of(), calibration.fits());
        assertTrue(calibration.findings().get(0).expected().contains("at least three"));
    }

    @ParameterizedTest
    @CsvSource({"'', yes", "flat, no"})
    void oddRow_isLeftOutAndTheRestFitted(String measured, String beddedIn) throws IOException {
        Calibration calibration = calibrate(rows(150, 152, 154) + measuredAs("M9", 10_720, measured, beddedIn));
        assertEquals(152.03, calibration.fits().get(0).mean().units() / 10_000.0, 0.01);
        assertEquals("row 5", calibration.findings().get(0).place());
        assertTrue(calibration.findings().get(0).expected().contains("same conditions as most"));
    }

    @Test
    void mixedConditions_areRefused() throws IOException {
        Calibration calibration = calibrate(
                rows(150, 152) + measuredAs("M8", 10_722, "flat", "no") + measuredAs("M9", 10_724, "flat", "no"));
        assertEquals(List.of(), calibration.fits());
        assertEquals("row 4", calibration.findings().get(0).place());
        assertTrue(calibration.findings().get(0).expected().contains("same conditions"));
    }

    /** Four tucks and five, or soft and thimbled, need not take up alike: three of each are two fits, the larger counts. */
    @Test
    void endsMadeOtherwise_areNotAveragedTogether() throws IOException {
        String longer = "M%d,DB12,double-braid-eye perimeter 600 mm tail 300 mm,,%d mm,10 m,,no,\n";
        StringBuilder rows = new StringBuilder(rows(150, 152, 154));
        for (int takeUp : new int[] {190, 192, 194}) {
            rows.append(longer.formatted(takeUp, REST - 252 + 300 + takeUp));
        }
        TakeUpFit fit = calibrate(rows.toString()).fits().get(0);
        assertEquals(3, fit.count());
        assertEquals(192, fit.mean().units() / 10_000.0, 0.2);
        assertEquals("soft, tail of 300 mm, one end", fit.variant());
        assertEquals(
                List.of(
                        "ends made otherwise are not averaged together, since they need not take up alike; planned with those that may take up most"
                                + " (soft, tail of 300 mm, one end), less take the others (soft, one end: 3, up to 159 mm)"),
                fit.remarks().stream().map(Sentence::exact).toList());
    }

    @Test
    void splicersWhoDiffer_areFittedApart() throws IOException {
        StringBuilder rows = new StringBuilder();
        int number = 0;
        for (int takeUp : new int[] {150, 152, 154, 151, 170, 172, 174, 171}) {
            rows.append("M%d,DB12,double-braid-eye perimeter 600 mm,,%d mm,10 m,,no,%s\n"
                    .formatted(number++, REST + takeUp, takeUp < 160 ? "Ada" : "Bo"));
        }
        TakeUpFit fit = calibrate(rows.toString()).fits().get(0);
        assertEquals("by Bo", fit.variant());
        assertEquals(4, fit.count());
        assertTrue(fit.remarks().get(0).exact().contains("by Ada: 4, up to"), fit.remarks()::toString);
    }

    @Test
    void splicersWhoDoNotDiffer_areOneFit() throws IOException {
        StringBuilder rows = new StringBuilder();
        int number = 0;
        for (int takeUp : new int[] {150, 152, 154, 151, 153, 149}) {
            rows.append("M%d,DB12,double-braid-eye perimeter 600 mm,,%d mm,10 m,,no,%s\n"
                    .formatted(number, REST + takeUp, number++ % 2 == 0 ? "Ada" : "Bo"));
        }
        assertEquals(6, calibrate(rows.toString()).fits().get(0).count());
    }

    /** Band of the row at 12 mm 63 mm: 189 mm off the others' median is no scatter. */
    @Test
    void blunderAmongFive_isNamedAndLeftOut() throws IOException {
        TakeUpFit fit = calibrate(rows(150, 152, 148, 151, 400)).fits().get(0);
        assertEquals(
                List.of("M4"), fit.outliers().stream().map(MeasuredAssembly::id).toList());
        assertTrue(fit.upper().mm() < 160, fit::toString);
    }

    @Test
    void negativeMean_isWarnedOf() throws IOException {
        TakeUpFit fit = calibrate(rows(-20, -22, -24)).fits().get(0);
        assertTrue(fit.isNegative());
        assertTrue(fit.remarks().get(0).exact().contains("below nothing"), fit.remarks()::toString);
    }

    private static String measuredAs(String id, int cut, String measured, String beddedIn) {
        return id + ",DB12,double-braid-eye perimeter 600 mm,,%d mm,10 m,%s,%s,\n".formatted(cut, measured, beddedIn);
    }

    @Test
    void unlikeEnds_cannotBeToldApart() throws IOException {
        Calibration calibration = calibrate(
                "M1,DB12,double-braid-eye perimeter 600 mm,double-braid-eye-two-fid length 300 mm,12 m,10 m,,no,\n");
        assertFalse(calibration.findings().get(0).isError());
        assertEquals("end b", calibration.findings().get(0).field());
    }

    /** Default take-up and margin 212.4 mm, calibrated 159: ten pieces of 10,784 become 10,730. */
    @Test
    void effect_isToldInMetresAndMoney() throws IOException {
        Shop shop = shop();
        Calibration calibration = calibrate(rows(150, 152, 154));
        List<Effect> effects = Effect.on(assemblies(shop), shop.catalogue(), calibration);
        assertEquals(1, effects.size());
        assertEquals(10, effects.get(0).pieces());
        assertEquals(new Length(-540), effects.get(0).more());
        assertEquals(-108, effects.get(0).cost().rounded().minor());
    }

    @Test
    void writtenFits_areReadBackAndTheOldFileIsKept() throws IOException {
        String old =
                "{\"format\": \"bitterend/splices/1\", \"terminations\": [{\"id\": \"double-braid-eye\", \"minutes\": 25}]}";
        Files.writeString(folder.resolve("splices.json"), old);
        Calibration calibration = calibrate(rows(150, 152, 154));
        assertEquals(List.of(), CalibratedSplices.write(folder, calibration.fits()));
        assertEquals(old, Files.readString(folder.resolve("splices.json.old")));
        SpliceBook book = shop().catalogue().splices();
        Termination row = row(book).on(shop().catalogue().rope("DB12"));
        assertEquals(25, row.work().minutes());
        assertTrue(row.allowance(What.TAKE_UP).provenance().verified());
        assertEquals("152.0304 mm", row.allowance(What.TAKE_UP).text());
        assertEquals("6.9696 mm", row.allowance(What.MARGIN).text());
        assertEquals(10_730, shop().pieces().get(0).cut().mm());
        assertFalse(row(book).allowance(What.TAKE_UP).provenance().verified());
    }

    @Test
    void writtenFits_makeANewFileWhereThereWasNone() throws IOException {
        CalibratedSplices.write(folder, calibrate(rows(150, 152, 154)).fits());
        assertEquals(10_730, shop().pieces().get(0).cut().mm());
        assertFalse(Files.exists(folder.resolve("splices.json.old")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "M1,DB99,plain,,10 m,9 m,,no, | rope",
                "M1,DB12,,,10 m,9 m,,no, | end a",
                "M1,DB12,double-braid-eye size 3,,10 m,9 m,,no, | end a",
                "M1,DB12,double-braid-eye length 300 mm,,ten,9 m,,no, | cut",
                "M1,DB12,double-braid-eye length 300 mm,,10 m,,,no, | finished",
                "M1,DB12,double-braid-eye length 300 mm,,10 m,9 m,,perhaps, | bedded in",
                "M1,DB12,double-braid-eye length 300 mm,,10 m,9 m,askew,no, | measured",
            })
    void badRow_isToldAtItsColumn(String row, String column) throws IOException {
        Files.writeString(folder.resolve("measured.csv"), HEADER + row + "\n");
        List<Finding> findings = MeasuredCsv.read(folder, shop()).findings();
        assertTrue(
                findings.stream()
                        .anyMatch(each -> each.leavesOut()
                                && each.file().equals("measured.csv")
                                && each.place().equals("row 2")
                                && each.field().equals(column)),
                findings::toString);
    }

    private static String rows(long... takeUps) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < takeUps.length; i++) {
            rows.append("M%d,DB12,double-braid-eye perimeter 600 mm,,%d mm,10 m,,no,Jansen\n"
                    .formatted(i, REST + takeUps[i]));
        }
        return rows.toString();
    }

    private Calibration calibrate(String rows) throws IOException {
        Files.writeString(folder.resolve("measured.csv"), HEADER + rows);
        Shop shop = shop();
        MeasuredCsv.Reading reading = MeasuredCsv.read(folder, shop);
        assertEquals(List.of(), reading.findings());
        return Calibration.of(new DemandModel(shop.catalogue()), reading.assemblies());
    }

    private Shop shop() {
        ShopReading reading = ShopFolder.read(folder);
        return reading.shop().orElseThrow(() -> new AssertionError(reading.findings()));
    }

    private static List<Assembly> assemblies(Shop shop) {
        return shop.orders().stream().map(OrderLine::assembly).toList();
    }

    private static Termination row(SpliceBook book) {
        return book.terminations().stream()
                .filter(each -> each.id().equals("double-braid-eye"))
                .findFirst()
                .orElseThrow();
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text.replace('\'', '"'));
    }
}
