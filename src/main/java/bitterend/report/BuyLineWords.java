package bitterend.report;

import bitterend.buying.Need;
import bitterend.buying.Orders;
import bitterend.buying.ReelLine;
import java.time.LocalDate;
import java.util.List;

/** A line of an order of reels in words, ready to be sent, and what it is needed for. */
final class BuyLineWords {
    private static final int MOST_NAMED = 8;

    private final Figures figures;
    private final BuyWords words;
    private final Orders orders;

    BuyLineWords(Figures figures, BuyWords words, Orders orders) {
        this.figures = figures;
        this.words = words;
        this.orders = orders;
    }

    String line(ReelLine line) {
        var made = line.offer().made();
        StringBuilder text =
                new StringBuilder(line.reels() + " x " + line.offer().id());
        if (!line.offer().supplier().isEmpty()) {
            text.append(", ").append(line.offer().supplier());
        }
        text.append(": ").append(orders.day().rope(line.offer().rope()).name()).append(", reels of ");
        text.append(figures.written(made.written())).append(", each in one length without joins");
        if (made.tolerance().isPositive()) {
            text.append(", no more than ")
                    .append(words.percent(made.tolerance()))
                    .append(" % short");
        }
        if (!made.certificate().isEmpty()) {
            text.append(", with certificate ").append(made.certificate());
        }
        if (line.oneLot() && line.reels() > 1) {
            text.append(", all from one lot, for a matched set");
        }
        if (line.mass().grams() > 0) {
            text.append("; ").append(figures.mass(line.mass())).append(" of rope");
        }
        text.append("; ").append(figures.money(line.goods()));
        return text.append(orderBy(orders.day().day(), line.orderBy()))
                .append('.')
                .toString();
    }

    private static String orderBy(LocalDate today, LocalDate orderBy) {
        if (orderBy.equals(LocalDate.MAX)) {
            return "";
        }
        return orderBy.isBefore(today) ? "; order at once, it comes late" : "; order by " + orderBy;
    }

    /** Who has no rope without it, and what is merely cheaper from it. */
    String need(ReelLine line) {
        Need need = line.need();
        String it = line.reels() == 1 ? "it" : "them";
        if (!need.known()) {
            return "Cut from " + it + ": " + named(need.cut())
                    + ". There was no time to look which of them would have no rope without.";
        }
        String without = need.without().isEmpty()
                ? "Without " + it + " every piece still has rope. "
                : "Without " + it + " no rope for " + named(need.without()) + ". ";
        String cheaper =
                need.cheaper().isEmpty() ? "" : "Merely cheaper from " + it + ": " + named(need.cheaper()) + ".";
        return (without + cheaper).strip();
    }

    /** The first pieces by their ids, and how many more. */
    static String named(List<String> pieces) {
        String first = String.join(", ", pieces.subList(0, Math.min(pieces.size(), MOST_NAMED)));
        return pieces.size() <= MOST_NAMED ? first : first + " and " + (pieces.size() - MOST_NAMED) + " more";
    }
}
