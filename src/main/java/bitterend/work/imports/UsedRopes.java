package bitterend.work.imports;

import bitterend.exchange.Shop;
import bitterend.stock.Reel;
import bitterend.work.ShopAccess;
import java.util.List;
import java.util.stream.Stream;

/** Ropes that an order or a reel is of, be the rack in a file or in a ledger. */
final class UsedRopes {
    private UsedRopes() {}

    static boolean has(ShopAccess access, Shop now, String rope) {
        List<Reel> ofLedger = access.keepsLedger()
                ? access.read().found().map(found -> found.shop().reels()).orElse(List.of())
                : List.of();
        return Stream.concat(now.reels().stream(), ofLedger.stream())
                        .anyMatch(reel -> reel.rope().equals(rope))
                || now.orders().stream()
                        .anyMatch(line -> line.assembly().ropes().contains(rope));
    }
}
