package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.report.BuyLabels.Label;
import java.util.List;
import org.junit.jupiter.api.Test;

final class BuyLabelsTest {
    /** 50, 100, 200 and 500 m where the scale reaches to 5000 m: at 76, 82, 94 and 130. */
    @Test
    void labelsCloseTogether_standInRowsOfTheirOwn() {
        BuyLabels labels = new BuyLabels();
        labels.add(76, "50 m");
        labels.add(82, "100 m");
        labels.add(94, "200 m");
        labels.add(130, "500 m");
        labels.add(130, "500 m");
        labels.add(670, "5000 m");
        List<Label> all = labels.all();
        assertEquals(5, all.size(), "a length is printed once");
        for (Label a : all) {
            for (Label b : all) {
                assertTrue(
                        a.equals(b) || a.row() != b.row() || a.to() < b.from() || b.to() < a.from(), a + " over " + b);
            }
        }
        assertEquals(2, labels.more());
    }

    @Test
    void labelsFarApart_shareARow() {
        BuyLabels labels = new BuyLabels();
        labels.add(100, "50 m");
        labels.add(200, "100 m");
        assertEquals(0, labels.more());
    }
}
