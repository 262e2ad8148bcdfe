package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.catalogue.Rope;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonTree;
import bitterend.finding.Findings;
import bitterend.measure.FineLength;
import bitterend.measure.MoneyText;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RopeFormTest {
    private static final MoneyText EUR = new MoneyText("EUR", 2);

    private static final String ROPE =
            """
            {"format": "ropes", "ropes": [
              {"id": "LA14", "name": "laid 14", "construction": "3-strand", "fibre": "polyester", "core": "none",
               "grade": "HT", "diameter": "14 mm", "lay": "right ordinary", "finish": "hard", "colour": "white",
               "tracer": "blue", "mass": "120 g/m", "price": "1.80 EUR/m", "cutLoss": "40 mm", "cutToNearest": "5 mm",
               "keepFrom": "2 m", "usualReel": "220 m", "layLength": "50 mm"}]}
            """;

    @Test
    void everyMember_comesBackFromAPlan() {
        List<Rope> typed = ropes(ROPE);
        assertEquals(FineLength.ofMillimetres(50), typed.get(0).layLength());
        String kept = new JsonTree()
                .with("format", "ropes")
                .with(
                        "ropes",
                        typed.stream().map(rope -> RopeForm.tree(rope, EUR)).toList())
                .text();
        assertEquals(typed, ropes(kept));
    }

    private static List<Rope> ropes(String json) {
        Findings findings = new Findings();
        List<Rope> ropes = JsonDocument.read(
                        new InputFile("ropes.json", json, ""), "ropes", findings, root -> new RopesJson(EUR, findings)
                                .ropes(root.objects("ropes")))
                .orElseThrow();
        assertEquals(List.of(), findings.sorted());
        return ropes;
    }
}
