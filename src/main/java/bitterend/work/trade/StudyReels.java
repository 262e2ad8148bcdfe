package bitterend.work.trade;

import bitterend.buying.Share;
import bitterend.buying.Simulation;
import bitterend.buying.Spending;
import bitterend.buying.Study;
import bitterend.buying.steady.SteadySimulation;
import bitterend.buying.steady.SteadyStudy;
import bitterend.buying.steady.SteadyVerdict;
import bitterend.buying.steady.Way;
import bitterend.buying.steady.WayNote;
import bitterend.catalogue.Rope;
import bitterend.exchange.Shop;
import bitterend.exchange.StudyJson;
import bitterend.exchange.StudyPart;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Ratio;
import bitterend.work.Release;
import bitterend.work.ShopNow;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Which reels to buy for work like the past: worked out, shared out or put together. It writes nothing. */
public final class StudyReels {
    private final Shop shop;
    private final Study.Size size;
    private final SteadyStudy.Goal goal;
    private final List<SteadyStudy> studies;
    private final Request request;
    private final StudiedRopes ropes;

    /**
     * @param shop the shop
     * @param request what is studied
     */
    public StudyReels(ShopNow shop, Request request) {
        this.shop = shop.shop();
        size = request.size();
        goal = new SteadyStudy.Goal(
                request.findService().orElse(shop.shop().settings().service()),
                mostWeeks(shop.shop().settings().spending()));
        this.request = request;
        ropes = new StudiedRopes(shop.shop(), request.day());
        List<SteadyStudy> steady = ropes.steady(
                size, rope -> request.ropes().isEmpty() || request.ropes().contains(rope), goal);
        RackThereIs rack = new RackThereIs(shop, request.day());
        studies = request.fromRack()
                ? steady.stream()
                        .map(study -> study.from(rack.of(study.rope())))
                        .toList()
                : steady;
    }

    /** As the shop says; a year where it says nothing. */
    private static int mostWeeks(Spending spending) {
        return spending.hasMostWeeks() ? spending.mostWeeks() : SteadyStudy.Goal.USUAL.mostWeeks();
    }

    /**
     * What is studied.
     *
     * @param size how much of the past
     * @param ropes ids of the ropes; empty for all that have offers and a past
     * @param day the day on which reels are ordered, after which the futures begin
     * @param service share of the pieces for which rope is to be there in time; null for what the shop says
     * @param fromRack whether futures start from the rack of that day; else from one that has warmed up
     */
    public record Request(
            Study.Size size, List<String> ropes, LocalDate day, @Nullable Ratio service, boolean fromRack) {
        public Request {
            ropes = List.copyOf(ropes);
        }

        Optional<Ratio> findService() {
            return Optional.ofNullable(service);
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
     * @param unsupplied ropes of which no offer can supply the shop
     */
    public record Found(List<SteadyVerdict> verdicts, Map<String, Integer> tooFew, List<SteadyStudy> unsupplied) {
        public Found {
            verdicts = List.copyOf(verdicts);
            unsupplied = List.copyOf(unsupplied);
        }
    }

    /**
     * A rope that was asked for and cannot be studied.
     *
     * @param rope its id as it was typed
     * @param known whether the shop has a rope of this id
     * @param offered whether there is an offer of it
     */
    public record Unstudied(String rope, boolean known, boolean offered) {}

    /** The ropes that were asked for and cannot be studied. */
    public List<Unstudied> unstudied() {
        Set<String> can = Set.copyOf(studiable());
        return request.ropes().stream()
                .distinct()
                .filter(rope -> !can.contains(rope))
                .map(rope -> new Unstudied(rope, shop.catalogue().findRope(rope).isPresent(), ropes.isOffered(rope)))
                .toList();
    }

    /** The ropes of the shop that can be studied. */
    public List<String> studiable() {
        return ropes.studied(any -> true).map(Rope::id).toList();
    }

    /** Whether no rope can be studied. */
    public boolean isEmpty() {
        return studies.isEmpty();
    }

    /** Works one share of the study out. */
    public StudyPart workedOut(Share share, Watched watched) {
        Map<String, StudyPart.OfRope> ropes = new TreeMap<>();
        for (SteadyStudy study : studies) {
            if (!study.sizes().isEmpty()) {
                ropes.put(study.rope().id(), workedOut(study, share, watched));
            }
        }
        return part(ropes);
    }

    private static StudyPart.OfRope workedOut(SteadyStudy study, Share share, Watched watched) {
        SteadySimulation simulation = new SteadySimulation(
                study,
                watched.threads(),
                watched.stop(),
                watched.progress().apply(study.rope().id()));
        List<Way> ways = simulation.ways();
        return new StudyPart.OfRope(
                ways.stream().map(Way::note).toList(), ways.isEmpty() ? List.of() : simulation.scenarios(ways, share));
    }

    /** Shares of the study put together; what is wrong with one is told, and there is nothing then. */
    public Optional<StudyPart> merged(List<Path> shares, Findings findings) {
        return StudyJson.merged(shares, part(Map.of()), findings).filter(part -> isOurs(part, findings));
    }

    private boolean isOurs(StudyPart part, Findings findings) {
        for (SteadyStudy study : studies) {
            String rope = study.rope().id();
            for (WayNote way :
                    part.ropes().getOrDefault(rope, StudyPart.OfRope.NONE).ways()) {
                if (!study.knows(way)) {
                    findings.add(Finding.error(
                            "the shares",
                            rope,
                            "offer",
                            way.toString(),
                            "an offer that can be bought again and again"));
                }
            }
        }
        return !findings.hasErrors();
    }

    private StudyPart part(Map<String, StudyPart.OfRope> ropes) {
        return new StudyPart(StudyPart.key(shop, Release.number(), asked()), size, ropes);
    }

    /** What must be the same in all shares: the goal, and the day where the rack of it is started from. */
    private String asked() {
        return goal + (request.fromRack() ? ", from the rack of " + request.day() : "");
    }

    /** What the scenarios of a study say. */
    public Found found(StudyPart part) {
        List<SteadyVerdict> verdicts = new ArrayList<>();
        Map<String, Integer> tooFew = new TreeMap<>();
        for (SteadyStudy study : studies) {
            String rope = study.rope().id();
            StudyPart.OfRope worked = part.ropes().getOrDefault(rope, StudyPart.OfRope.NONE);
            if (SteadyVerdict.isEnough(worked.scenarios())) {
                verdicts.add(SteadyVerdict.of(
                        study, worked.ways().stream().map(study::way).toList(), worked.scenarios()));
            } else if (!study.sizes().isEmpty()) {
                tooFew.put(rope, worked.scenarios().size());
            }
        }
        return new Found(
                verdicts,
                tooFew,
                studies.stream().filter(study -> study.sizes().isEmpty()).toList());
    }
}
