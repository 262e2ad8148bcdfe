package bitterend.cli;

import bitterend.finding.CommandWord;
import bitterend.packing.Cut;
import bitterend.packing.Words;
import bitterend.work.Remark;
import bitterend.work.plans.PostedPart;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What to do when something bars a part of a plan from being booked, in commands that can be typed as they stand. */
final class PostingAdvice {
    private static final int MOST_CUTS = 8;

    private final Terminal terminal;
    private final String shop;
    private final PostedPart part;
    private final String typed;

    /** @param typed the command as it was typed, without the plan */
    PostingAdvice(Terminal terminal, Path folder, PostedPart part, String typed) {
        this.terminal = terminal;
        this.part = part;
        this.typed = typed + " --plan " + part.number();
        shop = CommandWord.of(folder.toString());
    }

    void tell(List<Remark> bars) {
        bars.forEach(bar -> say("error: " + bar.sentence().exact()));
        say("Nothing was booked.");
        Set<String> pieces = bars.stream()
                .map(Remark::piece)
                .filter(piece -> !piece.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        List<Remark> reels = bars.stream().filter(Remark::barsTheReel).toList();
        if (!pieces.isEmpty() && reels.isEmpty()) {
            ofPieces(pieces);
        }
        if (!reels.isEmpty() && reels.stream().allMatch(Remark::isCount)) {
            say("If it was counted after these cuts: " + typed + " --before-count");
        }
        List<String> held =
                reels.stream().filter(Remark::isHold).map(Remark::reel).toList();
        held.forEach(reel -> say("When that is over: bitterend stock release " + shop + " " + CommandWord.of(reel)));
        reels.stream()
                .map(Remark::reel)
                .distinct()
                .filter(reel -> !held.contains(reel))
                .forEach(this::ofReel);
        Set<String> free = new TreeSet<>(part.reels());
        bars.forEach(bar -> free.remove(bar.reel()));
        if (!free.isEmpty()) {
            say("Nothing has changed of " + told(free) + ": name " + (free.size() == 1 ? "it" : "them")
                    + " with --reel and --plan " + part.number() + ".");
        }
    }

    static String told(Set<String> reels) {
        return (reels.size() == 1 ? "reel " : "reels ") + String.join(", ", reels);
    }

    private void ofPieces(Set<String> pieces) {
        String it = pieces.size() == 1 ? "it was" : "they were";
        say("If " + it + " cut all the same: " + typed + named(" --was-cut ", pieces));
        say("  What no order may be made of is a spare piece then.");
        say("If " + it + " not cut: " + typed + named(" --skipped ", pieces));
    }

    private static String named(String option, Set<String> pieces) {
        return pieces.stream().map(piece -> option + CommandWord.of(piece)).collect(Collectors.joining());
    }

    /** What is off the reel is booked cut by cut; only then is what is left planned anew. */
    private void ofReel(String reel) {
        List<Cut> cuts = part.cuts(reel);
        if (cuts.isEmpty()) {
            return;
        }
        say("What was cut off " + reel
                + " by its sheet is booked cut by cut, as measured, before anything is planned anew:");
        cuts.stream()
                .limit(MOST_CUTS)
                .forEach(cut -> say("  bitterend stock cut " + shop + " " + CommandWord.of(reel) + " "
                        + CommandWord.of(Words.of(cut.length())) + " --piece " + CommandWord.of(cut.piece())));
        if (cuts.size() > MOST_CUTS) {
            say("  and so on for " + (cuts.size() - MOST_CUTS) + " more");
        }
        say("Then the rest is planned anew: bitterend plan " + shop + " --from " + part.number());
    }

    private void say(String line) {
        terminal.err().println(line);
    }
}
