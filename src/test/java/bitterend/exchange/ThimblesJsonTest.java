package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Thimble;
import bitterend.catalogue.ThroatAngle;
import bitterend.finding.Findings;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
                        "T12",
                        FineLength.ofMillimetres(130),
                        FineLength.ofMillimetres(55),
                        FineLength.ofMillimetres(6),
                        ThroatAngle.ofDegrees(60),
                        Diameter.ofMillimetres(11),
                        new Diameter(127_000)),
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
                "'fitting': []",
            })
    void badRow_isTold(String members) {
        Findings findings = new Findings();
        SpliceBook book = read("{\"format\": \"bitterend/thimbles/1\", " + members.replace('\'', '"') + "}", findings);
        assertTrue(findings.hasErrors());
        assertEquals(List.of(), book.thimbles());
        assertTrue(book.fittings().size() <= 1);
    }

    private static SpliceBook read(String text, Findings findings) {
        return new ThimblesJson(findings).read(new InputFile("thimbles.json", text, ""), SplicesJson.builtIn());
    }
}
