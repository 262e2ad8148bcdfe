package bitterend.serve;

import bitterend.demand.Piece;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.packing.ReelDraw;
import bitterend.report.sheet.TagCode;
import bitterend.stock.Holding;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.rack.AskRack;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** All that has a number in a shop, and where it is looked at. */
final class Known {
    private static final String PLAN = "plan ";

    private final Loft loft;
    private final ShopNow now;
    private final List<Holding> holdings;
    private final TreeSet<String> pieces = new TreeSet<>(NaturalOrder.IDS);
    private final TreeSet<String> orders = new TreeSet<>(NaturalOrder.IDS);
    private final Map<String, String> planned = new HashMap<>();

    Known(Loft loft, ShopNow now) {
        this.loft = loft;
        this.now = now;
        holdings = loft.access().keepsLedger() ? new AskRack(loft.access()).holdings(true) : List.of();
        for (Piece piece : now.shop().pieces()) {
            pieces.add(piece.id());
            orders.add(piece.order());
        }
        loft.inForce(now)
                .flatMap(Verdict::passed)
                .ifPresent(passed -> passed.plan().draws().forEach(this::plan));
    }

    private void plan(ReelDraw draw) {
        draw.cuts().forEach(each -> planned.put(each.piece(), draw.reel()));
    }

    /** What a tag is on; nothing where the shop knows no such thing. */
    List<Hit> of(TagCode code) {
        String id = code.id();
        return switch (code.kind()) {
            case PIECE -> pieces.contains(id) || isCut(id) ? List.of(new Hit("piece", id, pathOf(id))) : List.of();
            case ASSEMBLY -> pieces(piece -> piece.equals(id) || piece.startsWith(id + "-"))
                    .toList();
            case REEL, COIL, REST -> reels(id::equalsIgnoreCase).toList();
        };
    }

    /** What is called so, letters large or small. */
    List<Hit> called(String text) {
        return like(text::equalsIgnoreCase).toList();
    }

    /** What has this in its number. */
    Stream<Hit> like(String text) {
        String small = text.toLowerCase(Locale.ROOT);
        return like((String id) -> id.toLowerCase(Locale.ROOT).contains(small));
    }

    private Stream<Hit> like(Predicate<String> meant) {
        return Stream.of(
                        plans(meant),
                        orders.stream()
                                .filter(meant)
                                .map(order -> new Hit("order", order, PageScreen.ORDER + Sent.path(order))),
                        pieces(meant),
                        reels(meant),
                        lots(meant))
                .flatMap(hits -> hits);
    }

    private Stream<Hit> plans(Predicate<String> meant) {
        return now.at().plans(new Findings()).numbers().stream()
                .filter(number -> meant.test(PLAN + number))
                .map(number -> new Hit("plan", "" + number, PageScreen.PLAN + number));
    }

    private Stream<Hit> pieces(Predicate<String> meant) {
        return pieces.stream().filter(meant).map(piece -> new Hit("piece", piece, pathOf(piece)));
    }

    /** Where it came off once it is cut; else the reel that it is to be cut from; else the orders. */
    private String pathOf(String piece) {
        if (isCut(piece)) {
            return TraceScreen.PIECE + Sent.path(piece);
        }
        String reel = planned.get(piece);
        return reel == null
                ? PageScreen.ORDER + Sent.path(piece.substring(0, Math.max(0, piece.indexOf('/'))))
                : BenchScreen.PATH + Sent.path(reel);
    }

    private boolean isCut(String piece) {
        return loft.access().keepsLedger() && new AskRack(loft.access()).piece(piece) instanceof AskRack.Found.OfPiece;
    }

    private Stream<Hit> reels(Predicate<String> meant) {
        return holdings.stream()
                .map(holding -> holding.reel().id())
                .filter(meant)
                .map(reel -> new Hit("reel", reel, RackScreen.PATH + Sent.path(reel)));
    }

    private Stream<Hit> lots(Predicate<String> meant) {
        return holdings.stream()
                .map(holding -> holding.reel().lot())
                .filter(lot -> !lot.isEmpty())
                .distinct()
                .filter(meant)
                .map(lot -> new Hit("lot", lot, TraceScreen.LOT + Sent.path(lot)));
    }
}
