package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Grade;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Thimble;
import bitterend.catalogue.ThroatAngle;
import bitterend.exchange.form.InputFile;
import bitterend.finding.Findings;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Thimbles and fittings of a shop. */
final class ThimblesJsonTest {

    @Test
    void thimblesAndFittings_areRead() {
        SpliceBook book = read(
                """
                {"format": "bitterend/thimbles/1",
                 "thimbles": [{"id": "T12", "groove": "130 mm", "throatToBearing": "55 mm", "crown": "6 mm",
                               "ropeFrom": "11 mm", "ropeTo": "1/2 in"}],
                 "fittings": [{"id": "fork-12", "pinToBore": "45 mm", "ropeFrom": "12 mm", "ropeTo": "12 mm"}]}
                """,
                new Findings());
        assertEquals(
                new Thimble(
                        "T12",
                        FineLength.ofMillimetres(130),
                        FineLength.ofMillimetres(55),
                        FineLength.ofMillimetres(6),
                        ThroatAngle.ofDegrees(60),
                        Diameter.ofMillimetres(11),
                        new Diameter(127_000),
                        new Provenance("the shop's thimbles.json", Grade.SHOP, true)),
                book.findThimble("T12").orElseThrow());
        assertEquals(
                FineLength.ofMillimetres(45),
                book.findFitting("fork-12").orElseThrow().pinToBore());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "'thimbles': [{'id': 'T', 'groove': '0 mm', 'throatToBearing': '5 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'thimbles': [{'id': 'T', 'groove': '9 mm', 'throatToBearing': '5 mm', 'ropeFrom': '3 mm', 'ropeTo': '2 mm'}]",
                "'thimbles': [{'id': 'T', 'groove': '9 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'thimbles': [{'id': 'T', 'groove': '9 mm', 'throatToBearing': '5 mm', 'throatAngle': 181, 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'thimbles': [{'id': 'T 1', 'groove': '9 mm', 'throatToBearing': '5 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'fittings': [{'id': 'F', 'pinToBore': '-45 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'fittings': [{'id': 'F', 'pinToBore': '45', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'fittings': [{'id': 'F', 'pinToBore': '4 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}, {'id': 'F', 'pinToBore': '4 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'thimbles': [{'id': 'T', 'groove': '9 mm', 'insideWidth': '9 mm', 'insideLength': '8 mm', 'throatToBearing': '5 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'fittings': [{'id': 'F', 'pinToBore': '4 mm', 'growth': '-1 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'thimbles': [{'id': 'T', 'overallWidth': '9 mm', 'overallLength': '20 mm', 'insideWidth': '10 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'thimbles': [{'id': 'T', 'overallWidth': '9 mm', 'insideWidth': '5 mm', 'ropeFrom': '1 mm', 'ropeTo': '2 mm'}]",
                "'fitting': []",
            })
    void badRow_isTold(String members) {
        Findings findings = new Findings();
        SpliceBook book = read("{\"format\": \"bitterend/thimbles/1\", " + members.replace('\'', '"') + "}", findings);
        assertTrue(findings.hasErrors());
        assertEquals(SplicesJson.builtIn().thimbles(), book.thimbles());
        assertTrue(book.fittings().size() <= 1);
    }

    /** One for every size of the dealers' sheets, millimetres and inches; none is verified. */
    @ParameterizedTest
    @CsvSource({
        "heavy-1/4in, 1/4 in",
        "heavy-5/16in, 5/16 in",
        "heavy-3/8in, 3/8 in",
        "heavy-1/2in, 1/2 in",
        "heavy-5/8in, 5/8 in",
        "heavy-3/4in, 3/4 in",
        "heavy-7/8in, 7/8 in",
        "heavy-1in, 1 in",
        "light-2.5, 2.5 mm",
        "light-3, 3 mm",
        "light-4, 4 mm",
        "light-5, 5 mm",
        "light-6, 6 mm",
        "light-8, 8 mm",
        "light-10, 10 mm",
        "light-12, 12 mm",
        "light-16, 16 mm",
        "light-20, 20 mm",
        "light-22, 22 mm",
        "light-24, 24 mm"
    })
    void shop_startsWithThimblesByRopeSize(String id, String rope) {
        Thimble thimble = SplicesJson.builtIn().findThimble(id).orElseThrow();
        assertEquals(DiameterText.parse(rope).value().orElseThrow(), thimble.ropeTo());
        assertFalse(thimble.provenance().verified());
        assertEquals(Grade.SECONDARY, thimble.provenance().grade());
        assertTrue(thimble.provenance().source().contains("dealer's sheet"));
    }

    /** A heavy thimble for 1/2 in, inside 1.50 by 2.75 in, 6.641 in round; rim 2.75 by 3.62 in: the groove lies between. */
    @Test
    void groove_ofASheetLiesHalfWayBetweenInsideAndRim() {
        Thimble heavy = SplicesJson.builtIn().findThimble("heavy-1/2in").orElseThrow();
        double inches = heavy.groove().units() / 254_000.0;
        // a teardrop 2.125 by 3.185 in: r 1.0625, d 2.1225
        double between =
                2 * Math.sqrt(2.1225 * 2.1225 - 1.0625 * 1.0625) + 2.125 * (Math.PI - Math.acos(1.0625 / 2.1225));
        assertEquals(between, inches, 0.001);
        assertTrue(inches > 6.641 && inches < 9.69, () -> inches + " in");
        assertEquals(new FineLength(698_500), heavy.throatToBearing());
    }

    @Test
    void shopsOwnThimble_takesThePlaceOfOneOfTheStart() {
        SpliceBook book = read(
                """
                {"format": "bitterend/thimbles/1",
                 "thimbles": [{"id": "light-12", "groove": "140 mm", "throatToBearing": "55 mm",
                               "ropeFrom": "10 mm", "ropeTo": "12 mm"}]}
                """,
                new Findings());
        Thimble own = book.findThimble("light-12").orElseThrow();
        assertEquals(FineLength.ofMillimetres(140), own.groove());
        assertTrue(own.provenance().verified());
        assertEquals(SplicesJson.builtIn().thimbles().size(), book.thimbles().size());
    }

    /** Inside 22 by 41 mm is more than 100 mm round: a groove outside of it cannot be shorter. */
    @Test
    void typedGroove_isComparedWithTheInsideOfItsRing() {
        Findings findings = new Findings();
        read(
                """
                {"format": "bitterend/thimbles/1",
                 "thimbles": [{"id": "T", "groove": "90 mm", "insideWidth": "22 mm", "insideLength": "41 mm",
                               "throatToBearing": "42 mm", "ropeFrom": "6 mm", "ropeTo": "6 mm"}]}
                """,
                findings);
        assertFalse(findings.hasErrors());
        assertTrue(findings.sorted().get(0).expected().contains("the inside of the ring by its width and length"));
    }

    private static SpliceBook read(String text, Findings findings) {
        return new ThimblesJson(findings).read(new InputFile("thimbles.json", text, ""), SplicesJson.builtIn());
    }
}
