package bitterend.work.trade;

import bitterend.buying.HoldOutComparison;
import bitterend.buying.Reorder;
import bitterend.buying.Scenario;
import bitterend.buying.Share;
import bitterend.buying.Simulation;
import bitterend.buying.Study;
import bitterend.buying.Verdict;
import bitterend.exchange.Shop;
import bitterend.exchange.StudyJson;
import bitterend.exchange.StudyPart;
import bitterend.finding.Findings;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.work.Release;
import bitterend.work.ShopNow;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/** Which reels to buy for work like the past: worked out, shared out or put together. It writes nothing. */
public final class StudyReels {
    private static final int DAYS_OF_A_WEEK = 7;

    private final Shop shop;
    private final Study.Size size;
    private final List<Study> studies;

    /**
     * @param shop the shop
     * @param request what is studied
     */
    public StudyReels(ShopNow shop, Request request) {
        this.shop = shop.shop();
        size = request.size();
        StudiedRopes ropes = new StudiedRopes(shop.shop(), request.day());
        studies = ropes.studies(
                size, rope -> request.ropes().isEmpty() || request.ropes().contains(rope), ropes::worth);
    }

    /**
     * What is studied.
     *
     * @param size how much of the past
     * @param ropes ids of the ropes; empty for all that have offers and a past
     * @param day the day of the coil curve
     */
    public record Request(Study.Size size, List<String> ropes, LocalDate day) {
        public Request {
            ropes = List.copyOf(ropes);
        }
    }

    /**
     * Whoever waits for a study.
     *
     * @param threads scenarios worked out at once
     * @param stop asked often; once true the scenarios worked out so far count
     * @param progress by rope, told after every scenario
     */
    public record Watched(int threads, BooleanSupplier stop, Function<String, Simulation.Listener> progress) {}

    /**
     * What was found.
     *
     * @param verdicts of each rope with enough scenarios
     * @param tooFew how many scenarios there are, of each rope with too few of them to say anything
     * @param hints when to order again, of each rope
     */
    public record Found(List<Verdict> verdicts, Map<String, Integer> tooFew, List<Reorder> hints) {
        public Found {
            verdicts = List.copyOf(verdicts);
            hints = List.copyOf(hints);
        }
    }

    /** Whether no rope can be studied. */
    public boolean isEmpty() {
        return studies.isEmpty();
    }

    /** Works one share of the study out. */
    public StudyPart workedOut(Share share, Watched watched) {
        Map<String, List<Scenario>> scenarios = new TreeMap<>();
        for (Study study : studies) {
            String rope = study.rope().id();
            Simulation simulation = new Simulation(
                    new StudyStrategy(),
                    watched.threads(),
                    watched.stop(),
                    watched.progress().apply(rope));
            scenarios.put(rope, simulation.scenarios(study, share));
        }
        return part(scenarios);
    }

    /** Shares of the study put together; what is wrong with one is told, and there is nothing then. */
    public Optional<StudyPart> merged(List<Path> shares, Findings findings) {
        return StudyJson.merged(shares, part(Map.of()), findings);
    }

    private StudyPart part(Map<String, List<Scenario>> scenarios) {
        return new StudyPart(StudyPart.key(shop, Release.number()), size, scenarios);
    }

    /** What the scenarios of a study say. */
    public Found found(StudyPart part) {
        List<Verdict> verdicts = new ArrayList<>();
        Map<String, Integer> tooFew = new TreeMap<>();
        for (Study study : studies) {
            List<Scenario> scenarios = part.ropes().getOrDefault(study.rope().id(), List.of());
            if (HoldOutComparison.isEnough(scenarios)) {
                verdicts.add(HoldOutComparison.of(study, scenarios));
            } else {
                tooFew.put(study.rope().id(), scenarios.size());
            }
        }
        return new Found(verdicts, tooFew, studies.stream().map(this::hint).toList());
    }

    /** The weeks until the quickest offer could be on the rack, begun weeks in full, and one more. */
    private Reorder hint(Study study) {
        int lead = shop.supplies().offers().stream()
                .filter(offer -> offer.rope().equals(study.rope().id()) && offer.plannable())
                .mapToInt(offer -> offer.terms().lead().days())
                .min()
                .orElse(0);
        int weeks = (lead + DAYS_OF_A_WEEK - 1) / DAYS_OF_A_WEEK + 1;
        return Reorder.of(
                study.rope(), study.weeks(), shop.reels(), shop.supplies().onOrder(), weeks, size.seed());
    }
}
