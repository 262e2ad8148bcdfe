package bitterend.demand;

import bitterend.PageText;
import bitterend.catalogue.Rope;
import bitterend.exchange.OrderLine;
import bitterend.measure.Cost;
import bitterend.measure.FineLength;
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
import bitterend.stock.StockValue;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The cards and the sheet of a plan, and how they differ from what {@code lengths --json} holds. */
record Paper(String card, String sheet, Tape tape) {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static final Pattern MARK = Pattern.compile("<tr><td><b>([^<]*)</b></td><td class=\"c-for\">[^<]*</td>"
            + "<td>[^<]*</td><td class=\"figure\">([^<]*)</td><td>([^<]*)</td>"
            + "<td class=\"figure\"><b>([^<]*)</b></td></tr>");
    private static final Pattern LABEL = Pattern.compile("<text[^>]*>([^<]*)</text>");
    private static final Pattern THROAT = Pattern.compile("<b>Second throat: (.*?) from the ([^<]*)\\.</b>");
    private static final Pattern PIECE =
            Pattern.compile("<tr><td><b>([^<]*)</b></td><td class=\"figure\"><b>([^<]*)</b></td><td>REEL");
    private static final Pattern CUT_ROW =
            Pattern.compile("<tr class=\"cut\"(?:(?!</tr>)(?s:.))*?<td class=\"c-at\">([^<]*)</td>\\s*"
                    + "<td class=\"c-piece\">([^<]*)</td>\\s*<td class=\"c-words\">.*?<b class=\"name\">([^<]*)</b>");
    private static final Pattern EYE = Pattern.compile("<tr><td>[^<]*</td>((?:<td class=\"figure\"><b>[^<]*</b></td>)+)"
            + "<td class=\"c-made\">([^<]*)</td></tr>");
    private static final Pattern FIGURE = Pattern.compile("<b>([^<]*)</b>");
    private static final Pattern AT = Pattern.compile("<td class=\"c-at\">([^<]*)</td>");

    /** One piece, or some, of one line off one reel. */
    static Paper of(OrderLine line, Rope rope, Units units) {
        return of(List.of(line), Map.of(rope.id(), rope), List.of(reel("REEL", rope, Length.ofMetres(900))), units);
    }

    /** A day of several lines off several reels, whose ids begin with REEL. */
    static Paper of(List<OrderLine> lines, Map<String, Rope> ropes, List<Reel> reels, Units units) {
        Figures figures = new Figures(units, new MoneyText("EUR", 2));
        PlanView view = view(lines, ropes, reels);
        List<CardWork> work = lines.stream()
                .map(line -> new CardWork(line.assembly(), line.demanded()))
                .toList();
        return new Paper(
                PageText.of(new CardPage(view, figures, work, "").html()),
                PageText.of(new SheetPage().html(new SheetMaker(view, figures, work).sheet(""))),
                new Tape(units));
    }

    static Reel reel(String id, Rope rope, Length length) {
        return new Reel(
                id,
                rope.id(),
                "",
                new Reel.Contents(length, Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                false,
                Reel.Where.UNKNOWN);
    }

    private static PlanView view(List<OrderLine> lines, Map<String, Rope> ropes, List<Reel> reels) {
        Map<String, StockValue> values = new HashMap<>();
        ropes.forEach((id, rope) ->
                values.put(id, new RisingValue(rope.price(), rope.worth(), Ratio.percent(15), Cost.ZERO)));
        PackingProblem problem = new PackingProblem(
                DAY,
                ropes,
                lines.stream()
                        .flatMap(line -> line.demanded().pieces().stream())
                        .toList(),
                reels,
                values,
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

    /** The same with the card of one line alone. */
    Paper ofLine(String line) {
        int from = card.indexOf("</span> 100, line " + line + "</h2>");
        return new Paper(from < 0 ? "" : card.substring(from, card.indexOf("</section>", from)), sheet, tape);
    }

    /** Pieces of the card with their cut lengths as printed. */
    Map<String, String> cuts() {
        Map<String, String> cuts = new TreeMap<>();
        Matcher piece = PIECE.matcher(card);
        while (piece.find()) {
            cuts.put(piece.group(1), piece.group(2));
        }
        return cuts;
    }

    /**
     * A cut on the sheet.
     *
     * @param at where the counter stands
     * @param length of the piece
     * @param piece its id
     */
    record CutRow(FineLength at, FineLength length, String piece) {}

    /** The cuts of each reel, in the order in which they pass the bench. */
    List<List<CutRow>> reels() {
        List<List<CutRow>> reels = new ArrayList<>();
        for (String reel : sheet.split("<section class=\"reel")) {
            List<CutRow> rows = new ArrayList<>();
            Matcher row = CUT_ROW.matcher(reel);
            while (row.find()) {
                rows.add(new CutRow(bare(row.group(1)), bare(row.group(2)), row.group(3)));
            }
            reels.add(rows);
        }
        reels.removeIf(List::isEmpty);
        return reels;
    }

    private FineLength bare(String figure) {
        return Tape.exact(tape.units() == Units.METRIC ? figure.strip() + " m" : figure.strip());
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
            marks.stream()
                    .filter(mark -> !isAlong(mark) && !isDrawn(mark))
                    .forEach(mark -> differences.add("not drawn: " + mark));
        }
        secondThroat(held, differences);
        if (cuts().isEmpty() || !cuts().values().stream().allMatch(cut -> isCut(cut, held))) {
            differences.add("cut: " + held.get("derivations").get(0).get("cut"));
        }
        return differences;
    }

    /** A mark of the finished assembly lies beyond what the drawing shows. */
    private static boolean isAlong(JsonNode mark) {
        return mark.get("from").asText().equals("cut end of end A");
    }

    /** A label of the drawing has the mark's name and its place to the nearest step. */
    private boolean isDrawn(JsonNode mark) {
        String held = mark.path("fromCutEnd").asText("");
        String name = mark.get("mark").asText();
        Matcher label = LABEL.matcher(card);
        while (!held.isEmpty() && label.find()) {
            String words = label.group(1);
            if (words.startsWith(name + " ")
                    && tape.steps(Tape.exact(words.substring(name.length() + 1)).units())
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
                                        printed.group(1), mark.get("distance").asText()))) {
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
        return differences;
    }

    /** Where the counter stands at the first cut: so far as the piece is long. */
    List<String> counterDifferences(JsonNode held) {
        List<String> differences = new ArrayList<>();
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

    /** The marks of each layout that has some, without the second throat, which is told apart. */
    static List<List<JsonNode>> marks(JsonNode held) {
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
}
