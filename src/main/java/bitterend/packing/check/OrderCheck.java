package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Checks the order of cutting within each run of a plan that is sound otherwise: should the reel turn out short, what is
 * left uncut is what is easiest to place elsewhere.
 */
final class OrderCheck {
    private final Facts facts;
    private final Faults faults;
    private final CutPlan plan;
    private final SpareRoom room;
    private final LastDay lastDay;

    OrderCheck(Facts facts, Faults faults, CutPlan plan) {
        this.facts = facts;
        this.faults = faults;
        this.plan = plan;
        room = new SpareRoom(facts, plan);
        lastDay = new LastDay(facts.problem().calendar());
    }

    /** What is cut as one: a piece, or all pieces of a set; the set has the fewest homes and the first day of any. */
    private record Block(String name, int homes, LocalDate by) {
        private static final Comparator<Block> FIRST_TO_LAST =
                Comparator.comparingInt(Block::homes).thenComparing(Block::by);

        Block with(Block other) {
            LocalDate first = by.isBefore(other.by) ? by : other.by;
            return new Block(name, Math.min(homes, other.homes), first);
        }

        @Override
        public String toString() {
            return name + " (" + homes + " other homes"
                    + (by.equals(LocalDate.MAX) ? ")" : ", to be cut by " + by + ")");
        }
    }

    void check() {
        for (ReelDraw draw : plan.draws()) {
            for (RunDraw run : draw.runs()) {
                if (isAsIssued(draw.reel(), run)) {
                    continue;
                }
                check(draw.reel() + " run " + run.run(), blocks(draw.reel(), run));
            }
        }
    }

    /** Whether the sheet of the reel is out and cuts the run in this order: it stays, whatever has become of other homes. */
    private boolean isAsIssued(String reel, RunDraw run) {
        int before = 0;
        for (Cut cut : run.cuts()) {
            int step = facts.stepOnTheSheet(cut.piece(), reel);
            if (step <= before) {
                return false;
            }
            before = step;
        }
        return true;
    }

    private void check(String where, List<Block> blocks) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            if (!seen.add(block.name())) {
                faults.add(Check.CUTTING_ORDER, where, block.name() + " is not cut together");
                return;
            }
            if (i > 0 && Block.FIRST_TO_LAST.compare(blocks.get(i - 1), block) > 0) {
                faults.add(Check.CUTTING_ORDER, where, block + " is cut behind " + blocks.get(i - 1));
                return;
            }
        }
    }

    /** In the order of the plan; pieces of a set that follow one another are one block. */
    private List<Block> blocks(String reel, RunDraw run) {
        List<Block> blocks = new ArrayList<>();
        for (Cut cut : run.cuts()) {
            Block block = block(facts.findPiece(cut.piece()).orElseThrow(), reel);
            int last = blocks.size() - 1;
            if (last >= 0 && blocks.get(last).name().equals(block.name())) {
                blocks.set(last, blocks.get(last).with(block));
            } else {
                blocks.add(block);
            }
        }
        return blocks;
    }

    private Block block(Piece piece, String reel) {
        boolean single = piece.matching().bond() == Piece.Bond.NONE;
        String name = single ? piece.id() : "set " + piece.matching().set();
        return new Block(name, room.homes(piece, reel), lastDay.of(piece));
    }
}
