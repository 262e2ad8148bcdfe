package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.DrawPrice;
import bitterend.packing.Eligibility;
import bitterend.packing.HeldWords;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import bitterend.packing.explain.ReelAnswer.Charge;
import bitterend.packing.explain.ReelAnswer.OnRun;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.List;

/** Takes the draw of one reel apart, rule by rule. */
final class ReelQuestion {
    private final PackingProblem problem;
    private final Workbench bench;
    private final RackState rack;
    private final Reel reel;

    ReelQuestion(Workbench bench, RackState rack, Reel reel) {
        this.problem = bench.problem();
        this.bench = bench;
        this.rack = rack;
        this.reel = reel;
    }

    ReelAnswer answer() {
        List<OnRun> runs = new ArrayList<>();
        for (Run run : reel.runs()) {
            RunId id = new RunId(reel.id(), run.index());
            List<String> pieces = rack.onRun(number(run)).stream()
                    .sorted()
                    .map(piece -> bench.piece(piece).id())
                    .toList();
            runs.add(new OnRun(id, pieces));
        }
        if (runs.stream().allMatch(run -> run.pieces().isEmpty())) {
            return new ReelAnswer(reel.id(), runs, List.of(), Cost.ZERO, untouched(), held(), null);
        }
        List<Charge> charges = charges();
        Cost cost = charges.stream().map(Charge::cost).reduce(Cost.ZERO, Cost::plus);
        return new ReelAnswer(reel.id(), runs, charges, cost, List.of(), held(), null);
    }

    private List<Charge> charges() {
        DrawPrice draw = bench.prices().draw(reel.id());
        List<Charge> charges = new ArrayList<>();
        Cost opened = DrawPrice.lostOnOpening(problem, reel);
        Cost fixed = DrawPrice.fixedCost(problem, reel).minus(opened);
        Cost changing = fixed.compareTo(problem.prices().changing()) < 0
                ? fixed
                : problem.prices().changing();
        add(charges, Rule.OPENING, fixed.minus(changing), reel.id() + " is a full reel and is opened");
        add(charges, Rule.CHANGING, changing, reel.id() + " is fetched and put back");
        add(charges, Rule.STOCK_VALUE, opened, reel.id() + " is worth less as a coil than unopened at its price");
        int deepest = 0;
        for (Run run : reel.runs()) {
            deepest = rack.load(number(run)).isEmpty() ? deepest : run.index();
        }
        for (Run run : reel.runs().subList(0, deepest)) {
            RunLoad load = rack.load(number(run));
            if (load.isEmpty()) {
                add(charges, Rule.HANDLING, problem.prices().handling(), name(run) + " is cut off whole and put aside");
            } else {
                add(charges, Rule.STOCK_VALUE, draw.drop(run.index() - 1, load), drawn(run, load, draw.loss()));
            }
        }
        return charges;
    }

    private List<Sentence> held() {
        return reel.custody().heldOn(problem.day()).stream().map(HeldWords::of).toList();
    }

    private static void add(List<Charge> charges, Rule rule, Cost cost, String words) {
        add(charges, rule, cost, Sentence.of(words));
    }

    private static void add(List<Charge> charges, Rule rule, Cost cost, Sentence sentence) {
        if (!cost.equals(Cost.ZERO)) {
            charges.add(new Charge(new Reason(rule, sentence), cost));
        }
    }

    private Sentence drawn(Run run, RunLoad load, Length loss) {
        return Sentence.of("of ")
                .and(run.length())
                .and(" on " + name(run) + " ")
                .and(load.leftOf(run.length(), loss))
                .and(" is left");
    }

    private int number(Run run) {
        return bench.numberOf(new RunId(reel.id(), run.index()));
    }

    private String name(Run run) {
        return new RunId(reel.id(), run.index()).toString();
    }

    /** Why nothing comes off the reel: no piece may, or none that would be cheaper here. */
    private List<Reason> untouched() {
        Eligibility rules = new Eligibility(problem);
        List<Reason> bars = new ArrayList<>();
        long open = 0;
        for (Piece piece : problem.pieces()) {
            if (rules.sameRope(piece, reel).isEmpty()) {
                boolean fits = reel.runs().stream()
                        .anyMatch(run -> rules.against(piece, reel, run).isEmpty());
                open += fits ? 1 : 0;
                rules.against(piece, reel).filter(bar -> !bars.contains(bar)).ifPresent(bars::add);
            }
        }
        if (open > 0) {
            String noun = open == 1 ? " piece" : " pieces";
            return List.of(new Reason(Rule.STOCK_VALUE, open + noun + " could come off it and come off other reels"));
        }
        return bars.isEmpty()
                ? List.of(new Reason(Rule.SAME_ROPE, "no piece that fits it is wanted in " + reel.rope()))
                : bars;
    }
}
