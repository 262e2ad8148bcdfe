package bitterend.exchange;

import bitterend.day.OrderChange;
import bitterend.day.OrderStatus;
import bitterend.day.PieceStatus;
import bitterend.day.SparePiece;
import bitterend.day.SparePieces.Use;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import java.time.LocalDate;
import java.util.List;

/** What is said of orders under {@code --json}. */
public final class OrdersJson {
    private OrdersJson() {}

    /** How far every order has come. */
    public static String status(
            LocalDate day,
            List<OrderStatus> orders,
            List<OrderChange> changes,
            List<SparePiece> spares,
            List<Use> uses) {
        return new JsonTree()
                .with("format", "bitterend/orders/1")
                .with("day", day.toString())
                .with("changed", changes.stream().map(OrdersJson::tree).toList())
                .with("spares", spares.stream().map(spare -> tree(spare, uses)).toList())
                .with("orders", orders.stream().map(order -> tree(order, day)).toList())
                .text();
    }

    private static JsonTree tree(OrderChange change) {
        return new JsonTree()
                .with("piece", change.piece())
                .with("customer", change.was().wish().customer())
                .with("what", Codec.word(change.what()))
                .with("finishedWas", change.was().make().finished())
                .with("finishedNow", change.now().make().finished())
                .with("endsWere", change.was().make().ends())
                .with("endsAre", change.now().make().ends())
                .with("certificateWas", change.was().terms().certificate())
                .with("certificateIs", change.now().terms().certificate())
                .with("ownRopeWas", change.was().terms().ownRope())
                .with("ownRopeIs", change.now().terms().ownRope())
                .with("measuredWas", change.was().terms().measured())
                .with("measuredIs", change.now().terms().measured())
                .with("cut", LengthText.exact(change.length()))
                .with("needed", length(change.needed()));
    }

    private static JsonTree tree(SparePiece spare, List<Use> uses) {
        return new JsonTree()
                .with("piece", spare.piece())
                .with("cutAs", spare.cutAs())
                .with("order", spare.ordered().piece().order())
                .with("length", LengthText.exact(spare.length()))
                .with("rope", spare.reel().rope())
                .with("lot", spare.reel().lot())
                .with(
                        "fits",
                        uses.stream()
                                .filter(use -> use.spare().piece().equals(spare.piece()))
                                .map(Use::piece)
                                .findFirst()
                                .orElse(""));
    }

    private static JsonTree tree(OrderStatus order, LocalDate day) {
        JsonTree counts = new JsonTree();
        for (PieceStatus.State state : PieceStatus.State.values()) {
            counts.with(state.word(), order.count(state));
        }
        return new JsonTree()
                .with("order", order.order())
                .with("customer", order.customer())
                .with("due", day(order.due()))
                .with("overdue", order.isOverdue(day))
                .with("counts", counts.with("spare", order.spares().size()))
                .with(
                        "pieces",
                        order.pieces().stream().map(piece -> tree(piece, day)).toList());
    }

    private static JsonTree tree(PieceStatus piece, LocalDate day) {
        return new JsonTree()
                .with("piece", piece.piece())
                .with("state", piece.state().word())
                .with("plan", piece.plan())
                .with("cutBy", day(piece.cutBy()))
                .with("plannedOn", day(piece.place().on()))
                .with("plannedReel", piece.place().reel())
                .with("issued", piece.place().isOut())
                .with("cutAhead", piece.isAhead())
                .with("late", piece.isLate(day))
                .with("onOrder", piece.place().onOrder())
                .with("reel", piece.reel().map(reel -> reel.id()).orElse(""))
                .with("lot", piece.reel().map(reel -> reel.lot()).orElse(""))
                .with(
                        "measured",
                        piece.found().isMeasured()
                                ? LengthText.exact(piece.found().made().exact())
                                : "");
    }

    private static String day(LocalDate day) {
        return day.equals(LocalDate.MAX) ? "" : day.toString();
    }

    private static String length(Length length) {
        return length.isPositive() ? LengthText.exact(length) : "";
    }

    /** What was booked, and what follows from it. */
    public static String booked(long event, List<String> told) {
        return new JsonTree()
                .with("format", "bitterend/booked/1")
                .with("event", event)
                .with("told", told)
                .text();
    }
}
