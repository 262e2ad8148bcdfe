package bitterend.work;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanEvent;
import bitterend.exchange.PlanEvent.What;
import bitterend.exchange.PlanFolder;
import bitterend.finding.Findings;
import bitterend.stock.LedgerException;
import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The plans of a shop: which there are, which of them is in force, which are issued. Anybody may ask; what becomes of a plan
 * is written down by {@link KeepPlan} and {@link IssuePlan} alone.
 */
public final class Plans {
    private final PlanFolder folder;
    private final PlanLog log;
    private @Nullable List<PlanEvent> told;

    Plans(PlanFolder folder, PlanLog log) {
        this.folder = folder;
        this.log = log;
    }

    /** The numbers of all plans, lowest first. */
    public List<Integer> numbers() {
        return folder.numbers();
    }

    /** The plan that the shop works by: the last that was put in force, before any was the last that was made. */
    public Optional<Integer> inForce() {
        List<Integer> numbers = folder.numbers();
        List<PlanEvent> events = events();
        for (int i = events.size() - 1; i >= 0; i--) {
            if (events.get(i).what() == What.IN_FORCE) {
                return Optional.of(events.get(i).plan());
            }
        }
        return numbers.isEmpty() ? Optional.empty() : Optional.of(numbers.get(numbers.size() - 1));
    }

    /** A plan; what is wrong with it is told to the findings. */
    public Optional<PlanFolder.Kept> read(int number, Findings findings) {
        return folder.read(number, findings);
    }

    /**
     * A plan that the work goes by: the one in force, or one with sheets out. Nothing where its file was taken away.
     *
     * @throws LedgerException.Unreadable when its file is there and cannot be read
     */
    public Optional<PlanFolder.Kept> needed(int number) {
        Findings findings = new Findings();
        Optional<PlanFolder.Kept> plan = folder.read(number, findings);
        if (plan.isEmpty() && folder.numbers().contains(number)) {
            String wrong = findings.sorted().get(0).toString().replaceFirst("^error: ", "");
            throw new LedgerException.Unreadable(
                    "plan " + number + " cannot be read, and the shop works by it: " + wrong
                            + ". Put the file back from a copy. Where there is none, take the file away and its sheets off the bench,"
                            + " and plan anew");
        }
        return plan;
    }

    /** SHA-256 of the file of a plan when it was put in force or issued; empty when neither was told. */
    public String digestOf(int number) {
        return events().stream()
                .filter(event -> event.plan() == number && !event.digest().isEmpty())
                .map(PlanEvent::digest)
                .findFirst()
                .orElse("");
    }

    /** When sheets of a plan were last issued, if any were. */
    public Optional<PlanEvent> issued(int number) {
        return events().stream()
                .filter(event -> event.plan() == number && event.what() == What.ISSUED)
                .reduce((first, last) -> last);
    }

    /** The reels whose sheets of this plan are out and were not called back, in the order of the plan. */
    public Set<String> issuedReels(int number) {
        Set<String> reels = new LinkedHashSet<>();
        for (PlanEvent event : events()) {
            if (event.plan() == number && event.what() == What.ISSUED) {
                reels.addAll(event.reels());
            } else if (event.plan() == number && event.what() == What.WITHDRAWN) {
                reels.removeAll(event.reels());
            }
        }
        return reels;
    }

    /** Every plan that was ever issued, the first first. */
    public Set<Integer> issuedPlans() {
        Set<Integer> plans = new LinkedHashSet<>();
        events().stream().filter(event -> event.what() == What.ISSUED).forEach(event -> plans.add(event.plan()));
        return plans;
    }

    /** Writes a plan under the next number. It is not in force by that. */
    PlanFolder.Kept keep(PlanDocument document) {
        int most = events().stream().mapToInt(PlanEvent::plan).max().orElse(0);
        return folder.keep(document, most);
    }

    /** Makes a plan the one that the shop works by. */
    void putInForce(PlanFolder.Kept plan, String who, Clock clock) {
        add(What.IN_FORCE, plan, List.of(), who, clock);
    }

    /** Writes down that the sheets of these reels are out. */
    void issue(PlanFolder.Kept plan, List<String> reels, String who, Clock clock) {
        add(What.ISSUED, plan, reels, who, clock);
    }

    /** Writes down that sheets were called back. */
    void withdraw(PlanFolder.Kept plan, List<String> reels, String who, Clock clock) {
        add(What.WITHDRAWN, plan, reels, who, clock);
    }

    /** Gives a plan of an older version of the program its number, and puts it in force. */
    void moveOver(String who, Clock clock) {
        folder.moveOver()
                .filter(number -> events().stream().noneMatch(event -> event.plan() == number))
                .flatMap(number -> folder.read(number, new Findings()))
                .ifPresent(plan -> putInForce(plan, who, clock));
    }

    /** What happened to the plans, oldest first. */
    public List<PlanEvent> events() {
        List<PlanEvent> events = told == null ? log.events() : told;
        told = events;
        return events;
    }

    private void add(What what, PlanFolder.Kept plan, List<String> reels, String who, Clock clock) {
        told = null;
        log.add(new PlanEvent(clock.instant(), who, what, plan.document().number(), plan.digest(), reels));
    }
}
