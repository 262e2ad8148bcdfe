package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Assembly;
import bitterend.demand.EndWork.Picked;
import bitterend.demand.PickList;
import bitterend.demand.Piece;
import bitterend.finding.Finding;
import bitterend.finding.Severity;
import bitterend.measure.Diameter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Standard products: an order line says "bridle, 2 legs, 4.5 m" and takes over the rest. */
final class ProductsTest {
    private static final String HEADER = "order,line,product,with,length,legs,end b,quantity\n";

    @TempDir
    private Path folder;

    @BeforeEach
    void aShop() throws IOException {
        write("shop.json", "{'format': 'bitterend/shop/1', 'name': 'A loft', 'currency': 'EUR', 'labour': '45 EUR/h'}");
        write(
                "ropes.json",
                """
                {'format': 'bitterend/ropes/1', 'ropes': [
                  {'id': 'DB16', 'construction': 'double braid', 'fibre': 'polyester', 'diameter': '16 mm',
                   'price': '3 EUR/m', 'usualReel': '200 m'},
                  {'id': 'SLEEVE', 'construction': '12-strand', 'fibre': 'polyester', 'diameter': '30 mm',
                   'price': '4 EUR/m', 'usualReel': '100 m'}]}
                """);
        write(
                "assemblies.json",
                """
                {'format': 'bitterend/assemblies/1', 'products': [
                  {'id': 'bridle', 'name': 'two-leg bridle', 'parameters': {'eye': '300 mm', 'pin': ''},
                   'line': {'rope': 'DB16', 'end a': 'double-braid-eye length {eye} pin {pin}',
                            'end b': 'double-braid-eye length {eye}', 'legs': '2', 'match': 'reel'},
                   'parts': [{'part': 'sleeve', 'rope': 'SLEEVE', 'length': '600 mm', 'legs': '{legs}'}],
                   'hardware': [{'item': 'master link', 'count': 1}]}]}
                """);
        write("reels.csv", "reel,rope,length\nR1,DB16,200 m\n");
    }

    @Test
    void line_takesOverWhatItLeavesBlank() throws IOException {
        Shop shop = shop("7,1,bridle,pin = 60 mm,4.5 m,,,3");
        List<OrderLine> parts = shop.orderLines("7", "1");
        Assembly main = parts.get(0).assembly();
        assertEquals(List.of("DB16"), main.ropes());
        assertEquals(2, main.ordered().legs());
        assertEquals(List.of("7/1.1-1", "7/1.1-2", "7/1.2-1", "7/1.2-2", "7/1.3-1", "7/1.3-2"), ids(parts.get(0)));
        assertEquals("double-braid-eye length 300 mm pin 60 mm / double-braid-eye length 300 mm", ends(parts.get(0)));
        assertEquals("7/1.1", parts.get(0).demanded().pieces().get(0).matching().set());
        String note =
                parts.get(0).demanded().derivations().get(0).notes().get(0).exact();
        assertTrue(note.startsWith("from product bridle: rope DB16"), note);
    }

    /** A product may state what its lines are for and the papers of their rope. */
    @Test
    void product_maySetUseAndCertificate() throws IOException {
        write(
                "assemblies.json",
                """
                {'format': 'bitterend/assemblies/1', 'products': [
                  {'id': 'bridle', 'name': 'lifting bridle', 'parameters': {'pin': ''},
                   'line': {'rope': 'DB16', 'end a': 'double-braid-eye length 300 mm', 'use': 'lifting',
                            'certificate': '3.1', 'code': 'us'}}]}
                """);
        Assembly.Terms terms = shop("7,1,bridle,pin = 60 mm,4.5 m,,,1")
                .orderLines("7", "1")
                .get(0)
                .assembly()
                .terms();
        assertEquals(Assembly.Use.LIFTING, terms.use());
        assertEquals("3.1", terms.certificate());
        assertEquals("us", terms.code());
    }

    @Test
    void line_overridesTheProduct() throws IOException {
        OrderLine line = shop("7,1,bridle,pin = 60 mm; eye = 350 mm,4.5 m,3,sealed,1")
                .orderLines("7", "1")
                .get(0);
        assertEquals(3, line.assembly().ordered().legs());
        assertEquals("double-braid-eye length 350 mm pin 60 mm / sealed", ends(line));
    }

    @Test
    void parts_belongTogetherByTheirNames() throws IOException {
        OrderLine sleeve =
                shop("7,1,bridle,pin = 60 mm,4.5 m,3,,1").orderLines("7", "1").get(1);
        assertEquals(List.of("7/1.1-sleeve-1", "7/1.1-sleeve-2", "7/1.1-sleeve-3"), ids(sleeve));
        assertEquals(600, sleeve.demanded().pieces().get(0).cut().mm());
    }

    @Test
    void pickList_countsEndsAndHardware() throws IOException {
        PickList picks = new PickList();
        shop("7,1,bridle,pin = 60 mm,4.5 m,,,3").orders().forEach(line -> picks.add(line.assembly(), line.demanded()));
        assertEquals(
                List.of(
                        new Picked("master link", 3),
                        new Picked("whipping twine, lock stitch and whipping", Diameter.ofMillimetres(16), 12)),
                picks.items());
    }

    /**
     * A line of 18 m over all with a tail of another rope spliced to it: by hand the line is 18 - 2.5 = 15.5 m, the
     * tail 2.5 m, the sleeve twice the 300 mm eye and 150 mm more, brought up to 50 mm: 750 mm; and two links for each of
     * three legs.
     */
    @Test
    void parts_computeTheirLengths() throws IOException {
        aLineWithATail();
        Shop shop = shop("7,1,tailed,,18 m,3,,1");
        List<OrderLine> parts = shop.orderLines("7", "1");
        assertEquals(List.of("15.5 m", "750 mm", "2.5 m"), lengths(parts));
        assertEquals(
                15_500, parts.get(0).assembly().make().finished().roundedUp().mm());
        assertEquals(
                List.of(new Picked("link", 6)),
                parts.get(0).assembly().membership().hardware());
        assertEquals(
                List.of("31 ft 6 in", "750 mm", "96 1/4 in"),
                lengths(shop("7,1,tailed,tail = 96 1/4 in,39 ft 6 1/4 in,3,,1").orderLines("7", "1")));
    }

    /** A tail need not have the paper that the line has, nor its use; what it does not say it shares. */
    @Test
    void part_hasItsOwnUseCertificateAndMatch() throws IOException {
        aLineWithATail();
        List<OrderLine> parts = shop("7,1,tailed,,18 m,3,,1").orderLines("7", "1");
        assertEquals(
                List.of("LIFTING 3.1 ONE_LOT", "GENERAL  NONE", "LIFTING 3.1 ONE_REEL"),
                parts.stream()
                        .map(each -> each.assembly().terms())
                        .map(terms -> terms.use() + " " + terms.certificate() + " "
                                + terms.matching().bond())
                        .toList());
    }

    /** What cannot be worked out is told at the order line, and the line is left out. */
    @Test
    void lineShorterThanItsTail_isToldAndLeftOut() throws IOException {
        aLineWithATail();
        List<Finding> findings = read("7,1,tailed,,2 m,3,,1").findings();
        assertEquals(
                List.of("orders.csv row 2 length: nothing below zero; this is less by 500 mm, in {length - tail} with"
                        + " length 2 m, tail 2.5 m, of product tailed"),
                findings.stream()
                        .filter(each -> each.severity() != Severity.WARNING)
                        .map(each -> each.file() + " " + each.place() + " " + each.field() + ": " + each.expected())
                        .toList());
    }

    private void aLineWithATail() throws IOException {
        write(
                "assemblies.json",
                """
                {'format': 'bitterend/assemblies/1', 'products': [
                  {'id': 'tailed', 'parameters': {'tail': '2.5 m', 'eye': {'is': 'length', 'usual': '300 mm'}},
                   'line': {'rope': 'DB16', 'length': '{length - tail}', 'end b': 'double-braid-eye length {eye}',
                            'use': 'lifting', 'certificate': '3.1', 'match': 'lot'},
                   'parts': [{'part': 'tail', 'rope': 'SLEEVE', 'length': '{tail}', 'legs': '{legs}', 'match': 'reel'},
                             {'part': 'sleeve', 'rope': 'SLEEVE', 'length': '{roundUp(2 * eye + 150 mm, 50 mm)}',
                              'certificate': 'none', 'use': 'general'}],
                   'hardware': [{'item': 'link', 'count': '{2 * legs}'}]}]}
                """);
    }

    private static List<String> lengths(List<OrderLine> parts) {
        return parts.stream()
                .map(each -> each.assembly().make().finished().text())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7,1,sling,,4.5 m,,,1 | product",
                "7,1,bridle,,4.5 m,,,1 | with",
                "7,1,bridle,pin,4.5 m,,,1 | with",
                "7,1,bridle,pin = 60 mm; size = 3,4.5 m,,,1 | with",
                "7,1,,pin = 60 mm,4.5 m,,,1 | with",
                "7,1,bridle,pin = soft,4.5 m,,,1 | end a",
                "7,1,bridle,pin = 60 mm,,,,1 | length",
            })
    void badLine_isToldAtItsColumn(String row, String column) throws IOException {
        List<Finding> findings = read(row).findings();
        assertTrue(
                findings.stream()
                        .anyMatch(each -> each.severity() != Severity.WARNING
                                && each.file().equals("orders.csv")
                                && each.place().equals("row 2")
                                && each.field().equals(column)),
                findings::toString);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{'id': 'x', 'line': {'rope': '{rope}'}}",
                "{'id': 'x', 'line': {'order': '7'}}",
                "{'id': 'x', 'line': {'legs': '{legs + 1}'}}",
                "{'id': 'x', 'line': {'spare': '{length - 2}'}}",
                "{'id': 'x', 'line': {'spare': '{length'}}",
                "{'id': 'x', 'parameters': {'eye': ''}, 'line': {'spare': '{2 * eye}'}}",
                "{'id': 'x', 'parameters': {'eye': {'is': 'length', 'usual': '4'}}}",
                "{'id': 'x', 'parameters': {'eye': {'is': 'size'}}}",
                "{'id': 'x', 'parameters': {'length': '2 m'}}",
                "{'id': 'x', 'hardware': [{'item': 'link', 'count': '{2 * leg}'}]}",
                "{'id': 'x', 'parts': [{'part': 'a', 'rope': 'DB16'}]}",
                "{'id': 'x', 'parts': [{'part': 'a b', 'rope': 'DB16', 'length': '1 m'}]}",
                "{'id': 'x', 'parts': [{'part': 'a', 'rope': 'DB16', 'length': '1 m'}, {'part': 'a', 'rope': 'DB16', 'length': '1 m'}]}",
                "{'id': 'x', 'hardware': [{'count': 1}]}",
                "{'id': 'x', 'hardware': [{'item': 'link', 'count': 0}]}",
                "{'id': 'x'}, {'id': 'x'}",
                "{'name': 'x'}",
                "{'id': 'x', 'colour': 'red'}",
            })
    void badProduct_isToldWithItsPlace(String product) throws IOException {
        write("assemblies.json", "{'format': 'bitterend/assemblies/1', 'products': [" + product + "]}");
        write("orders.csv", HEADER);
        List<Finding> findings = ShopFolder.read(folder).findings();
        assertTrue(
                findings.stream()
                        .anyMatch(each -> each.severity() != Severity.WARNING
                                && each.file().equals("assemblies.json")
                                && each.place().startsWith("/products/")),
                findings::toString);
    }

    private Shop shop(String row) throws IOException {
        ShopReading reading = read(row);
        return reading.shop().orElseThrow(() -> new AssertionError(reading.findings()));
    }

    private ShopReading read(String row) throws IOException {
        Files.writeString(folder.resolve("orders.csv"), HEADER + row + "\n");
        return ShopFolder.read(folder);
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text.replace('\'', '"'));
    }

    private static List<String> ids(OrderLine line) {
        return line.demanded().pieces().stream().map(Piece::id).toList();
    }

    private static String ends(OrderLine line) {
        return line.demanded().pieces().get(0).ends();
    }
}
