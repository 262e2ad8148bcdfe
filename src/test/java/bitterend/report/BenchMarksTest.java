package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.demand.SpliceLayout;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.measure.FineLength;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

final class BenchMarksTest {

    private static Figures figures(Units units) {
        return new Figures(units, new MoneyText("EUR", 2));
    }

    private static SpliceLayout layout(long tail, long eye, long core) {
        FineLength a = new FineLength(tail);
        FineLength b = new FineLength(eye);
        FineLength c = new FineLength(core);
        return new SpliceLayout(
                "end A",
                "an eye",
                List.of(
                        new Mark("tail mark", "cover", "cut end", a, a, ""),
                        new Mark("throat mark", "cover", "tail mark", b, a.plus(b), ""),
                        new Mark("core comes out", "core", "throat mark", FineLength.ZERO, null, ""),
                        new Mark("cover goes in", "core", "core comes out", c, null, "")),
                List.of(),
                "");
    }

    /** 298.5 and 1001.4 mm: 299 and 1001, so 702 between them, not 703. */
    @Test
    void marks_addUpWhereTheirDistancesWouldNot() {
        List<BenchMarks.Line> lines = BenchMarks.of(layout(2_985_000, 7_029_000, 10), figures(Units.METRIC))
                .lines();
        assertEquals(
                List.of(299L, 1001L), List.of(lines.get(0).place(), lines.get(1).place()));
        assertEquals(702, lines.get(1).distance());
    }

    @Property
    void marks_addUpAndLieWithinHalfAStep(
            @ForAll @LongRange(min = 0, max = 100_000_000) long tail,
            @ForAll @LongRange(min = 0, max = 100_000_000) long eye,
            @ForAll @LongRange(min = 0, max = 100_000_000) long core,
            @ForAll Units units) {
        Figures figures = figures(units);
        List<BenchMarks.Line> lines =
                BenchMarks.of(layout(tail, eye, core), figures).lines();
        assertEquals(lines.get(1).place(), lines.get(0).place() + lines.get(1).distance());
        assertEquals(0, lines.get(2).place());
        assertEquals(lines.get(3).place(), lines.get(3).distance());
        long off = Math.abs(lines.get(1).place() * figures.stepUnits() - tail - eye);
        assertEquals(true, 2 * off <= figures.stepUnits(), () -> "off by " + off);
    }

    @Test
    void inches_comeFromTheExactValue() {
        Figures imperial = figures(Units.IMPERIAL);
        assertEquals("6 3/4", imperial.bareTape(imperial.steps(new FineLength(1_714_500))));
        assertEquals("1 ft 6 in", imperial.tape(new FineLength(4_572_001)));
        assertEquals("18", imperial.bareTape(imperial.steps(new FineLength(4_572_001))));
        assertEquals("1/2 in", imperial.tape(new FineLength(127_000)));
        assertEquals("41 ft 6 in", imperial.length(new FineLength(126_492_000)));
        assertEquals("252 mm", figures(Units.METRIC).tape(new FineLength(2_520_000)));
    }
}
