package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.finding.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Days and figures in the tables of a shop that says where it is. */
final class FilesByPlaceTest {
    @TempDir
    private Path shop = Path.of("");

    @BeforeEach
    void copy() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data", "eider-shed"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, shop.resolve(file.getFileName()));
            }
        }
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                        order;line;rope;length;end a;end b;due;customer;note
                        E-1;1;LAID-14;12,5 m;whipped;whipped;30.11.2026;Boot 1,5;wie 3,5
                        E-1;2;LAID-14;12.5 m;whipped;whipped;2026-11-30;Boot 1,5;
                        """);
    }

    @Test
    void ofAPlace_itsDaysAndDecimalCommasAreRead_andThoseOfTheFiles() throws IOException {
        at("de-DE");

        List<OrderLine> orders = read().shop().orElseThrow().orders();

        assertEquals(2, orders.size());
        assertEquals(
                orders.get(1).assembly().ordered().source().due(),
                orders.get(0).assembly().ordered().source().due());
        assertEquals(
                orders.get(1).demanded().pieces().get(0).cut(),
                orders.get(0).demanded().pieces().get(0).cut());
        assertEquals("Boot 1,5", orders.get(0).assembly().ordered().customer());
    }

    @Test
    void withoutAPlace_isToldWhatToDo() {
        List<Finding> findings = read().findings();

        assertTrue(
                findings.stream()
                        .anyMatch(
                                finding -> finding.field().equals("due")
                                        && finding.place().equals("row 2")
                                        && finding.expected()
                                                .equals(
                                                        "a day such as 2026-03-02, or the place whose days these are as locale in shop.json")),
                findings::toString);
        assertTrue(
                findings.stream()
                        .anyMatch(finding -> finding.field().equals("length")
                                && finding.place().equals("row 2")),
                findings::toString);
    }

    @Test
    void pointThatCouldPartThousands_besideDecimalCommas_isReadAsADecimalPointAndWarnedOf() throws IOException {
        at("de-DE");
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                        order;line;rope;length;end a;end b
                        E-1;1;LAID-14;1.500 m;whipped;whipped
                        E-1;2;LAID-14;2,5 m;whipped;whipped
                        """);

        ShopReading reading = read();

        assertEquals(2, reading.shop().orElseThrow().orders().size());
        assertTrue(
                reading.findings().stream()
                        .anyMatch(finding -> finding.place().equals("row 2")
                                && finding.expected().endsWith("1.500 is read with a decimal point")),
                () -> reading.findings().toString());
    }

    @Test
    void productsOfARequest_areReadByThePlace_asThoseOfTheShop() throws IOException {
        at("de-DE");
        Files.writeString(
                shop.resolve("assemblies.csv"),
                "product;name;rope;length;end a;end b\nSTROP;Stropp;LAID-14;2,5 m;whipped;whipped\n");
        Path request = shop.resolve("Q-1.csv");
        Files.writeString(request, "line;product;length;quantity\n1;STROP;;2\n");

        QuoteRequestReading reading =
                QuoteRequestFile.read(request, shop, read().shop().orElseThrow(), LocalDate.of(2026, 11, 30));

        assertTrue(reading.findings().stream().noneMatch(Finding::isError), () -> "" + reading.findings());
    }

    private ShopReading read() {
        return ShopFolder.read(shop);
    }

    private void at(String place) throws IOException {
        Path settings = shop.resolve("shop.json");
        Files.writeString(settings, Files.readString(settings).replaceFirst("\\{", "{\"locale\": \"" + place + "\","));
    }
}
