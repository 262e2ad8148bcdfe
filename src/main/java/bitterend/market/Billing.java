package bitterend.market;

import bitterend.finding.NaturalOrder;
import bitterend.market.Bill.Line;
import bitterend.market.Bill.Objection;
import bitterend.measure.Mass;
import bitterend.measure.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Makes the bill of an order of reels. */
final class Billing {
    private final Market market;
    private final List<Objection> objections = new ArrayList<>();

    Billing(Market market) {
        this.market = market;
    }

    Bill bill(Map<String, Integer> reels) {
        SortedMap<String, Integer> byId = new TreeMap<>(NaturalOrder.IDS);
        byId.putAll(reels);
        List<Line> lines = new ArrayList<>();
        byId.forEach((id, count) -> {
            if (count < 0) {
                throw new IllegalArgumentException(count + " reels of " + id);
            }
            if (count > 0) {
                Offer offer = market.offer(id);
                lines.add(new Line(offer, count, offer.terms().price().at(count)));
            }
        });
        lines.forEach(this::check);
        SortedMap<String, List<Line>> bySupplier = lines.stream()
                .collect(Collectors.groupingBy(
                        line -> line.offer().supplier(), () -> new TreeMap<>(NaturalOrder.IDS), Collectors.toList()));
        List<Bill.Order> orders = new ArrayList<>();
        bySupplier.forEach((name, ofOne) -> orders.add(order(market.supplier(name), ofOne)));
        return new Bill(lines, orders, objections);
    }

    private void check(Line line) {
        Offer offer = line.offer();
        Optional<LeftOut> leftOut = market.findLeftOut(offer.id());
        if (leftOut.isPresent()) {
            objections.add(new Objection.CannotBeHad(leftOut.get()));
        } else if (line.reels() < offer.terms().minimum()) {
            objections.add(new Objection.BelowMinimum(offer, line.reels()));
        } else if (line.reels() > offer.terms().supply()) {
            objections.add(new Objection.AboveSupply(offer, line.reels()));
        }
    }

    private Bill.Order order(Supplier supplier, List<Line> lines) {
        Money goods = lines.stream().map(Line::goods).reduce(Money.ZERO, Money::plus);
        if (goods.compareTo(supplier.minimumOrder()) < 0) {
            objections.add(new Objection.BelowMinimumOrder(supplier, goods));
        }
        return new Bill.Order(supplier, goods, freight(supplier.freight(), goods, lines));
    }

    private Bill.Freight freight(Supplier.Freight terms, Money goods, List<Line> lines) {
        Mass mass = Mass.ZERO;
        List<String> unknown = new ArrayList<>();
        for (Line line : lines) {
            Optional<Mass> known = market.mass(line.offer(), line.reels());
            mass = mass.plus(known.orElse(Mass.ZERO));
            String rope = line.offer().rope();
            if (known.isEmpty() && !terms.byMass().isNothing() && !unknown.contains(rope)) {
                unknown.add(rope);
            }
        }
        if (terms.isFree(goods)) {
            return new Bill.Freight(Money.ZERO, Money.ZERO, Money.ZERO, true, mass, List.of());
        }
        Money byReel = lines.stream().map(Line::freight).reduce(Money.ZERO, Money::plus);
        return new Bill.Freight(byReel, terms.of(mass), terms.byOrder(), false, mass, unknown);
    }
}
