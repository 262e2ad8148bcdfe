package bitterend.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Rope;
import bitterend.demand.MarksPropertiesTest.Wanted;
import bitterend.exchange.OrderLine;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.measure.Units;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.GreedyStrategy;
import bitterend.report.Figures;
import bitterend.report.PlanView;
import bitterend.report.sheet.CardPage;
import bitterend.report.sheet.CardWork;
import bitterend.report.sheet.SheetMaker;
import bitterend.report.sheet.SheetPage;
import bitterend.stock.Reel;
import bitterend.stock.RisingValue;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static final Pattern MARK = Pattern.compile("<tr><td><b>([^<]*)</b></td><td class=\"c-for\">[^<]*</td>"
            + "<td>[^<]*</td><td class=\"figure\">([^<]*)</td><td>([^<]*)</td>"
            + "<td class=\"figure\"><b>([^<]*)</b></td></tr>");
    private static final Pattern LABEL = Pattern.compile("<text[^>]*>([^<]*)</text>");
    private static final Pattern THROAT = Pattern.compile("<b>Second throat: (.*?) from the ([^<]*)\\.</b>");
    private static final Pattern PIECE =
            Pattern.compile("<tr><td><b>[^<]*</b></td><td class=\"figure\"><b>([^<]*)</b></td><td>REEL");
    private static final Pattern EYE = Pattern.compile("<tr><td>[^<]*</td>((?:<td class=\"figure\"><b>[^<]*</b></td>)+)"
            + "<td class=\"c-made\">([^<]*)</td></tr>");
    private static final Pattern FIGURE = Pattern.compile("<b>([^<]*)</b>");
    private static final Pattern AT = Pattern.compile("<td class=\"c-at\">([^<]*)</td>");

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
        if (line.isEmpty() || marks(PagesPropertiesTest.json(line.get())).isEmpty()) {
            return;
        }
        Demanded sound = line.get().demanded();
        Demanded mutant = new Demanded(
                sound.pieces(),
                sound.derivations(),
                sound.work(),
                sound.layouts().stream().map(PagesPropertiesTest::moved).toList(),
                sound.findCard().orElse(null),
                sound.findings(),
                sound.remarks());
        JsonNode held = PagesPropertiesTest.json(line.get());
        Paper paper = Paper.of(new OrderLine(line.get().assembly(), mutant), wanted.rope(), Units.METRIC);
        assertFalse(paper.cardDifferences(held).isEmpty());
        assertFalse(paper.sheetDifferences(held).isEmpty());
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
        }
    }

    /** The marks of each layout that has some, without the second throat, which is told apart. */
    private static List<List<JsonNode>> marks(JsonNode held) {
        List<List<JsonNode>> all = new ArrayList<>();
        for (JsonNode layout : held.get("layouts")) {
            List<JsonNode> marks = new ArrayList<>();
            layout.get("marks").forEach(marks::add);
            marks.removeIf(mark -> mark.get("mark").asText().equals(PagesPropertiesTest.OUTSIDE_THE_TABLE));
            if (!marks.isEmpty()) {
                all.add(marks);
            }
        }
        return all;
    }

    /** The card and the sheet of one piece off one reel. */
    private record Paper(String card, String sheet, Tape tape) {
        static Paper of(OrderLine line, Rope rope, Units units) {
            Figures figures = new Figures(units, new MoneyText("EUR", 2));
            PlanView view = view(line, rope);
            List<CardWork> work = List.of(new CardWork(line.assembly(), line.demanded()));
            return new Paper(
                    new CardPage(view, figures, work, "").html(),
                    new SheetPage().html(new SheetMaker(view, figures, work).sheet("")),
                    new Tape(units));
        }

        private static PlanView view(OrderLine line, Rope rope) {
            Reel reel = new Reel(
                    "REEL",
                    rope.id(),
                    "",
                    new Reel.Contents(Length.ofMetres(900), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                    List.of(),
                    Reel.Papers.NONE,
                    Reel.Custody.FREE,
                    false,
                    Reel.Where.UNKNOWN);
            PackingProblem problem = new PackingProblem(
                    DAY,
                    Map.of(rope.id(), rope),
                    line.demanded().pieces(),
                    List.of(reel),
                    Map.of(rope.id(), new RisingValue(rope.price(), rope.worth(), Ratio.percent(15), Cost.ZERO)),
                    new Prices(Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO),
                    List.of(),
                    Map.of());
            return new PlanView(
                    "A loft",
                    problem,
                    new DayPlanner(new GreedyStrategy()).plan(problem, Effort.of(Duration.ofSeconds(1))),
                    Map.of(),
                    List.of());
        }

        List<String> cardDifferences(JsonNode held) {
            List<String> differences = new ArrayList<>();
            List<List<String[]>> tables = new ArrayList<>();
            for (String block : card.split("<div class=\"end\">")) {
                List<String[]> rows = new ArrayList<>();
                Matcher row = MARK.matcher(block);
                while (row.find()) {
                    rows.add(new String[] {row.group(1), row.group(2), row.group(3), row.group(4)});
                }
                tables.add(rows);
            }
            for (List<JsonNode> marks : marks(held)) {
                if (tables.stream().noneMatch(rows -> tape.isSame(rows, marks))) {
                    differences.add("no such marks: " + marks);
                }
                marks.stream().filter(mark -> !isDrawn(mark)).forEach(mark -> differences.add("not drawn: " + mark));
            }
            secondThroat(held, differences);
            Matcher piece = PIECE.matcher(card);
            if (!piece.find() || !isCut(piece.group(1), held)) {
                differences.add("cut: " + held.get("derivations").get(0).get("cut"));
            }
            return differences;
        }

        /** A label of the drawing has the mark's name and its place to the nearest step. */
        private boolean isDrawn(JsonNode mark) {
            String held = mark.path("fromCutEnd").asText("");
            String name = mark.get("mark").asText();
            Matcher label = LABEL.matcher(card);
            while (!held.isEmpty() && label.find()) {
                String words = label.group(1);
                if (words.startsWith(name + " ")
                        && tape.steps(Tape.exact(words.substring(name.length() + 1))
                                        .units())
                                == tape.steps(Tape.exact(held).units())) {
                    return true;
                }
            }
            return held.isEmpty();
        }

        private void secondThroat(JsonNode held, List<String> differences) {
            Matcher printed = THROAT.matcher(card);
            for (JsonNode layout : held.get("layouts")) {
                for (JsonNode mark : layout.get("marks")) {
                    if (mark.get("mark").asText().equals(PagesPropertiesTest.OUTSIDE_THE_TABLE)
                            && !(printed.find()
                                    && printed.group(2).equals(mark.get("from").asText())
                                    && isNearest(
                                            printed.group(1),
                                            mark.get("distance").asText()))) {
                        differences.add("second throat: " + mark);
                    }
                }
            }
        }

        private boolean isNearest(String printed, String exact) {
            return tape.steps(Tape.exact(printed).units())
                    == tape.steps(Tape.exact(exact).units());
        }

        /** The rows of the sheet: from the cut end, or with + from the mark before; and where the counter stands. */
        List<String> sheetDifferences(JsonNode held) {
            List<List<String>> rows = new ArrayList<>();
            Matcher eye = EYE.matcher(sheet);
            while (eye.find()) {
                List<String> figures = new ArrayList<>();
                Matcher figure = FIGURE.matcher(eye.group(1));
                while (figure.find()) {
                    figures.add(figure.group(1));
                }
                rows.add(figures);
            }
            List<String> differences = new ArrayList<>();
            for (List<JsonNode> marks : marks(held)) {
                if (rows.stream().noneMatch(row -> isRow(row, marks))) {
                    differences.add("not on the sheet: " + marks);
                }
            }
            Matcher at = AT.matcher(sheet);
            List<String> counter = new ArrayList<>();
            while (at.find()) {
                counter.add(at.group(1));
            }
            if (counter.stream().noneMatch(reading -> isReading(reading, held))) {
                differences.add("counter: " + counter);
            }
            return differences;
        }

        private boolean isRow(List<String> row, List<JsonNode> marks) {
            boolean same = row.size() == marks.size();
            for (int i = 0; same && i < row.size(); i++) {
                String place = marks.get(i).path("fromCutEnd").asText("");
                boolean onward = row.get(i).startsWith("+ ");
                same = onward == place.isEmpty()
                        && (onward
                                ? Math.abs(Tape.exact(row.get(i).substring(2)).units()
                                                - Tape.exact(marks.get(i)
                                                                .get("distance")
                                                                .asText())
                                                        .units())
                                        <= tape.step()
                                : isNearest(row.get(i), place));
            }
            return same;
        }

        private boolean isReading(String printed, JsonNode held) {
            String bare = printed.strip();
            return !bare.isEmpty() && isCut(tape.units() == Units.METRIC ? bare + " m" : bare, held);
        }

        /** A cut is printed exactly; in whole millimetres it is the one held. */
        private static boolean isCut(String printed, JsonNode held) {
            return LengthText.parseFine(printed)
                    .value()
                    .filter(cut -> LengthText.exact(cut.roundedUp())
                            .equals(held.get("derivations").get(0).get("cut").asText()))
                    .isPresent();
        }
    }

    @Provide
    Arbitrary<Wanted> wanted() {
        return MarksPropertiesTest.rows();
    }
}
