package bitterend.shops;

import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Makes a shop that shows a fault smaller as long as it still shows it. */
public final class ShopShrinker {
    private ShopShrinker() {}

    /** The smallest shop found by leaving out one thing at a time for which {@code faulty} still holds. */
    public static PackingProblem smallest(PackingProblem shop, Predicate<PackingProblem> faulty) {
        PackingProblem smallest = shop;
        boolean smaller = true;
        while (smaller) {
            smaller = false;
            for (PackingProblem candidate : candidates(smallest)) {
                if (faulty.test(candidate)) {
                    smallest = candidate;
                    smaller = true;
                    break;
                }
            }
        }
        return smallest;
    }

    private static List<PackingProblem> candidates(PackingProblem shop) {
        List<PackingProblem> candidates = new ArrayList<>();
        for (Reel reel : shop.reels()) {
            candidates.add(with(shop, shop.pieces(), without(shop.reels(), reel), shop.prices()));
        }
        for (Piece piece : shop.pieces()) {
            candidates.add(with(shop, without(shop.pieces(), piece), shop.reels(), shop.prices()));
        }
        for (Reel reel : shop.reels()) {
            for (Flaw flaw : reel.flaws()) {
                List<Reel> reels = new ArrayList<>(shop.reels());
                reels.set(reels.indexOf(reel), sounder(reel, flaw));
                candidates.add(with(shop, shop.pieces(), reels, shop.prices()));
            }
        }
        if (!shop.prices().equals(Prices.NONE)) {
            candidates.add(with(shop, shop.pieces(), shop.reels(), Prices.NONE));
        }
        return candidates;
    }

    private static Reel sounder(Reel reel, Flaw flaw) {
        return new Reel(
                reel.id(),
                reel.rope(),
                reel.lot(),
                reel.contents(),
                without(reel.flaws(), flaw),
                reel.papers(),
                reel.custody(),
                reel.full(),
                reel.where());
    }

    private static <T> List<T> without(List<T> all, T one) {
        List<T> rest = new ArrayList<>(all);
        rest.remove(one);
        return rest;
    }

    /** The shop with these pieces and reels; pins and earlier draws that speak of others are dropped. */
    private static PackingProblem with(PackingProblem shop, List<Piece> pieces, List<Reel> reels, Prices prices) {
        Set<String> pieceIds = pieces.stream().map(Piece::id).collect(Collectors.toSet());
        Set<String> reelIds = reels.stream().map(Reel::id).collect(Collectors.toSet());
        return new PackingProblem(
                shop.day(),
                shop.ropes(),
                pieces,
                reels,
                shop.values(),
                prices,
                shop.pins().stream()
                        .filter(pin -> pieceIds.contains(pin.piece()) && reelIds.contains(pin.reel()))
                        .toList(),
                shop.earlier().entrySet().stream()
                        .filter(was -> pieceIds.contains(was.getKey()) && reelIds.contains(was.getValue()))
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)),
                shop.calendar(),
                shop.horizon(),
                shop.arrivals().entrySet().stream()
                        .filter(coming -> reelIds.contains(coming.getKey()))
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }
}
