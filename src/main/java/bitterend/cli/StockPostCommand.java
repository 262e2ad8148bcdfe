package bitterend.cli;

import bitterend.day.Found;
import bitterend.day.Part;
import bitterend.day.Posting;
import bitterend.finding.CommandWord;
import bitterend.finding.Findings;
import bitterend.report.FindingsPage;
import bitterend.report.StockPage;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.stock.Movement;
import bitterend.work.Booking;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import bitterend.work.WhichPlan;
import bitterend.work.WhichPlan.Meant;
import bitterend.work.plans.PostPlan;
import bitterend.work.plans.PostPlan.Result;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code stock post SHOP [PLAN]}: what was cut goes into the ledger. */
@Command(
        name = "post",
        header = "Books what was cut of a plan; a second time does nothing.",
        description = {
            "",
            "Name the part that was cut: --reel, --piece, or --all for the sheets that are",
            "issued and not posted, of whichever plan. Where none is out, --all is what must",
            "be cut on the day of the plan in force, unless that day is yet to come. Coils",
            "that are kept get a number, and their labels are printed, and so is the label",
            "of a reel that has other than planned left. Nothing is booked when one of the",
            "reels, or what is ordered off it, has changed since the plan was made (exit",
            "code 5); each is named. A plan that is not sound, or of another ledger, is",
            "refused.",
            "",
            "What really happened, in the words of the bench:",
            "  it came out longer or shorter    --measured 1041/3.2=\"16.95 m\"",
            "  so much is left behind the cuts  --left R-104=\"3.6 m\"",
            "  the reel ended here              --piece 1041/3.2 --left R-104=\"0 m\"",
            "  it was cut off another reel      --skipped 1041/3.2, and stock cut --piece",
            "  it was cut, but nobody wants it  --was-cut 1041/3.2",
            "  the reel was counted after this  --before-count",
            ""
        },
        sortOptions = false)
final class StockPostCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description = "The number of the plan that was cut by; may be left out where only one can be meant.")
    private @Nullable String plan;

    @Option(names = "--reel", paramLabel = "REEL", description = "Only this reel; may be given again.")
    private List<String> reels = List.of();

    @Option(names = "--piece", paramLabel = "PIECE", description = "On its reel everything up to this piece.")
    private List<String> pieces = List.of();

    @Option(names = "--all", description = "The sheets that are out; where none is, those of the day.")
    private boolean all;

    @Option(
            names = "--measured",
            paramLabel = "PIECE=LENGTH",
            converter = BenchFigure.OfRope.class,
            description = "Length a piece really came out at; may be given again. One shorter than needed is booked as"
                    + " short, and the piece is open again.")
    private List<BenchFigure> measured = List.of();

    @Option(
            names = "--left",
            paramLabel = "REEL=LENGTH",
            converter = BenchFigure.OfRest.class,
            description = "What was measured behind the last cut of a reel; 0 m when it ended there.")
    private List<BenchFigure> left = List.of();

    @Option(names = "--skipped", paramLabel = "PIECE", description = "It was not cut off the reel it was planned on.")
    private List<String> skipped = List.of();

    @Option(
            names = "--was-cut",
            paramLabel = "PIECE",
            description =
                    "It was cut as planned, though it is not ordered like that any more. What no order may be made of"
                            + " is a spare piece at once.")
    private List<String> wasCut = List.of();

    @Option(names = "--before-count", description = "The reel was counted after these cuts, and that is booked.")
    private boolean beforeCount;

    @Option(names = "--sure", description = "A figure more than 5 %% off the plan is right.")
    private boolean sure;

    @Option(
            names = "--scrap-reason",
            paramLabel = "TEXT",
            defaultValue = "",
            converter = Typed.Words.class,
            description = "Why rope was scrapped.")
    private String scrapReason = "";

    @Mixin
    private StockNote note = new StockNote();

    StockPostCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        boolean named = !reels.isEmpty() || !pieces.isEmpty();
        if (named == all) {
            throw new Contradictory(
                    "say what was cut: --reel REEL, --piece PIECE, or --all for the sheets that are out");
        }
        Part part = new Part(reels, pieces, found());
        Findings findings = new Findings();
        Plans plans = at.access().plans(findings);
        Optional<ShopNow> read = at.shop().readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Meant meant = WhichPlan.at(read.get(), plans).of(plan, part, findings);
        if (meant instanceof Meant.Several several) {
            terminal.err()
                    .println("error: more than one plan could be meant: "
                            + several.plans().stream().map(String::valueOf).collect(Collectors.joining(", "))
                            + ". Its number is on every page and tag: give it with --plan N.");
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        return meant instanceof Meant.One one
                ? post(new PostPlan(read.get(), plans), new PostPlan.Request(one.plan(), part, note.caller(at)))
                : ExitCode.BAD_INPUT.number();
    }

    private int post(PostPlan verb, PostPlan.Request request) {
        Result result = verb.post(request);
        if (result instanceof Result.NotLetThrough refused) {
            return new GateTold(terminal, at.folder).tell(refused.why()).number();
        }
        if (result instanceof Result.Barred barred) {
            new PostingAdvice(terminal, at.folder, barred.part(), typed()).tell(barred.bars());
            return ExitCode.STOCK_CHANGED.number();
        }
        if (result instanceof Result.NotYet early) {
            throw new Contradictory("plan " + early.plan() + " is for " + early.day() + ", today is " + early.today()
                    + ", and none of its sheets is out. Nothing was booked. Say what was cut with --reel REEL or --piece"
                    + " PIECE, or by which plan with --plan N");
        }
        if (result instanceof Result.NotBooked not) {
            String again = typed() + " --plan " + not.part().number();
            String why = not.why().kind() == Booking.Kind.STOCK_CHANGED
                    ? not.why().why().replace("stock post ...", again)
                    : not.why().why();
            throw Faults.of(not.why().withWhy(why));
        }
        Result.Posted booked = (Result.Posted) result;
        at.say(
                terminal,
                "plan " + booked.part().number() + ": "
                        + PostingAdvice.told(booked.part().reels()) + "\n");
        return told(booked);
    }

    /** This command as it was typed, without the plan. */
    private String typed() {
        return note.typed("bitterend stock post", Set.of("--plan"));
    }

    private Found found() {
        Set<Found.Word> words = EnumSet.noneOf(Found.Word.class);
        if (sure) {
            words.add(Found.Word.SURE);
        }
        if (beforeCount) {
            words.add(Found.Word.CUT_BEFORE_THE_COUNT);
        }
        return new Found(
                BenchFigure.byName(measured),
                BenchFigure.byName(left),
                new Found.Pieces(Set.copyOf(skipped), Set.copyOf(wasCut)),
                words,
                scrapReason);
    }

    private int told(Result.Posted booked) {
        Posting.Posted posted = booked.posted();
        StockPage page = at.page();
        if (at.common.json || !posted.written().isEmpty()) {
            at.booked(terminal, posted.written());
        }
        if (posted.already() > 0) {
            at.say(terminal, posted.already() + " steps were in the ledger already.\n");
        }
        booked.part()
                .otherwiseThanPlanned(posted.written())
                .forEach(reel -> at.say(
                        terminal, "a tag printed with the sheet is not right any more; label:\n" + page.label(reel)));
        for (Movement movement : posted.written()) {
            if (!movement.entry().origin().parent().isEmpty()) {
                at.say(terminal, "label:\n" + page.label(movement.entry().after()));
            }
            if (movement.entry().kind() == Movement.Kind.CUT_SHORT) {
                at.say(terminal, shortSentence(movement));
            }
            if (movement.entry().kind() == Movement.Kind.CUT_SPARE) {
                at.say(terminal, spareSentence(movement));
            }
            if (booked.asPlanned().contains(movement)) {
                at.say(
                        terminal,
                        "piece " + movement.entry().origin().piece()
                                + " is booked as it was planned; where no order asks for it, it is a spare piece. What to do"
                                + " with it: bitterend orders " + CommandWord.of(at.folder.toString()) + "\n");
            }
        }
        return ExitCode.DONE.number();
    }

    /** What became of a piece that nothing ordered may be made of. */
    static String spareSentence(Movement cut) {
        Movement.Origin origin = cut.entry().origin();
        return "piece " + origin.piece() + " is spare piece '" + origin.was() + "'.\n";
    }

    /** What to do about a piece that came out too short. */
    static String shortSentence(Movement cut) {
        Movement.Origin origin = cut.entry().origin();
        return "piece " + origin.piece()
                + " came out too short: it is to be cut again. What is in the hand is spare piece '" + origin.was()
                + "'.\n";
    }
}
