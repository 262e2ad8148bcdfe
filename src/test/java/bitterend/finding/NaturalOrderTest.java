package bitterend.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** Ids stand as a person would sort them. */
final class NaturalOrderTest {
    private static final List<String> IN_ORDER = List.of(
            "",
            "/ropes/2",
            "/ropes/2/price",
            "/ropes/10",
            "01",
            "1",
            "2",
            "10",
            "99999999999999999999",
            "100000000000000000000",
            "E-32/1.2",
            "E-32/1.2-1",
            "E-32/1.10",
            "E-32/2.1",
            "E8",
            "E8a",
            "E10",
            "I1",
            "R-9",
            "R-10",
            "i1");

    @Test
    void numbersInsideIds_countAsNumbersUnderAnyLocale() {
        Locale usual = Locale.getDefault();
        try {
            for (Locale locale : List.of(Locale.ROOT, Locale.forLanguageTag("tr"), Locale.forLanguageTag("ar-EG"))) {
                Locale.setDefault(locale);
                List<String> ids = new ArrayList<>(IN_ORDER);
                Collections.shuffle(ids, new Random(7));
                ids.sort(NaturalOrder.IDS);
                assertEquals(IN_ORDER, ids);
            }
        } finally {
            Locale.setDefault(usual);
        }
    }

    @Property
    void order_isTotal(
            @ForAll @StringLength(max = 5) @CharRange(from = '.', to = '2') String a,
            @ForAll @StringLength(max = 5) @CharRange(from = '.', to = '2') String b,
            @ForAll @StringLength(max = 5) @CharRange(from = '.', to = '2') String c) {
        int ab = Integer.signum(NaturalOrder.IDS.compare(a, b));
        int bc = Integer.signum(NaturalOrder.IDS.compare(b, c));
        assertEquals(a.equals(b), ab == 0);
        assertEquals(-ab, Integer.signum(NaturalOrder.IDS.compare(b, a)));
        assertTrue(ab > 0 || bc > 0 || NaturalOrder.IDS.compare(a, c) <= 0);
    }

    @Test
    void findings_areReadFileByFileRowByRowAndMemberByMember() {
        Findings findings = new Findings();
        for (String place : List.of("row 10", "/ropes/10", "row 2", "/ropes/2", "")) {
            findings.add(Finding.error("file", place, "", "", "something else"));
        }
        assertEquals(
                List.of("", "/ropes/2", "/ropes/10", "row 2", "row 10"),
                findings.sorted().stream().map(Finding::place).toList());
    }
}
