package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.finding.Formula;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Mass;
import bitterend.measure.MassText;
import bitterend.stock.Flaw;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import bitterend.stock.RopeWork;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes reels as {@code reels.csv}, exact, so that what is read back is what was written. */
final class ReelsText {
    private static final int LONGEST = 200;
    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");
    private static final Map<String, Function<Reel, String>> CELLS = cells();

    private ReelsText() {}

    /** The text of the file; flaws that overlap or lie behind the end, as older ledgers have them, are put right. */
    public static String csv(List<Reel> reels) {
        StringBuilder text = new StringBuilder(String.join(",", CELLS.keySet())).append('\n');
        for (Reel booked : reels) {
            Reel reel = booked.withFlaws(Flaw.merged(RopeWork.within(booked.flaws(), booked.length())));
            text.append(CELLS.values().stream()
                            .map(cell -> quoted(Formula.marked(oneLine(cell.apply(reel)))))
                            .collect(Collectors.joining(",")))
                    .append('\n');
        }
        return text.toString();
    }

    /** What is stated of a reel, by column, its flaws one by one as they were booked. */
    static Map<String, String> cells(Reel reel) {
        Map<String, String> cells = new LinkedHashMap<>();
        CELLS.forEach((column, cell) -> {
            String text = cell.apply(reel);
            if (!text.isEmpty()) {
                cells.put(column, text);
            }
        });
        return cells;
    }

    private static Map<String, Function<Reel, String>> cells() {
        Map<String, Function<Reel, String>> cells = new LinkedHashMap<>();
        cells.put("reel", Reel::id);
        cells.put("rope", Reel::rope);
        cells.put("length", reel -> reel.contents().written().kept());
        cells.put("lot", Reel::lot);
        cells.put("uncertainty", reel -> unlessZero(reel.contents().uncertainty()));
        cells.put("known", reel -> reel.contents().known().word());
        cells.put("lead trim", reel -> unlessZero(reel.contents().leadTrim()));
        cells.put("inner wraps", reel -> unlessZero(reel.contents().innerWraps()));
        cells.put("flaws", reel -> reel.flaws().stream().map(ReelsText::flaw).collect(Collectors.joining("; ")));
        cells.put("certificate", reel -> reel.papers().certificate());
        cells.put("certificate number", reel -> reel.papers().number());
        cells.put("use by", reel -> day(reel.papers().useBy()));
        cells.put("received", reel -> day(reel.papers().received()));
        cells.put("owner", reel -> reel.custody().owner());
        cells.put("state", reel -> Codec.word(state(reel.custody())));
        cells.put("for order", reel -> reel.custody().order());
        cells.put("held", reel -> Held.text(reel.custody().held()));
        cells.put("full", reel -> reel.full() ? "yes" : "no");
        cells.put("place", reel -> reel.where().place());
        cells.put(
                "mass",
                reel -> reel.where().mass().equals(Mass.ZERO)
                        ? ""
                        : MassText.exact(reel.where().mass()));
        cells.put("draw", reel -> Codec.word(reel.where().draw()));
        cells.put("note", reel -> reel.where().note());
        return cells;
    }

    /** Rope that an older ledger keeps for an order without a number serves none: it is on hold. */
    private static Reel.State state(Reel.Custody custody) {
        return custody.isReserved() && custody.order().isEmpty() ? Reel.State.ON_HOLD : custody.state();
    }

    private static String flaw(Flaw flaw) {
        return LengthText.exact(flaw.from()) + " to " + LengthText.exact(flaw.to())
                + (flaw.uncertainty().isPositive() ? " +/- " + LengthText.exact(flaw.uncertainty()) : "")
                + (flaw.what().isEmpty() ? "" : ": " + flaw.what());
    }

    private static String unlessZero(Length length) {
        return length.equals(Length.ZERO) ? "" : LengthText.exact(length);
    }

    private static String day(LocalDate day) {
        return day.equals(LocalDate.MAX) || day.equals(LocalDate.MIN) ? "" : day.toString();
    }

    /** What an older ledger took without looking is written so that it can be read: on one line, no longer than a cell. */
    private static String oneLine(String cell) {
        String plain = CONTROL.matcher(cell).replaceAll(" ").strip();
        return plain.codePointCount(0, plain.length()) <= LONGEST || plain.contains(";")
                ? plain
                : plain.substring(0, plain.offsetByCodePoints(0, LONGEST)).strip();
    }

    private static String quoted(String cell) {
        return cell.matches("[^\",;\t\r\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
