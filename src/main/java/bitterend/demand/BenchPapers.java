package bitterend.demand;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What the splicer of a piece is handed, on the rope as ordered. It is worked out when it is first asked for: a plan asks for none. */
public final class BenchPapers {
    /** Of an assembly that cannot be made, or whose splicer needs none. */
    public static final BenchPapers NONE = of(List.of(), null);

    private final Supplier<Made> make;
    private @Nullable Made made;

    private record Made(List<SpliceLayout> layouts, @Nullable SpliceCard card) {}

    private BenchPapers(Supplier<Made> make) {
        this.make = make;
    }

    /** Papers that are there. */
    public static BenchPapers of(List<SpliceLayout> layouts, @Nullable SpliceCard card) {
        Made made = new Made(List.copyOf(layouts), card);
        return new BenchPapers(() -> made);
    }

    /** Papers that will be worked out. */
    static BenchPapers of(Supplier<List<SpliceLayout>> layouts, Supplier<SpliceCard> card) {
        return new BenchPapers(() -> new Made(List.copyOf(layouts.get()), card.get()));
    }

    /** Where each end is marked, then the marks along the piece. */
    List<SpliceLayout> layouts() {
        return made().layouts();
    }

    /** What the splicer must know besides the marks. */
    Optional<SpliceCard> findCard() {
        return Optional.ofNullable(made().card());
    }

    /** By what is in them, whether that is worked out yet or not. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BenchPapers papers && made().equals(papers.made());
    }

    @Override
    public int hashCode() {
        return made().hashCode();
    }

    private synchronized Made made() {
        if (made == null) {
            made = make.get();
        }
        return made;
    }
}
