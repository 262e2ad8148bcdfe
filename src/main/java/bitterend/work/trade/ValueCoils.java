package bitterend.work.trade;

import bitterend.buying.CurveTrial;
import bitterend.buying.Study;
import bitterend.catalogue.Rope;
import bitterend.day.Morning;
import bitterend.exchange.Shop;
import bitterend.exchange.ShopValues;
import bitterend.exchange.ValuesJson;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import bitterend.work.CoilCurves;
import bitterend.work.ShopNow;
import bitterend.work.plans.PlanDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** What coils are worth on a day, and what a curve of the shop's own costs. */
public final class ValueCoils {
    private final ShopNow now;
    private final Shop shop;
    private final LocalDate day;

    public ValueCoils(ShopNow shop, LocalDate day) {
        now = shop;
        this.shop = shop.shop();
        this.day = day;
    }

    /**
     * What coils of a rope are worth.
     *
     * @param rope the rope
     * @param today the coil curve that the plans of the day go by
     * @param rackNow how much of it is on the rack now
     * @param own the curve of the shop's own; null where it has none
     */
    public record Coils(Rope rope, CoilValue today, Length rackNow, @Nullable Own own) {
        public Optional<Own> findOwn() {
            return Optional.ofNullable(own);
        }
    }

    /**
     * A curve of the shop's own.
     *
     * @param typed whether the shop typed it, and goes by it; else it was learned once and is stale
     */
    public record Own(StockValue curve, boolean typed) {}

    /**
     * The curves that the plans of the day go by: those of the morning, where one was made already.
     *
     * @param only ids of ropes; empty for all
     * @param findings told of plans that cannot be read
     */
    public List<Coils> coils(List<String> only, Findings findings) {
        Optional<PackingProblem> earlier = PlanDay.inForceAsked(now.at().plans(findings));
        return shop.catalogue().ropes().stream()
                .filter(rope -> only.isEmpty() || only.contains(rope.id()))
                .map(rope -> coils(rope, earlier))
                .toList();
    }

    private Coils coils(Rope rope, Optional<PackingProblem> earlier) {
        CoilValue value = new CoilCurves(shop, day).of(rope);
        CoilValue used =
                earlier.map(plan -> Morning.kept(value, rope.id(), day, plan)).orElse(value);
        return new Coils(rope, used, value.rack(), own(rope.id()));
    }

    private @Nullable Own own(String rope) {
        ShopValues values = shop.supplies().values();
        StockValue typed = values.typed().get(rope);
        StockValue learned = values.learned().get(rope);
        if (typed != null) {
            return new Own(typed, true);
        }
        return learned == null ? null : new Own(learned, false);
    }

    /** What comes of a trial. */
    public sealed interface Trial {
        /** What the shop's own curve costs more than the coil curve. */
        record Tried(CurveTrial.Found found) implements Trial {}

        /** The rope has no offer, or no past. */
        record NothingToTry() implements Trial {}

        /** It was stopped before anything could be said. */
        record Stopped() implements Trial {}
    }

    /** Tries a curve of the shop's own against the coil curve, on weeks drawn from the past. */
    public Trial trial(Rope rope, Own own, Study.Size size, int threads, BooleanSupplier stop) {
        StudiedRopes ropes = new StudiedRopes(shop, day);
        List<Study> studies = ropes.studies(size, rope.id()::equals, ropes::coils);
        if (studies.isEmpty()) {
            return new Trial.NothingToTry();
        }
        return new CurveTrial(studies.get(0), new StudyStrategy(), threads, stop)
                .of(ropes.typed(own.curve(), rope))
                .<Trial>map(Trial.Tried::new)
                .orElseGet(Trial.Stopped::new);
    }

    /** Takes stale curves out of {@code values.json}; the name of the file as it was, nothing when there are none. */
    public Optional<String> takeOutStale() {
        ShopValues own = shop.supplies().values();
        return own.learned().isEmpty()
                ? Optional.empty()
                : Optional.of(ValuesJson.write(now.at().folder(), own.typed()));
    }
}
