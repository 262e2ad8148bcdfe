package bitterend.report;

import bitterend.buying.Shortage;
import bitterend.measure.Length;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** On which of the days ahead rope is short, for whom, and what would help. */
public final class ShortagePage {
    private static final int NAMED = 4;

    private final Figures figures;

    public ShortagePage(Figures figures) {
        this.figures = figures;
    }

    /**
     * The page.
     *
     * @param until the last day that was looked at; {@link LocalDate#MAX} for all
     */
    public Document of(String shop, LocalDate until, List<Shortage> ropes) {
        Writing page = new Writing();
        page.heading(shop + ": rope of the days ahead" + by(until));
        write(page, ropes, " What to order: bitterend buy SHOP.");
        return page.document();
    }

    /** In a sentence which ropes are short, from which day on, and by how much. */
    public String brief(List<Shortage> ropes) {
        return summary(ropes, ropes.stream().filter(Shortage::isShort).toList());
    }

    /** The same as a section of another page. */
    void section(Writing page, LocalDate until, List<Shortage> ropes) {
        page.heading("Rope of the days ahead" + by(until));
        write(page, ropes, "");
    }

    private static String by(LocalDate until) {
        return until.equals(LocalDate.MAX) ? "" : ", for work to be cut by " + until;
    }

    private void write(Writing page, List<Shortage> ropes, String more) {
        List<Shortage> lacking = ropes.stream().filter(Shortage::isShort).toList();
        page.paragraph(summary(ropes, lacking));
        lacking.forEach(rope -> rope(page, rope));
        if (!lacking.isEmpty()) {
            page.picture(new ShortagePicture(figures, lacking).svg());
            page.paragraph(
                    "Short is what a plan of these days leaves undone, the urgent work done first: pieces must fit"
                            + " the lengths that are there. The sums beside it say how near it is; what the days before"
                            + " are cut from is taken off them." + more);
        }
        enough(page, ropes.stream().filter(rope -> !rope.isShort()).toList());
    }

    private String summary(List<Shortage> ropes, List<Shortage> lacking) {
        if (ropes.isEmpty()) {
            return "Nothing is to be cut in these days.";
        }
        if (lacking.isEmpty()) {
            return "No rope is short: all work of these days can be cut from what is there and what comes in time.";
        }
        return "Short: "
                + lacking.stream()
                        .map(rope -> rope.rope() + " from " + DueWords.named(first(rope)) + " on, "
                                + figures.length(rope.total()))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private static LocalDate first(Shortage rope) {
        return rope.days().stream()
                .filter(day -> !day.undone().isEmpty())
                .map(Shortage.Day::day)
                .findFirst()
                .orElseThrow();
    }

    private void rope(Writing page, Shortage rope) {
        page.heading(rope.rope());
        TableRows table = new TableRows(
                Column.words("cut by"),
                Column.figure("wanted\n" + figures.unit()),
                Column.figure("there\n" + figures.unit()),
                Column.figure("held\n" + figures.unit()),
                Column.figure("on order\n" + figures.unit()),
                Column.figure("short\n" + figures.unit()),
                Column.words("who waits"));
        for (Shortage.Day day : rope.days()) {
            table.row(
                    DueWords.named(day.day()),
                    bare(day.wanted()),
                    bare(day.room().there()),
                    bare(day.room().held()),
                    bare(day.room().onOrder()),
                    bare(day.shortUpTo()),
                    waiting(day));
        }
        page.table(table);
        for (Shortage.Day day : rope.days()) {
            if (!day.help().isEmpty()) {
                page.paragraph("For " + DueWords.named(day.day()) + " would do, were it settled: "
                        + day.help().stream().map(figures::sentence).collect(Collectors.joining("; ")) + ".");
            }
        }
    }

    private String bare(Length length) {
        return length.isPositive() ? figures.bareTotal(length) : "";
    }

    /** Order lines with their customers, such as {@code G-2101/2 (2 pieces) ketch Brambling}. */
    private static String waiting(Shortage.Day day) {
        Map<String, Integer> lines = new LinkedHashMap<>();
        day.undone()
                .forEach(each -> lines.merge(
                        each.piece().source().lineId() + (each.customer().isEmpty() ? "" : " " + each.customer()),
                        1,
                        Integer::sum));
        String named = lines.entrySet().stream()
                .limit(NAMED)
                .map(line -> line.getKey() + (line.getValue() > 1 ? " (" + line.getValue() + " pieces)" : ""))
                .collect(Collectors.joining("; "));
        int more = lines.size() - NAMED;
        return Wording.printable(named) + (more > 0 ? "; " + more + " more lines" : "");
    }

    private void enough(Writing page, List<Shortage> ropes) {
        if (ropes.isEmpty()) {
            return;
        }
        page.heading("Enough");
        TableRows table = new TableRows(
                Column.words("rope"),
                Column.figure("wanted\n" + figures.unit()),
                Column.figure("there\n" + figures.unit()),
                Column.figure("held\n" + figures.unit()),
                Column.figure("on order\n" + figures.unit()));
        for (Shortage rope : ropes) {
            Shortage.Room all = rope.all();
            table.row(rope.rope(), bare(wanted(rope)), bare(all.there()), bare(all.held()), bare(all.onOrder()));
        }
        page.table(table);
        List<String> coming = ropes.stream()
                .filter(rope -> rope.all().onOrder().isPositive())
                .filter(rope -> wanted(rope).isLongerThan(rope.all().there()))
                .map(Shortage::rope)
                .toList();
        if (!coming.isEmpty()) {
            page.paragraph(Brief.list("Enough only if what is on order comes in time:", coming, "more", 2));
        }
    }

    private static Length wanted(Shortage rope) {
        return rope.days().stream().map(Shortage.Day::wanted).reduce(Length.ZERO, Length::plus);
    }
}
