package bitterend.report.sheet;

import bitterend.catalogue.Termination.Kind;
import bitterend.demand.Demanded;
import bitterend.demand.SpliceCard;
import bitterend.demand.SpliceLayout;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.report.BenchMarks;
import bitterend.report.Figures;
import bitterend.report.sheet.CardSheet.EndBlock;
import bitterend.report.sheet.LayoutSheet.MarkLine;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The blocks of a card that say how each end is marked and made; two ends alike share one. */
final class EndBlocks {
    /** A mark of the finished assembly, not of the piece: the throat of the second eye. */
    private static final String SECOND_THROAT = "throat, measured";

    private final Demanded demanded;
    private final Figures figures;

    EndBlocks(Demanded demanded, Figures figures) {
        this.demanded = demanded;
        this.figures = figures;
    }

    List<EndBlock> all() {
        List<EndBlock> blocks = new ArrayList<>();
        demanded.findCard().stream()
                .flatMap(card -> card.ends().stream())
                .map(this::end)
                .forEach(block -> add(blocks, block));
        demanded.layouts().stream()
                .filter(layout -> demanded.findCard().stream()
                        .flatMap(card -> card.ends().stream())
                        .noneMatch(end -> end.name().equals(layout.end())))
                .map(layout -> block(layout.end(), layout.name(), List.of(), List.of(layout)))
                .forEach(blocks::add);
        return blocks;
    }

    /** The second of two ends alike is the first, but for its throat. */
    private static void add(List<EndBlock> blocks, EndBlock block) {
        EndBlock before = blocks.isEmpty() ? block : blocks.get(0);
        if (!blocks.isEmpty() && block.first().named("").equals(before.first().named(""))) {
            blocks.set(0, block.named(EndBlock.BOTH));
        } else {
            blocks.add(block);
        }
    }

    private EndBlock end(SpliceCard.End end) {
        List<SpliceLayout> layouts = demanded.layouts().stream()
                .filter(layout -> layout.end().equals(end.name()))
                .toList();
        EndBlock block = block(end.name(), end.made(), facts(end), layouts);
        return end.kind() == Kind.GROMMET ? block.named(EndBlock.RING) : block;
    }

    private EndBlock block(String name, String made, List<String> facts, List<SpliceLayout> layouts) {
        List<MarkLine> lines = new ArrayList<>();
        List<String> counts = new ArrayList<>();
        String throat = "";
        for (SpliceLayout layout : layouts) {
            BenchMarks marks = BenchMarks.of(layout, figures);
            lines.addAll(lines(marks, figures));
            layout.counts().forEach(count -> counts.add(figures.sentence(count)));
            throat = throat(marks);
        }
        return new EndBlock(capital(name), made, facts, lines, throat, counts, figures.written(caution(name)));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Marks as they are printed; the second throat stands apart from them. */
    static List<MarkLine> lines(BenchMarks marks, Figures figures) {
        return marks.lines().stream()
                .filter(line -> !line.mark().name().equals(SECOND_THROAT))
                .map(line -> new MarkLine(
                        line.mark().name(),
                        line.mark().on(),
                        figures.sentence(line.mark().from()),
                        figures.tape(line.distance()),
                        line.isFromCutEnd() ? figures.tape(line.place()) : "",
                        figures.sentence(line.mark().purpose())))
                .toList();
    }

    private String throat(BenchMarks marks) {
        return marks.lines().stream()
                .filter(line -> line.mark().name().equals(SECOND_THROAT))
                .findFirst()
                .map(line -> figures.length(line.mark().distance()) + " from the "
                        + figures.sentence(line.mark().from()))
                .orElse("");
    }

    /** The eye, how it works on its pin, and what its splice takes up; a ring's further rounds are marks. */
    private List<String> facts(SpliceCard.End end) {
        List<String> facts =
                new ArrayList<>(List.of(eye(end), onPin(end.eye()), end.eye().throatAngle()));
        if (end.takeUp().isPositive() && end.kind() != Kind.GROMMET) {
            facts.add("takes up about " + figures.tape(end.takeUp()));
        }
        return facts.stream()
                .filter(fact -> !fact.isEmpty())
                .map(EndBlocks::capital)
                .toList();
    }

    /** Both ratios of eye to pin, rounded down: the eye is not praised as larger than it is. */
    private String onPin(SpliceCard.Eye eye) {
        if (eye.pin().equals(Diameter.NONE) || !eye.lining().isEmpty()) {
            return "";
        }
        return "on its pin of " + LengthText.print(eye.pin().asLength(), figures.units()) + " it is "
                + figures.tape(eye.used())
                + " long, " + times(eye.used(), eye.pin()) + " x the pin; laid flat " + times(eye.flat(), eye.pin())
                + " x";
    }

    private static String times(FineLength length, Diameter pin) {
        return BigDecimal.valueOf(length.units())
                .divide(BigDecimal.valueOf(pin.units()), 2, RoundingMode.DOWN)
                .toPlainString();
    }

    private String eye(SpliceCard.End end) {
        SpliceCard.Eye eye = end.eye();
        if (!eye.lining().isEmpty()) {
            return end.hasEye()
                    ? "thimble " + eye.lining() + ", " + figures.tape(eye.flat())
                            + " from its throat to its bearing point"
                    : "fitting " + eye.lining() + ", " + figures.tape(eye.flat())
                            + (end.tail().isPositive()
                                    ? " from the centre of its pin to where the rope turns"
                                    : " from the centre of its pin to the bottom of its bore");
        }
        return end.hasEye() && eye.flat().isPositive()
                ? "eye of " + figures.tape(eye.flat()) + " inside, laid flat"
                : "";
    }

    /** The caution of the row, and which of its numbers nobody has checked. */
    private String caution(String name) {
        return demanded.work().stream()
                .filter(work -> work.end().equals(name))
                .flatMap(work -> Stream.of(work.caution(), work.unchecked()))
                .filter(words -> !words.isEmpty() && !words.startsWith("Follow the rope maker"))
                .collect(Collectors.joining(" "));
    }
}
