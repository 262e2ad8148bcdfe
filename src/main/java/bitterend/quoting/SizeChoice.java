package bitterend.quoting;

import bitterend.market.Offer;
import bitterend.measure.Length;
import bitterend.quoting.RopeBuying.NotTaken;
import bitterend.quoting.RopeBuying.Why;
import bitterend.quoting.sharing.NewReel;
import bitterend.quoting.sharing.NewRope;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The sizes of new reels that a rope is packed on, until they are such that what the packing takes can be had of each: no
 * fewer than its minimum and its price ask for, no more than there are. It begins with every price on offer, the lowest of
 * each length; a price that the packing does not get is given up, and the pieces are packed anew.
 *
 * <p>Where the pieces fit no other reel, such a size stays, and why it cannot be had so is kept with it.
 */
final class SizeChoice {
    private final NewRope none;
    private final Length longestPiece;
    private final List<Tier> tiers;
    private final List<NotTaken> notTaken = new ArrayList<>();
    private final Map<Offer, Set<Why>> but = new HashMap<>();
    private int steps;

    /**
     * @param usual the rope on the usual reel at its own price, where there is no offer
     * @param tiers every price that can be had this day
     * @param longestPiece the longest piece that has to fit a reel
     */
    SizeChoice(NewRope usual, List<Tier> tiers, Length longestPiece) {
        none = usual;
        this.tiers = new ArrayList<>(tiers);
        this.longestPiece = longestPiece;
    }

    /**
     * Gives up what comes too late for a piece that must be cut by this day. Where what comes in time does not hold every piece,
     * all stays, and what is late is known to be.
     */
    SizeChoice inTime(LocalDate ordered, LocalDate cutBy) {
        List<Offer> late = offers(Comparator.comparing(Offer::id))
                .filter(offer -> offer.countedOn(ordered).isAfter(cutBy))
                .toList();
        boolean holds = tiers.stream()
                .anyMatch(tier -> !late.contains(tier.offer()) && !tier.length().isShorterThan(longestPiece));
        for (Offer offer : late) {
            if (holds) {
                giveUp(offer, Why.TOO_LATE);
            } else {
                bear(offer, Why.TOO_LATE);
            }
        }
        return this;
    }

    private boolean bear(Offer offer, Why why) {
        return but.computeIfAbsent(offer, any -> EnumSet.noneOf(Why.class)).add(why);
    }

    /**
     * Gives up what asks for more reels than the pieces need, what would come to the most money first: nobody opens a fifth reel
     * to have the price of five.
     */
    SizeChoice needed(ReelsNeeded need) {
        List.copyOf(tiers).stream()
                .filter(tier -> isBreak(tier) && tier.isTooFew(need.of(tier.length())))
                .forEach(this::giveUp);
        offers(Comparator.comparing((Offer offer) ->
                                offer.paid().times(offer.terms().minimum()))
                        .reversed())
                .filter(offer -> offer.terms().minimum() > need.of(offer.usable()))
                .forEach(offer -> giveUp(offer, Why.BELOW_MINIMUM));
        return this;
    }

    private Stream<Offer> offers(Comparator<Offer> order) {
        return List.copyOf(tiers).stream().map(Tier::offer).distinct().sorted(order.thenComparing(Offer::id));
    }

    /** The rope on the sizes that are left. */
    NewRope rope() {
        List<NewReel> sizes = bySize().values().stream().map(Tier::reel).toList();
        return sizes.isEmpty() ? none : none.on(sizes);
    }

    /** The lowest price of each length; of several the one of which most can be had, then the first by id. */
    private Map<Length, Tier> bySize() {
        Map<Length, Tier> cheapest = new TreeMap<>();
        Comparator<Tier> order = Comparator.comparing(Tier::paid)
                .thenComparing(tier -> -tier.offer().terms().supply())
                .thenComparing(tier -> tier.offer().id());
        tiers.forEach(tier ->
                cheapest.merge(tier.length(), tier, (one, other) -> order.compare(one, other) <= 0 ? one : other));
        return cheapest;
    }

    /**
     * Gives up one price that a packing on these sizes does not get.
     *
     * @param taken how many reels of each size it cuts
     * @param unusedToo whether sizes of which it cuts none count, too
     * @return whether there was one, so that the pieces have to be packed anew
     */
    boolean giveUpOne(Map<NewReel, Integer> taken, boolean unusedToo) {
        int before = steps;
        bySize().values().stream()
                .filter(tier -> findWrong(tier, count(tier, taken)).isPresent())
                .min(Comparator.comparingLong(tier -> had(tier, count(tier, taken))))
                .ifPresent(
                        tier -> giveUp(tier, findWrong(tier, count(tier, taken)).orElseThrow()));
        if (unusedToo && steps == before) {
            // A price that asks for several reels and of which none is cut is none that a part of the request could
            // get.
            bySize().values().stream()
                    .filter(tier -> tier.from() > 1 && count(tier, taken) == 0)
                    .forEach(tier -> giveUp(tier, isBreak(tier) ? Why.BREAK_NOT_REACHED : Why.BELOW_MINIMUM));
        }
        return steps > before;
    }

    /** Why so many reels cannot be had at a price; nothing where that is known and borne already. */
    private Optional<Why> findWrong(Tier tier, int reels) {
        Why why = tier.isTooMany(reels) ? Why.ABOVE_SUPPLY : isBreak(tier) ? Why.BREAK_NOT_REACHED : Why.BELOW_MINIMUM;
        boolean wrong = reels > 0 && (tier.isTooMany(reels) || tier.isTooFew(reels));
        return wrong && !but(tier.offer()).contains(why) ? Optional.of(why) : Optional.empty();
    }

    /** How much of what is wanted can be had, in thousandths. */
    private static long had(Tier tier, int reels) {
        return tier.isTooFew(reels)
                ? reels * 1_000L / tier.from()
                : tier.offer().terms().supply() * 1_000L / reels;
    }

    private static boolean isBreak(Tier tier) {
        return tier.from() > tier.offer().terms().minimum();
    }

    private Set<Why> but(Offer offer) {
        return but.getOrDefault(offer, Set.of());
    }

    private void giveUp(Tier tier, Why why) {
        if (why == Why.BREAK_NOT_REACHED) {
            giveUp(tier);
        } else {
            giveUp(tier.offer(), why);
        }
    }

    /** A price from so many reels on; that of the smallest order stays. */
    private void giveUp(Tier tier) {
        steps++;
        tiers.remove(tier);
        notTaken.add(new NotTaken(tier.offer(), tier.from(), Why.BREAK_NOT_REACHED));
    }

    /** An offer with all its prices goes, or stays with what speaks against it where nothing else holds the pieces. */
    private void giveUp(Offer offer, Why why) {
        boolean needed = tiers.stream()
                .filter(other -> !other.offer().equals(offer))
                .noneMatch(other -> !other.length().isShorterThan(longestPiece));
        if (needed) {
            steps += bear(offer, why) ? 1 : 0;
        } else {
            steps++;
            tiers.removeIf(tier -> tier.offer().equals(offer));
            notTaken.removeIf(each -> each.offer().equals(offer));
            notTaken.add(new NotTaken(offer, offer.terms().minimum(), why));
        }
    }

    /** The sizes with how many of each are taken. */
    List<RopeBuying.Size> sizes(Map<NewReel, Integer> taken) {
        return bySize().values().stream()
                .map(tier -> new RopeBuying.Size(
                        tier.offer(), tier.from(), tier.paid(), count(tier, taken), List.copyOf(but(tier.offer()))))
                .toList();
    }

    List<NotTaken> notTaken() {
        return notTaken.stream()
                .sorted(Comparator.comparing((NotTaken each) -> each.offer().id())
                        .thenComparingInt(NotTaken::from))
                .toList();
    }

    private static int count(Tier tier, Map<NewReel, Integer> taken) {
        return taken.getOrDefault(tier.reel(), 0);
    }
}
