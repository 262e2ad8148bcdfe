package bitterend.report;

import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.packing.Arrival;
import bitterend.packing.HeldWords;
import bitterend.packing.ReelDraw;
import bitterend.packing.UncertainRest;
import bitterend.report.Mark.Kind;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What is said of a reel beside its cutting table, on every kind of page. */
public final class ReelWords {
    private final PlanView view;
    private final Figures figures;

    public ReelWords(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
    }

    /** The rope: construction, fibre, and all that tells it from its like. */
    public List<Fact> rope(ReelDraw draw) {
        Rope rope = view.rope(draw);
        RopeIdentity identity = rope.identity();
        List<Fact> facts = new ArrayList<>();
        add(facts, "rope", rope.id());
        add(facts, "construction", identity.build());
        add(facts, "in water", view.beforeCut(draw).floats() ? "floats" : "");
        add(facts, "core", identity.core());
        add(facts, "grade", identity.grade());
        add(
                facts,
                "lay",
                rope.identity().lay() == bitterend.catalogue.Lay.NONE
                        ? ""
                        : identity.lay().word());
        add(facts, "finish", identity.finish());
        add(facts, "colour", identity.colour());
        add(facts, "tracer", identity.tracer());
        return facts;
    }

    /** Where it stands, its papers, whose it is, how it is drawn. */
    public List<Fact> stands(ReelDraw draw) {
        Reel reel = view.reel(draw);
        List<Fact> facts = new ArrayList<>();
        add(facts, "lot", reel.lot().isEmpty() ? "not known" : reel.lot());
        Arrival arrival = view.problem().arrivals().get(draw.reel());
        add(facts, "place", reel.where().place());
        add(
                facts,
                "on order",
                arrival == null
                        ? ""
                        : arrival.order() + ", coming " + arrival.expected() + ", counted on from " + arrival.from());
        add(
                facts,
                "certificate",
                (reel.papers().certificate() + " " + reel.papers().number()).strip());
        add(
                facts,
                "use by",
                reel.papers().useBy().equals(LocalDate.MAX)
                        ? ""
                        : "" + reel.papers().useBy());
        add(facts, "mass", mass(draw));
        add(facts, "own rope of", reel.custody().owner());
        add(facts, "kept for order", reel.custody().order());
        add(
                facts,
                "spoken for",
                figures.sentence(HeldWords.of(reel, view.problem().day())));
        add(facts, "drawn from the", reel.where().draw() == Reel.Draw.INSIDE ? "inside" : "outside");
        return facts;
    }

    /** That it is a promise, and for which day; empty for one that is cut on the day of the plan or issued. */
    public String promise(ReelDraw draw) {
        return view.isPromise(draw)
                ? "Promised for " + DueWords.named(view.byId().days().of(draw))
                        + (view.byId().days().isForItsUseBy(draw) ? ", the last day of the reel" : "")
                        + ", and planned again by then."
                : "";
    }

    /** What it weighs with its reel, else its rope alone where its mass by length is known; with who is needed for it. */
    public String mass(ReelDraw draw) {
        Mass known = known(draw);
        if (known.grams() == 0) {
            return "";
        }
        return (view.reel(draw).where().mass().grams() == 0 ? "rope alone " : "") + weighed(draw, known);
    }

    /** What to do before each cut, and how much rope it takes, so that the readings of the counter add up; may be empty. */
    public String eachCut(ReelDraw draw) {
        String before = view.beforeCut(draw).words();
        Length loss = view.rope(draw).cutting().loss();
        String takes = loss.isPositive() ? "a cut takes " + figures.tape(loss.fine()) : "";
        return before + (before.isEmpty() || takes.isEmpty() ? "" : "; ") + takes;
    }

    /** With its reel or, where that is not known, without; zero where neither is. */
    private Mass known(ReelDraw draw) {
        Mass whole = view.reel(draw).where().mass();
        return whole.grams() > 0
                ? whole
                : view.rope(draw).mass().of(view.reel(draw).contents().length());
    }

    /** Whether it is more than one person should handle. */
    boolean isHeavy(ReelDraw draw) {
        return !view.beforeCut(draw).hands(known(draw)).isEmpty();
    }

    /** How much rope is on it, and how far it can be used. */
    public List<Fact> contents(ReelDraw draw) {
        Reel reel = view.reel(draw);
        Reel.Contents contents = reel.contents();
        List<Fact> facts = new ArrayList<>();
        String doubt = contents.uncertainty().isPositive()
                ? ", may be " + figures.length(contents.uncertainty()) + " shorter"
                : "";
        add(
                facts,
                reel.full() ? "full reel of" : "part reel of",
                figures.written(contents.written()) + " " + contents.known().word() + doubt);
        add(facts, "lead trim", positive(draw.leadTrim()));
        add(facts, "inner wraps", positive(contents.innerWraps()));
        return facts;
    }

    private String positive(Length length) {
        return length.isPositive() ? figures.length(length) : "";
    }

    /** A sentence for each flaw that is not cut off, with counter readings, and for what is to be known of such rope. */
    public List<String> cautions(ReelDraw draw) {
        Length clean = view.marks(draw).stream()
                .filter(mark -> mark.kind() == Kind.FLAW)
                .map(mark -> mark.at().plus(draw.leadTrim()))
                .reduce(Length.ZERO, Length::max);
        return Stream.concat(
                        view.reel(draw).flaws().stream()
                                .filter(flaw -> flaw.avoidTo().isLongerThan(clean))
                                .map(flaw -> flaw(flaw, draw)),
                        view.beforeCut(draw).cautions().stream())
                .toList();
    }

    /** The words of a mark; of a flaw with the readings between which it is cut off. */
    String of(ReelDraw draw, Mark mark) {
        String words = figures.sentence(mark.words());
        return mark.kind() == Kind.FLAW
                ? "cut off and bin "
                        + figures.bare(view.reading(draw, mark.at().minus(mark.length()))) + " to "
                        + figures.bare(view.reading(draw, mark)) + (words.isEmpty() ? "" : ": " + words)
                : words;
    }

    /** {@code 31.2 kg: two people or a hoist} for a length too heavy for one person; empty for others. */
    public String heavy(ReelDraw draw, Length length) {
        Mass mass = view.rope(draw).mass().of(length);
        return view.beforeCut(draw).hands(mass).isEmpty() ? "" : weighed(draw, mass);
    }

    private String weighed(ReelDraw draw, Mass mass) {
        return figures.mass(mass) + view.beforeCut(draw).hands(mass);
    }

    /** What to know of a counter that does not read true, as a sentence; empty for one that does. */
    public String counter(ReelDraw draw) {
        String words = view.beforeCut(draw).counterWords();
        return words.isEmpty() ? "" : words + ".";
    }

    private String flaw(Flaw flaw, ReelDraw draw) {
        Length from = Length.max(Length.ZERO, flaw.avoidFrom().minus(draw.leadTrim()));
        return "flaw, " + flaw.what() + ": no piece between " + figures.length(view.reading(draw, from)) + " and "
                + figures.length(view.reading(draw, flaw.avoidTo().minus(draw.leadTrim()))) + " on the counter.";
    }

    /** What happens to the offcuts and to the reel. */
    public String rest(ReelDraw draw) {
        StringBuilder words = new StringBuilder();
        for (Mark mark : view.marks(draw)) {
            if (mark.kind() == Kind.REMNANT) {
                words.append("Remnant of ")
                        .append(figures.length(mark.length()))
                        .append(": label it, to the rack. ");
            } else if (mark.kind() == Kind.SCRAP) {
                words.append("Scrap of ").append(figures.length(mark.length())).append(". ");
            }
        }
        String last = draw.leftOnReel().isPositive()
                ? figures.length(draw.leftOnReel()) + " stays on the reel."
                : "Nothing usable stays on the reel.";
        return words.append(view.uncertain(draw).map(this::toMeasure).orElseGet(() -> last + whyKept(draw)))
                .toString();
    }

    /** Why what is left goes to the rack or not; nothing is said of a customer's own rope, which goes back. */
    private String whyKept(ReelDraw draw) {
        Reel reel = view.reel(draw);
        if (reel.custody().isCustomersOwn() || draw.leftOnReel().equals(reel.length())) {
            return "";
        }
        return " " + new CoilWords(figures).beside(view.problem().valueOn(reel));
    }

    private String toMeasure(UncertainRest rest) {
        return "Measure what is left behind the last cut: by the ledger " + figures.length(rest.byLedger())
                + ", of which "
                + figures.length(rest.certain()) + " for certain. Keep it if it is " + figures.length(rest.keepFrom())
                + " or more.";
    }

    private static void add(List<Fact> facts, String label, String value) {
        if (!value.isEmpty()) {
            facts.add(new Fact(label, value));
        }
    }
}
