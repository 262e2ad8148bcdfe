package bitterend.report;

import bitterend.packing.Arrival;
import bitterend.packing.explain.Rider;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;

/** The orders that a plan cuts off rope that is not here yet, the least leeway first: what a late delivery puts at risk. */
final class RiderWords {
    private static final int LINES = 3;

    private final PlanView view;
    private final List<Rider> riders;

    RiderWords(PlanView view) {
        this.view = view;
        riders = Rider.of(view.problem(), view.plan().draws());
    }

    /** Those with the least leeway, in a few lines. */
    void screen(Writing page) {
        if (!riders.isEmpty()) {
            page.paragraph(Brief.list(
                    "Rides on rope on order:", riders.stream().map(this::words).toList(), "more", LINES));
        }
    }

    /** All of them. */
    void week(Writing page) {
        if (riders.isEmpty()) {
            return;
        }
        page.heading("Work that rides on rope on order");
        TableRows table = new TableRows(
                Column.words("order"),
                Column.words("who for"),
                Column.figure("pieces"),
                Column.words("order\nof rope"),
                Column.words("expected"),
                Column.words("cut by"),
                Column.figure("leeway,\ndays"));
        riders.forEach(rider -> table.row(
                rider.order(),
                customer(rider),
                Integer.toString(rider.pieces().size()),
                rider.arrival().order(),
                rider.arrival().expected().toString(),
                rider.cutBy().toString(),
                Integer.toString(rider.leeway())));
        page.table(table);
        page.paragraph(
                "Leeway is how many working days the rope may come later than expected before the first of these pieces"
                        + " should have been cut. A plan counts on rope from the day it is expected and what it is usually late.");
    }

    private String customer(Rider rider) {
        WorkLine line = view.byId().lines().get(rider.pieces().get(0));
        return line == null ? "" : line.ordered().customer();
    }

    /** {@code G-2112 on P-88, expected 2026-03-06, 2 working days before it must be cut}. */
    private String words(Rider rider) {
        Arrival arrival = rider.arrival();
        boolean overdue = arrival.expected().isBefore(view.problem().day());
        return rider.order() + " on " + arrival.order() + ", expected " + arrival.expected()
                + (overdue ? " and not here yet, " : ", ")
                + switch (rider.leeway()) {
                    case 0 -> "the day by which it must be cut";
                    case 1 -> "1 working day before it must be cut";
                    default -> rider.leeway() + " working days before it must be cut";
                };
    }
}
