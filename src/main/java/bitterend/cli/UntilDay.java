package bitterend.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How far ahead is looked: never to a day before the one that is asked about. */
final class UntilDay {
    private UntilDay() {}

    /** Why it is not done; nothing where the two days go together. */
    static Optional<String> refusal(@Nullable LocalDate until, LocalDate day) {
        return until != null && until.isBefore(day)
                ? Optional.of("--until " + until + " is before the day of the plan, " + day + ": write a later day")
                : Optional.empty();
    }
}
