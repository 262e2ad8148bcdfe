package bitterend.cli;

import bitterend.report.DueWords;
import bitterend.work.ReelDays;
import bitterend.work.plans.PrintSheets.Result;
import bitterend.work.plans.WhichSheets;
import bitterend.work.plans.WhichSheets.Chosen;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which sheets of a plan: those of its day, unless another day, reels or all are asked for. */
final class SheetChoice {
    @Option(
            names = "--day",
            paramLabel = "DATE",
            converter = Typed.Day.class,
            description =
                    "The sheets of another day of the plan, a promise until that day's plan; the files carry the day.")
    private @Nullable LocalDate day;

    @Option(names = "--reel", paramLabel = "REEL", description = "Only this reel; may be given again.")
    private List<String> reels = List.of();

    @Option(names = "--all", description = "Every reel of the plan, those of later days, too.")
    private boolean all;

    WhichSheets which() {
        if (day != null) {
            return new WhichSheets.OfDay(day);
        }
        return !reels.isEmpty() ? new WhichSheets.Reels(reels) : all ? new WhichSheets.All() : new WhichSheets.Today();
    }

    /** What the names of the files end in: another day's sheets do not replace those of today. */
    String suffix() {
        return day == null ? "" : suffix(day);
    }

    /** The same of the sheets of another day. */
    static String suffix(LocalDate day) {
        return "-" + day;
    }

    /** Why there are no such sheets. */
    String refusal(Result.NoSuchSheets none) {
        ReelDays days = none.days();
        if (day != null) {
            return "--day " + day + ": plan " + none.plan() + " cuts nothing on that day; it cuts on "
                    + days.days().stream().map(LocalDate::toString).collect(Collectors.joining(", "));
        }
        String reel = reels.stream()
                .filter(each -> !days.all().contains(each))
                .findFirst()
                .orElse("");
        return "--reel " + reel + ": "
                + (days.coming().contains(reel)
                        ? "it is on order and has no sheet before it is here"
                        : "plan " + none.plan() + " does not cut it; it cuts " + String.join(", ", days.all()));
    }

    /** That the plan is of a day that is gone; nothing for one that is not. */
    static Optional<String> ofAnotherDay(int plan, LocalDate day, LocalDate today) {
        return day.isBefore(today)
                ? Optional.of(
                        "plan " + plan + " is for " + DueWords.named(day) + ", and today is " + DueWords.named(today)
                                + ": plan again, and what it promised for today is on the sheets of today.")
                : Optional.empty();
    }

    /** That the sheets are a promise that nobody asked for. */
    static String unasked(Chosen chosen, boolean issue) {
        return "No reel must be cut today; these are the sheets of " + DueWords.named(chosen.day())
                + ", a promise until then."
                + (issue ? " Nothing was issued: to issue them early, add --day " + chosen.day() + "." : "");
    }
}
