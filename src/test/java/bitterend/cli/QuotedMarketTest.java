package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
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

/**
 * What a quote prices rope at is what can be had. One rope at 0.95 EUR/m on reels of 200 m; a coil below 60 m is scrap, a reel
 * costs 2 EUR to open and to fetch in all, a cut takes nothing off. Rope, prices and suppliers are invented.
 */
final class QuotedMarketTest {
    private static final String OFFERS = "offer,supplier,rope,length,price,breaks,freight,supply,minimum,lead days,"
            + "lead spread,valid until,joined\n";
    private static final String REAL = "REAL,Northquay,DB08,200 m,190 EUR,,,,,,,,\n";

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void shop() throws IOException {
        write(
                "shop.json",
                """
                {"format": "bitterend/shop/1", "name": "Invented loft", "currency": "EUR", "day": "2026-03-02",
                 "labour": "60 EUR/h", "prices": {"opening": "1 min", "changing": "1 min", "handling": "0 min"}}
                """);
        write(
                "ropes.json",
                """
                {"format": "bitterend/ropes/1", "ropes": [
                 {"id": "DB08", "construction": "double braid", "fibre": "polyester", "diameter": "8 mm",
                  "price": "0.95 EUR/m", "usualReel": "200 m", "keepFrom": "60 m", "mass": "0.05 kg/m"}]}
                """);
        write("orders.csv", "order,line,customer,rope,length,end a,end b,quantity,due\n");
        write("reels.csv", "reel,rope,lot,length\n");
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private void request(String length, int quantity, String due) throws IOException {
        write(
                "r.csv",
                "line,customer,rope,length,quantity,due,minutes\n1,x,DB08," + length + "," + quantity + "," + due
                        + ",5 min\n");
    }

    private JsonNode quoted() throws IOException {
        Run run = Run.of("quote", folder.toString(), folder.resolve("r.csv").toString(), "--json");
        assertEquals(0, run.code(), run.err() + run.out());
        return new JsonMapper().readTree(run.out());
    }

    private JsonNode rope() throws IOException {
        return quoted().at("/ropes/0");
    }

    private String page() {
        Run run = Run.of("quote", folder.toString(), folder.resolve("r.csv").toString());
        assertEquals(0, run.code(), run.err() + run.out());
        return run.out().replaceAll("\\s+", " ");
    }

    /**
     * 20 pieces of 95 m are 10 reels with two pieces each, what is left of them scrap: 10 x (190 + 2) = 1920 EUR. Fifty reels
     * at 100 EUR would be 5000 EUR; the one at 50 EUR is one and not ten.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '/',
            value = {
                "''/''",
                "MANY,Northquay,DB08,200 m,100 EUR,,,,50,,,,/''",
                "ONE,Northquay,DB08,200 m,50 EUR,,,1,,400,,,/''",
                "MANY,Northquay,DB08,200 m,100 EUR,,,,50,,,,/ONE,Northquay,DB08,200 m,50 EUR,,,1,,400,,,"
            })
    void whatCannotBeHadInSuchNumbers_doesNotLowerThePrice(String one, String other) throws IOException {
        write("offers.csv", OFFERS + REAL + one + "\n" + other + "\n");
        request("95 m", 20, "");
        JsonNode rope = rope();
        assertEquals("1805 EUR", rope.get("ropeInPieces").asText());
        assertEquals("1920 EUR", rope.get("costAlone").asText());
        assertEquals("115 EUR", rope.at("/waste/alone/middle").asText());
        assertEquals("115 EUR", rope.at("/waste/marginal/middle").asText());
        assertEquals("REAL", rope.at("/buying/sizes/0/offer").asText());
        assertEquals(10, rope.at("/buying/sizes/0/reels").asInt());
        assertEquals(
                (one.isEmpty() ? 0 : 1) + (other.isEmpty() ? 0 : 1),
                rope.at("/buying/notTaken").size());
    }

    @Test
    void whatWasLeftOut_isNamedWithItsReason() throws IOException {
        write(
                "offers.csv",
                OFFERS
                        + REAL
                        + "MANY,Northquay,DB08,200 m,100 EUR,,,,50,,,,\n"
                        + "ONE,Northquay,DB08,200 m,50 EUR,,,1,,400,,,\n"
                        + "OLD,Northquay,DB08,200 m,50 EUR,,,,,,,2026-03-01,\n"
                        + "JOIN,Northquay,DB08,900 m,50 EUR,,,,,,,,yes\n"
                        + "NONE,Northquay,DB08,200 m,50 EUR,,,0,,,,,\n");
        request("95 m", 20, "");
        String page = page();
        for (String words : List.of(
                "JOIN (a reel may hold several lengths joined)",
                "OLD (valid until 2026-03-01)",
                "NONE (nothing is left of it)",
                "MANY (its minimum of 50 reels is not reached)",
                "ONE (more are taken than there are: 1)")) {
            assertTrue(page.contains(words), words + " not in " + page);
        }
    }

    /** An offer is good on its last day. */
    @ParameterizedTest
    @CsvSource({"2026-03-01, 1920 EUR", "2026-03-02, 1910 EUR"})
    void anOffer_isPricedUntilItsLastDay(String until, String cost) throws IOException {
        write("offers.csv", OFFERS + REAL + "OLD,Northquay,DB08,200 m,189 EUR,,,,,,," + until + ",\n");
        request("95 m", 20, "");
        assertEquals(cost, rope().get("costAlone").asText());
    }

    /** 4 pieces of 99 m are two reels, two off each, which is no five; ten pieces of 190 m are ten. */
    @ParameterizedTest
    @CsvSource({
        "99 m, 4, 190, 2 from 1, 384 EUR",
        "190 m, 4, 190, 4 from 1, 768 EUR",
        "190 m, 5, 176.70, 5 from 5, 893.5 EUR",
        "190 m, 9, 176.70, 9 from 5, 1608.3 EUR",
        "190 m, 10, 170, 10 from 10, 1720 EUR"
    })
    void aBreak_isGivenToWhoReachesIt(String length, int quantity, String each, String taken, String cost)
            throws IOException {
        write("offers.csv", OFFERS + "B,Northquay,DB08,200 m,190 EUR,5: 176.70 EUR; 10: 170 EUR,,,,,,,\n");
        request(length, quantity, "");
        JsonNode rope = rope();
        JsonNode size = rope.at("/buying/sizes/0");
        assertEquals(each + " EUR", size.get("paid").asText().replaceAll("(\\.\\d) ", "$10 "));
        assertEquals(
                taken, size.get("reels").asInt() + " from " + size.get("from").asInt());
        assertEquals(cost, rope.get("costAlone").asText());
    }

    /** 4 or 6 pieces of 52 m need one reel or two: nobody opens five, each for one piece, to have the price of five. */
    @ParameterizedTest
    @ValueSource(ints = {4, 6})
    void aBreak_isNotReachedByOpeningMoreReelsThanAreNeeded(int pieces) throws IOException {
        write("offers.csv", OFFERS + "B,Northquay,DB08,200 m,190 EUR,,,,,,,,\n");
        request("52 m", pieces, "");
        String without = rope().get("costAlone").asText();
        write("offers.csv", OFFERS + "B,Northquay,DB08,200 m,190 EUR,5: 176.70 EUR,,,,,,,\n");
        assertEquals(without, rope().get("costAlone").asText());
        assertTrue(page().contains("Not priced on: B from 5 reels (fewer are needed)"), page());
    }

    /** 190 m fit no reel but those of which five must be ordered. */
    @Test
    void whereNothingElseHoldsAPiece_itIsPricedAllTheSameAndSaidSo() throws IOException {
        write(
                "offers.csv",
                OFFERS + "SHORT,Northquay,DB08,100 m,95 EUR,,,,,,,,\nLONG,Northquay,DB08,200 m,190 EUR,,,,5,,,,\n");
        request("190 m", 2, "");
        assertEquals("384 EUR", rope().get("costAlone").asText());
        assertTrue(page().contains("whose minimum is 5 reels: of them 2 are taken"), page());
        write("offers.csv", OFFERS + "FEW,Northquay,DB08,200 m,190 EUR,,,2,,,,,\n");
        request("190 m", 3, "");
        assertEquals("576 EUR", rope().get("costAlone").asText());
        assertTrue(page().contains("of which there are 2 reels: 3 are taken"), page());
    }

    /** Due on Friday the 13th, cut by then: four days and six more are in time on the 12th, and a day more on the 13th. */
    @ParameterizedTest
    @CsvSource({"4, 6, 100 EUR", "4, 7, 100 EUR", "4, 8, 190 EUR", "11, 0, 100 EUR", "12, 0, 190 EUR"})
    void whatComesTooLateForTheDayAsked_isLeftOut(int days, int spread, String each) throws IOException {
        write("offers.csv", OFFERS + REAL + "SLOW,Northquay,DB08,200 m,100 EUR,,,,," + days + "," + spread + ",,\n");
        request("190 m", 1, "2026-03-13");
        assertEquals(each, rope().at("/buying/sizes/0/paid").asText());
        request("190 m", 1, "");
        assertEquals("100 EUR", rope().at("/buying/sizes/0/paid").asText());
    }

    @Test
    void whereNothingComesInTime_isSaid() throws IOException {
        write("offers.csv", OFFERS + "SLOW,Northquay,DB08,200 m,100 EUR,,,,,30,5,,\n");
        request("190 m", 1, "2026-03-13");
        assertTrue(page().contains("SLOW is counted on from 2026-04-06 only"), page());
    }

    @Test
    void aRopeNobodyOffers_isPricedOnItsUsualReel() throws IOException {
        write("offers.csv", OFFERS + "NONE,Northquay,DB08,200 m,50 EUR,,,0,,,,,\n");
        request("190 m", 1, "");
        assertEquals("192 EUR", rope().get("costAlone").asText());
        assertTrue(page().contains("Nobody offers this rope so that it can be ordered today"), page());
        assertTrue(
                page().replaceAll("\\s+", " ").contains("priced on reels of 200 m at the price of the rope"), page());
    }

    /** 200 m weigh 10 kg: 10 x 0.30 = 3 EUR a reel; with 1 EUR of freight a reel of 190 EUR comes to 194 EUR. */
    @Test
    void freight_belongsToThePriceOfRope() throws IOException {
        write("offers.csv", OFFERS + "A,Northquay,DB08,200 m,190 EUR,,1 EUR,,,,,,\n");
        write(
                "suppliers.csv",
                """
                supplier,freight by order,freight by weight,free freight from,minimum order
                Northquay,8.00 EUR,0.30 EUR/kg,760 EUR,500 EUR
                """);
        request("95 m", 2, "");
        JsonNode quote = quoted();
        assertEquals("196 EUR", quote.at("/ropes/0/costAlone").asText());
        assertEquals("8.00 EUR", quote.at("/orders/0/freightByOrder").asText());
        assertEquals("202.00 EUR", quote.at("/orders/0/sum").asText());
        // Of 200 m 190 are pieces and 10 scrap: all is drawn, and the line pays the whole freight by order.
        assertEquals("8.00 EUR", item(quote, "freight by order"));
        assertTrue(page().contains("Northquay sends nothing below 500.00 EUR"), page());
        // 95 m of a reel, and 105 m go back to the rack: 95/200 of it is 3.80 EUR.
        request("95 m", 1, "");
        assertEquals("3.80 EUR", item(quoted(), "freight by order"));
        // Four reels come to 760 EUR, which comes freight paid: 4 x 192.
        request("190 m", 4, "");
        JsonNode free = quoted();
        assertEquals("768 EUR", free.at("/ropes/0/costAlone").asText());
        assertTrue(free.at("/orders/0/freightPaid").asBoolean());
        assertEquals("", item(free, "freight by order"));
    }

    private static String item(JsonNode quote, String item) {
        for (JsonNode each : quote.at("/lines/0/items")) {
            if (each.get("item").asText().equals(item)) {
                return each.get("amount").asText();
            }
        }
        return "";
    }

    @Test
    void aRopeCheaperThanEveryOffer_isNamed() throws IOException {
        write("offers.csv", OFFERS + "A,Northquay,DB08,200 m,200 EUR,,,,,,,,\n");
        request("95 m", 1, "");
        assertTrue(
                page().contains("The price of the rope itself, 0.950 EUR/m, is below every offer: the cheapest comes to"
                        + " 1.000 EUR/m with its freight."),
                page());
        write("offers.csv", OFFERS + REAL);
        assertFalse(page().contains("is below every offer"), page());
    }

    /** One piece of 95 m off each reel of 100 m: 401 x (95 + 2) = 38,897 EUR; 1,200 of them 116,400 EUR. */
    @ParameterizedTest
    @ValueSource(ints = {400, 401, 1_200})
    void moreThanFourHundredReels_arePriced(int pieces) throws IOException {
        write("offers.csv", OFFERS + "A,Northquay,DB08,100 m,95 EUR,,,,,,,,\n");
        request("95 m", pieces, "");
        JsonNode rope = rope();
        assertEquals(97 * pieces + " EUR", rope.get("costAlone").asText());
        assertEquals(pieces, rope.at("/buying/sizes/0/reels").asInt());
    }

    @Test
    void morePiecesThanCanBeWorkedOut_areRefusedInASentence() throws IOException {
        write("offers.csv", OFFERS + REAL);
        request("95 m", 5_001, "");
        Run run = Run.of("quote", folder.toString(), folder.resolve("r.csv").toString());
        assertEquals(3, run.code(), run.err());
        assertTrue(run.err().contains("at most 5000 pieces of DB08 in one quote"), run.err());
    }

    @ParameterizedTest
    @ValueSource(ints = {401, 1_200})
    void moreThanFourHundredReels_areAdvised(int pieces) throws IOException {
        write("offers.csv", OFFERS + "A,Northquay,DB08,100 m,95 EUR,,,,,,,,\n");
        write("orders.csv", "order,line,customer,rope,length,quantity\nG-1,1,x,DB08,95 m," + pieces + "\n");
        Run run = Run.of("buy", folder.toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains(pieces + " reels of 100 m DB08"), run.out());
    }
}
