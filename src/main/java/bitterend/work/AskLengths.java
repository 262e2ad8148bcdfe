package bitterend.work;

import bitterend.demand.Piece;
import bitterend.exchange.LinesLeftOut;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.finding.Finding;
import java.util.List;

/** How long the ordered pieces are to be cut, and why: a question that writes nothing. */
public final class AskLengths {
    private final ShopAccess at;
    private final Shop all;

    public AskLengths(ShopNow shop) {
        at = shop.at();
        all = shop.shop();
    }

    /** What there is of an order line. */
    public sealed interface Line {
        /** Its parts, the main one first; at least one. */
        record Found(List<OrderLine> parts) implements Line {
            public Found {
                parts = List.copyOf(parts);
            }
        }

        /** It is left out, so it has no length. */
        record LeftOut(List<Finding> why) implements Line {
            public LeftOut {
                why = List.copyOf(why);
            }
        }

        /**
         * There is none.
         *
         * @param example one that there is, or could be
         */
        record Unknown(String example) implements Line {}
    }

    /** The shop. */
    public Shop all() {
        return all;
    }

    /** One order line, such as {@code 1041/3}. */
    public Line line(String wanted) {
        List<OrderLine> found = all.orders().stream()
                .filter(order -> order.assembly().ordered().source().lineId().equals(wanted))
                .toList();
        if (!found.isEmpty()) {
            return new Line.Found(found);
        }
        List<Finding> why = LinesLeftOut.of(at.folder(), wanted, all.leftOut());
        return why.isEmpty() ? new Line.Unknown(example()) : new Line.LeftOut(why);
    }

    /** An order line, as an example of how one is written. */
    private String example() {
        return all.orders().stream()
                .map(order -> order.assembly().ordered().source())
                .map(Piece.Source::lineId)
                .findFirst()
                .orElse("1041/3");
    }
}
