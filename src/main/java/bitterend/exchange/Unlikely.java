package bitterend.exchange;

import bitterend.catalogue.Rope;
import bitterend.demand.Assembly;
import bitterend.exchange.form.Fields;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What can be right and hardly is, such as 9 mm where 9 m was meant: warned of with its row, and used as it is. The limits are
 * common practice, no source.
 */
final class Unlikely {
    private static final FineLength SHORTEST = FineLength.ofMillimetres(100);
    private static final LocalDate EARLIEST = LocalDate.of(2000, 1, 1);
    private static final int MOST_YEARS = 3;
    private static final int MOST_REELS = 5;
    private static final int FEWEST_ALIKE = 3;
    private static final BigInteger MOST_TIMES = BigInteger.TEN;
    private static final BigInteger FINE = BigInteger.TEN.pow(12);

    private Unlikely() {}

    /** Warns of order lines: a length that is nearly none, a due day far off, one set name at two customers. */
    static void tell(List<Assembly> lines, LocalDate today, Findings findings) {
        Map<String, Assembly> sets = new TreeMap<>();
        for (Assembly line : lines) {
            if (line.membership().part().isEmpty()) {
                length(line, findings);
                due(line, today, findings);
                set(line, sets, findings);
            }
        }
    }

    private static void length(Assembly line, Findings findings) {
        FineLength length = line.make().finished().exact();
        boolean stated = length.isPositive() && !line.membership().inherited().contains("length");
        if (stated && length.compareTo(SHORTEST) < 0) {
            warn(line, "length", line.make().finished().text(), "10 cm or more: so short is hardly meant", findings);
        }
    }

    private static void due(Assembly line, LocalDate today, Findings findings) {
        LocalDate due = line.ordered().source().due();
        boolean far =
                due.isBefore(EARLIEST) || (!due.equals(LocalDate.MAX) && due.isAfter(today.plusYears(MOST_YEARS)));
        if (far) {
            warn(line, "due", due.toString(), "a day from 2000 on, and within " + MOST_YEARS + " years", findings);
        }
    }

    private static void set(Assembly line, Map<String, Assembly> sets, Findings findings) {
        String name = line.terms().matching().set();
        String customer = line.ordered().customer();
        if (name.isEmpty() || customer.isEmpty()) {
            return;
        }
        Assembly first = sets.putIfAbsent(name, line);
        if (first != null && !first.ordered().customer().equals(customer)) {
            warn(
                    line,
                    "set",
                    name,
                    "one customer for a set: in " + first.origin().place() + " it is of "
                            + first.ordered().customer() + ", here of " + customer,
                    findings);
        }
    }

    private static void warn(Assembly line, String field, String found, String expected, Findings findings) {
        findings.add(Finding.warning(line.origin().file(), line.origin().place(), field, found, expected));
    }

    /** Warns of a reel that is much longer than its rope is usually bought. */
    static void tell(Fields row, Length length, Rope rope) {
        if (length.isLongerThan(rope.usualReel().times(MOST_REELS))) {
            row.warning(
                    "length",
                    "at most " + MOST_REELS + " times the usual reel of " + rope.id() + ", "
                            + rope.usualReel().mm() / 1000 + " m");
        }
    }

    /**
     * Warns of ropes that cost ten times as much as others of their construction and fibre, or a tenth, by the metre and the
     * square of the diameter: a rope of twice the thickness has four times the fibre.
     *
     * @param rows the row of each rope
     */
    static void tell(List<Rope> ropes, List<Fields> rows) {
        Map<String, List<BigInteger>> families = new TreeMap<>();
        ropes.forEach(rope ->
                families.computeIfAbsent(family(rope), any -> new ArrayList<>()).add(price(rope)));
        families.values().forEach(prices -> prices.sort(null));
        for (int at = 0; at < ropes.size(); at++) {
            List<BigInteger> alike = families.getOrDefault(family(ropes.get(at)), List.of());
            BigInteger price = price(ropes.get(at));
            BigInteger middle = alike.get(alike.size() / 2);
            boolean far = price.compareTo(middle.multiply(MOST_TIMES)) >= 0
                    || middle.compareTo(price.multiply(MOST_TIMES)) >= 0;
            if (alike.size() >= FEWEST_ALIKE && far && middle.signum() > 0) {
                rows.get(at)
                        .warning(
                                "price",
                                "a price within ten times that of other ropes of "
                                        + ropes.get(at).identity().described() + ", for its thickness");
            }
        }
    }

    private static String family(Rope rope) {
        return rope.identity().described();
    }

    private static BigInteger price(Rope rope) {
        BigInteger thick = BigInteger.valueOf(rope.diameter().units());
        return BigInteger.valueOf(rope.price().millisPerMetre()).multiply(FINE).divide(thick.multiply(thick));
    }
}
