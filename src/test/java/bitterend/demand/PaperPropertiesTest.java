package bitterend.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.MarksPropertiesTest.Wanted;
import bitterend.exchange.OrderLine;
import bitterend.measure.Units;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/**
 * What card and sheet print equals what {@code lengths --json} holds, over every row and random sizes, in millimetres and in
 * inches: marks in table and drawing, the second throat, the cut length of the piece, the mark on the counter.
 */
final class PaperPropertiesTest {
    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void paperInMillimetres_holdsWhatTheJsonHolds(@ForAll("wanted") Wanted wanted) throws Exception {
        agree(wanted, Units.METRIC);
    }

    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void paperInInches_holdsWhatTheJsonHolds(@ForAll("wanted") Wanted wanted) throws Exception {
        agree(PagesPropertiesTest.inInches(wanted), Units.IMPERIAL);
    }

    /** Paper whose marks are moved by one step of the tape is found out, card and sheet each. */
    @Property(tries = 20, edgeCases = EdgeCasesMode.NONE)
    void markMovedByAStep_isFound(@ForAll("wanted") Wanted wanted) throws Exception {
        Optional<OrderLine> line = MarksPropertiesTest.ordered(wanted);
        if (line.isEmpty() || Paper.marks(PagesPropertiesTest.json(line.get())).isEmpty()) {
            return;
        }
        Demanded sound = line.get().demanded();
        Demanded mutant = new Demanded(
                sound.pieces(),
                sound.derivations(),
                sound.work(),
                BenchPapers.of(
                        sound.layouts().stream().map(PagesPropertiesTest::moved).toList(),
                        sound.findCard().orElse(null)),
                sound.findings(),
                sound.remarks());
        JsonNode held = PagesPropertiesTest.json(line.get());
        Paper paper = Paper.of(new OrderLine(line.get().assembly(), mutant), wanted.rope(), Units.METRIC);
        assertFalse(paper.cardDifferences(held).isEmpty());
        assertFalse(paper.sheetDifferences(held).isEmpty());
    }

    /** The place where the tool comes out, or a clip, moved alone is found out, card and sheet each. */
    @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
    void toolOrClipMovedByAStep_isFound(@ForAll("toolsAndClips") Wanted wanted) throws Exception {
        OrderLine line = MarksPropertiesTest.ordered(wanted).orElseThrow();
        Demanded sound = line.demanded();
        JsonNode held = PagesPropertiesTest.json(line);
        SpliceLayout layout = sound.layouts().get(0);
        for (SpliceLayout.Mark mark : layout.marks()) {
            if (mark.name().equals("tool comes out") || mark.name().endsWith(" clip")) {
                Demanded mutant = new Demanded(
                        sound.pieces(),
                        sound.derivations(),
                        sound.work(),
                        BenchPapers.of(
                                List.of(moved(layout, mark)), sound.findCard().orElse(null)),
                        sound.findings(),
                        sound.remarks());
                Paper paper = Paper.of(new OrderLine(line.assembly(), mutant), wanted.rope(), Units.METRIC);
                assertFalse(paper.cardDifferences(held).isEmpty(), mark.name());
                assertFalse(paper.sheetDifferences(held).isEmpty(), mark.name());
            }
        }
    }

    private static SpliceLayout moved(SpliceLayout layout, SpliceLayout.Mark mark) {
        SpliceLayout all = PagesPropertiesTest.moved(layout);
        List<SpliceLayout.Mark> marks = new ArrayList<>(layout.marks());
        int place = marks.indexOf(mark);
        marks.set(place, all.marks().get(place));
        return new SpliceLayout(layout.end(), layout.name(), marks, layout.counts(), layout.caution());
    }

    @Provide
    Arbitrary<Wanted> toolsAndClips() {
        return MarksPropertiesTest.rows("bury-eye", "bury-eye-hmpe", "clip-eye", "clip-joint");
    }

    /** On the drawing no words lie on other words, nor on the line from a mark to its own. */
    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void labelsOfTheDrawing_keepClearOfOneAnother(@ForAll("wanted") Wanted wanted) {
        Optional<OrderLine> line = MarksPropertiesTest.ordered(PagesPropertiesTest.inInches(wanted));
        if (line.isPresent()) {
            for (Units units : Units.values()) {
                String card = Paper.of(line.get(), wanted.rope(), units).card();
                Labels labels = Labels.of(card);
                assertEquals(List.of(), labels.clashes(), wanted.row().id() + ", " + units);
                long drawn = line.get().demanded().layouts().stream()
                        .flatMap(layout -> layout.marks().stream())
                        .filter(mark -> mark.findFromCutEnd().isPresent())
                        .count();
                assertTrue(labels.words().size() >= drawn && labels.leaders().size() >= drawn, card);
            }
        }
    }

    /** A drawing whose labels all stand on one line is found out. */
    @Test
    void labelsOnOneLine_areFound() {
        Labels labels = Labels.of("<path d=\"M20,50 L20,20\" stroke=\"#10181d\" stroke-width=\"1.4\"/>"
                + "<text x=\"4\" y=\"30\" font-family=\"Sheet\" font-size=\"12\" text-anchor=\"start\">tail mark</text>"
                + "<text x=\"24\" y=\"30\" font-family=\"Sheet\" font-size=\"12\" text-anchor=\"start\">throat</text>");
        assertEquals(2, labels.clashes().size(), labels.clashes().toString());
    }

    /**
     * The labels of a drawing and the lines to them, in its pixels.
     *
     * @param words each with its left and right edge and its baseline
     * @param leaders each with its place, its top and its bottom
     */
    private record Labels(List<Words> words, List<int[]> leaders) {
        private static final Pattern WORDS = Pattern.compile("<text x=\"(\\d+)\" y=\"(\\d+)\" font-family=\"Sheet\""
                + " font-size=\"12\" text-anchor=\"(\\w+)\"[^>]*>([^<]*)</text>");
        private static final Pattern LEADER = Pattern.compile(
                "<path d=\"M(\\d+),(\\d+) L\\d+,(\\d+)\" stroke=\"#10181d\" stroke-width=\"1\\.[24]\"/>");
        /** The type of the sheet is narrow: 4.4 pixels a letter at this size, as measured in a browser. */
        private static final int LETTER = 5;

        private record Words(String text, int left, int right, int baseline) {}

        static Labels of(String card) {
            List<Words> words = new ArrayList<>();
            Matcher text = WORDS.matcher(card);
            while (text.find()) {
                int x = Integer.parseInt(text.group(1));
                int width = LETTER * text.group(4).length();
                int left = text.group(3).equals("start") ? x : x - width;
                words.add(new Words(text.group(4), left, left + width, Integer.parseInt(text.group(2))));
            }
            List<int[]> leaders = new ArrayList<>();
            Matcher leader = LEADER.matcher(card);
            while (leader.find()) {
                int from = Integer.parseInt(leader.group(2));
                int to = Integer.parseInt(leader.group(3));
                leaders.add(new int[] {Integer.parseInt(leader.group(1)), Math.min(from, to), Math.max(from, to)});
            }
            return new Labels(words, leaders);
        }

        List<String> clashes() {
            List<String> clashes = new ArrayList<>();
            for (int i = 0; i < words.size(); i++) {
                Words one = words.get(i);
                words.subList(i + 1, words.size()).stream()
                        .filter(other -> Math.abs(other.baseline() - one.baseline()) < 10
                                && other.left() < one.right()
                                && one.left() < other.right())
                        .forEach(other -> clashes.add(one + " on " + other));
                leaders.stream()
                        .filter(line -> line[0] > one.left()
                                && line[0] < one.right()
                                && line[1] < one.baseline()
                                && line[2] > one.baseline() - 9)
                        .forEach(line -> clashes.add(one + " on the line at " + line[0]));
            }
            return clashes;
        }
    }

    private static void agree(Wanted wanted, Units units) throws Exception {
        Optional<OrderLine> line = MarksPropertiesTest.ordered(wanted);
        if (line.isPresent()) {
            JsonNode held = PagesPropertiesTest.json(line.get());
            Paper paper = Paper.of(line.get(), wanted.rope(), units);
            assertEquals(List.of(), paper.cardDifferences(held), wanted.row().id());
            assertEquals(List.of(), paper.sheetDifferences(held), wanted.row().id());
            assertEquals(List.of(), paper.counterDifferences(held), wanted.row().id());
        }
    }

    @Provide
    Arbitrary<Wanted> wanted() {
        return MarksPropertiesTest.rows();
    }
}
