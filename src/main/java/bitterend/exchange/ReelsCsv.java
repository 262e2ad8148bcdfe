package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.LookAlike;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.measure.MassText;
import bitterend.measure.Written;
import bitterend.stock.Flaw;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code reels.csv}, the rope on the rack. */
final class ReelsCsv {
    static final String NAME = "reels.csv";
    private static final Reading<Reel.State> STATE = Readings.word(Reel.State.values(), Codec::word);
    private static final Reading<Reel.Draw> DRAW = Readings.word(Reel.Draw.values(), Codec::word);
    private static final Reading<Reel.Known> KNOWN = Readings.word(Reel.Known.values(), Reel.Known::word);
    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("reel", "rope", "length"),
            List.of(
                    "lot",
                    "uncertainty",
                    "known",
                    "lead trim",
                    "inner wraps",
                    "flaws",
                    "certificate",
                    "certificate number",
                    "use by",
                    "received",
                    "owner",
                    "state",
                    "for order",
                    "held",
                    "full",
                    "place",
                    "mass",
                    "draw",
                    "note"));

    private final Ropes ropes;
    private final Findings findings;

    ReelsCsv(Ropes ropes, Findings findings) {
        this.ropes = ropes;
        this.findings = findings;
    }

    /** The reels by id. */
    List<Reel> read(InputFile file) {
        List<Reel> reels = new ArrayList<>();
        Map<String, String> ids = new HashMap<>();
        LookAlike met = new LookAlike();
        Map<String, LookAlike> lots = new HashMap<>();
        for (Fields row : new CsvTable(file, COLUMNS, findings).rows()) {
            Reel reel = reel(row);
            row.once("reel", reel.id(), ids);
            row.unlike("reel", reel.id(), met);
            row.unlike("lot", reel.lot(), lots.computeIfAbsent(reel.rope(), rope -> new LookAlike()));
            if (row.sound()) {
                ropes.find(reel.rope()).ifPresent(rope -> Unlikely.tell(row, reel.length(), rope));
                reels.add(reel);
            }
        }
        reels.sort(Comparator.comparing(Reel::id, NaturalOrder.IDS));
        return reels;
    }

    /** The reel of one row. */
    Reel reel(Fields row) {
        Reel reel = recorded(row, Readings::id);
        if (row.sound()) {
            checkFlaws(row, reel);
            warnOfHeld(row, reel);
        }
        return reel;
    }

    /** The reel of one row as it was booked: in a ledger flaws may overlap. */
    Reel recorded(Fields row, Reading<String> ids) {
        String id = row.require("reel", ids, "?" + row.place());
        String rope = row.require("rope", Readings::id, "?");
        if (row.sound() && !ropes.mayKnow(rope)) {
            row.error("rope", "a rope of " + ropes.file() + ropes.hint(rope));
        }
        Reel.Contents contents = contents(row);
        return new Reel(
                id,
                rope,
                row.optional("lot", StockText::lot, ""),
                contents,
                row.optional("flaws", FlawText::parse, List.of()),
                papers(row),
                custody(row),
                row.optional("full", Readings::yesOrNo, false),
                where(row));
    }

    private static Reel.Contents contents(Fields row) {
        Reel.Contents contents = new Reel.Contents(
                row.require("length", Readings::presentAsWritten, Written.worked(new Length(1))),
                row.optional("uncertainty", Readings::allowance, Length.ZERO),
                row.optional("lead trim", Readings::allowance, Length.ZERO),
                row.optional("inner wraps", Readings::allowance, Length.ZERO),
                row.optional("known", KNOWN, Reel.Known.METERED));
        if (row.sound() && !contents.certainEnd().isLongerThan(contents.leadTrim())) {
            row.warning(
                    "length", "more than uncertainty, lead trim and inner wraps together: nothing of it can be used");
        }
        return contents;
    }

    private static void checkFlaws(Fields row, Reel reel) {
        List<Flaw> flaws = new ArrayList<>(reel.flaws());
        flaws.sort(Comparator.comparing(Flaw::from).thenComparing(Flaw::to));
        for (int i = 0; i < flaws.size() && row.sound(); i++) {
            if (flaws.get(i).to().isLongerThan(reel.length())) {
                row.error("flaws", "every flaw within the length of the reel");
            } else if (i > 0
                    && flaws.get(i).from().isShorterThan(flaws.get(i - 1).to())) {
                row.error("flaws", "flaws that do not overlap");
            }
        }
    }

    private static void warnOfHeld(Fields row, Reel reel) {
        Length held = reel.custody().held().stream().map(Held::length).reduce(Length.ZERO, Length::plus);
        if (held.isPositive() && held.isLongerThan(reel.contents().certainEnd())) {
            row.warning("held", "no more than the reel has: more than the reel has is held");
        }
    }

    private static Reel.Papers papers(Fields row) {
        return new Reel.Papers(
                row.optional("certificate", Readings::mark, ""),
                row.optional("certificate number", Readings::mark, ""),
                row.optional("use by", Readings::dayOfTable, LocalDate.MAX),
                row.optional("received", Readings::dayOfTable, LocalDate.MIN));
    }

    private static Reel.Custody custody(Fields row) {
        String owner = row.optional("owner", Readings::text, "");
        Reel.State state = row.optional("state", STATE, Reel.State.FREE);
        String order = row.optional("for order", Readings::orderId, "");
        boolean needsOrder = state == Reel.State.RESERVED || !owner.isEmpty();
        boolean takesOrder = needsOrder || state == Reel.State.ON_HOLD;
        if (needsOrder && order.isEmpty()) {
            row.error("for order", "the order that a reserved reel or a customer's own rope is kept for");
            return Reel.Custody.FREE;
        }
        if (!takesOrder && !order.isEmpty()) {
            row.error("for order", "nothing, unless the reel is reserved, on hold or a customer's own");
            return Reel.Custody.FREE;
        }
        return new Reel.Custody(owner, state, order, row.optional("held", Held::parse, List.of()));
    }

    private static Reel.Where where(Fields row) {
        return new Reel.Where(
                row.optional("place", Readings::text, ""),
                row.optional("mass", MassText::parse, Mass.ZERO),
                row.optional("draw", DRAW, Reel.Draw.OUTSIDE),
                row.optional("note", Readings::text, ""));
    }
}
