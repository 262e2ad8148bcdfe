package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be right and hardly is, on both sides of each limit; the day of the shop is 2026-03-02. */
final class UnlikelyTest {
    private static final String ROPES = "{\"format\": \"bitterend/ropes/1\", \"ropes\": [%s]}";

    @TempDir
    private Path shop = Path.of("");

    @BeforeEach
    void begin() throws IOException {
        write(
                "shop.json",
                "{\"format\": \"bitterend/shop/1\", \"name\": \"Ruff\", \"currency\": \"EUR\", \"day\": \"2026-03-02\","
                        + " \"labour\": \"40 EUR/h\"}");
        write("ropes.json", ROPES.formatted(rope("A", "12 mm", "1.80")));
        write("orders.csv", "order,line,rope,length\n");
        write("reels.csv", "reel,rope,length\n");
    }

    private void write(String file, String text) throws IOException {
        Files.writeString(shop.resolve(file), text);
    }

    private static String rope(String id, String diameter, String price) {
        return "{\"id\": \"" + id + "\", \"construction\": \"double braid\", \"fibre\": \"polyester\", \"diameter\": \""
                + diameter + "\", \"price\": \"" + price + " EUR/m\", \"usualReel\": \"200 m\"}";
    }

    private List<String> said() {
        return ShopFolder.read(shop).findings().stream()
                .map(finding -> finding.place() + " " + finding.field() + " " + finding.found())
                .toList();
    }

    @Test
    void length_ofNineMillimetres_isWarnedOf() throws IOException {
        write("orders.csv", "order,line,rope,length\n1,1,A,9 mm\n1,2,A,10 cm\n1,3,A,9 m\n");
        assertEquals(List.of("row 2 length 9 mm"), said());
    }

    @Test
    void due_inAnotherCentury_isWarnedOf() throws IOException {
        write(
                "orders.csv",
                """
                        order,line,rope,length,due
                        1,1,A,2 m,2062-03-05
                        1,2,A,2 m,2029-03-02
                        1,3,A,2 m,2029-03-03
                        1,4,A,2 m,1999-12-31
                        1,5,A,2 m,
                        """);
        assertEquals(List.of("row 2 due 2062-03-05", "row 4 due 2029-03-03", "row 5 due 1999-12-31"), said());
    }

    @Test
    void set_ofTwoCustomers_isWarnedOf() throws IOException {
        write(
                "orders.csv",
                """
                        order,line,customer,rope,length,set
                        1,1,Ann,A,2 m,pair
                        1,2,Ann,A,2 m,pair
                        2,1,Bea,A,2 m,pair
                        2,2,,A,2 m,pair
                        """);
        assertEquals(List.of("row 4 set pair"), said());
    }

    @Test
    void reel_ofTenTimesTheUsualLength_isWarnedOf() throws IOException {
        write("reels.csv", "reel,rope,length\nR1,A,2000 m\nR2,A,1000 m\n");
        assertEquals(List.of("row 2 length 2000 m"), said());
    }

    /** 12 mm at 1.80 and 24 mm at 7.20 are one price for the fibre in them. */
    @Test
    void price_ofTenTimesItsNeighbours_isWarnedOf_forItsThickness() throws IOException {
        String alike = rope("A", "12 mm", "1.80") + "," + rope("B", "24 mm", "7.20") + "," + rope("C", "6 mm", "0.45");
        write("ropes.json", ROPES.formatted(alike));
        assertEquals(List.of(), said());
        write("ropes.json", ROPES.formatted(alike + "," + rope("D", "12 mm", "18.00")));
        assertEquals(List.of("/ropes/3 price 18.00 EUR/m"), said());
        write("ropes.json", ROPES.formatted(rope("A", "12 mm", "1.80") + "," + rope("D", "12 mm", "18.00")));
        assertEquals(List.of(), said(), "of two nobody knows which is wrong");
    }
}
