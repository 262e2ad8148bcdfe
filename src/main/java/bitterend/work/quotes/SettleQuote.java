package bitterend.work.quotes;

import bitterend.catalogue.Rope;
import bitterend.exchange.OrderLine;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.finding.Findings;
import bitterend.market.Market;
import bitterend.measure.Length;
import bitterend.measure.Moments;
import bitterend.measure.Money;
import bitterend.quoting.PriceInReach;
import bitterend.quoting.QuoteLine;
import bitterend.quoting.QuotedLine;
import bitterend.quoting.QuotedWork;
import bitterend.quoting.after.AfterCalculation;
import bitterend.quoting.after.JobBooks;
import bitterend.quoting.after.Learned;
import bitterend.quoting.after.PieceLine;
import bitterend.quoting.after.RopePrice;
import bitterend.quoting.life.QuoteEvent;
import bitterend.quoting.life.QuoteName;
import bitterend.stock.Movement;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Holds quotes against what was cut and worked for their orders: questions that write nothing. */
public final class SettleQuote {
    private final ShopNow now;
    private final LocalDate day;
    private @Nullable Posted told;

    /**
     * @param shop the shop
     * @param today the day on whose prices of parts and rates it is settled
     */
    public SettleQuote(ShopNow shop, LocalDate today) {
        now = shop;
        day = today;
    }

    /** What is found. */
    public sealed interface Result {
        /** At least one line of it is cut whole. */
        record Settled(AfterCalculation after) implements Result {}

        /**
         * No line of it is cut whole, so nothing is compared.
         *
         * @param why in a sentence
         */
        record NothingCut(String why) implements Result {}

        /** It cannot be held against anything. */
        record Refused(String why) implements Result {}
    }

    /** A quote that was filed anywhere, against the order of a number, line by line. */
    public Result ofOrder(String name, QuotedWork work, String order) {
        if (!isKnown(order)) {
            return new Result.Refused("there is no order " + order + ", neither in orders.csv nor in the ledger");
        }
        Map<String, String> lineOf = new TreeMap<>();
        for (QuotedLine line : work.lines()) {
            lineOf.put(order + "/" + line.name(), line.name());
            int part = line.name().lastIndexOf(' ');
            if (part > 0) {
                String main = line.name().substring(0, part);
                lineOf.put(order + "/" + main, main);
            }
        }
        return settled(name, work, lineOf, Map.of());
    }

    private boolean isKnown(String order) {
        boolean ordered = now.shop().orders().stream()
                .anyMatch(line -> line.assembly().ordered().source().order().equals(order));
        return ordered || (now.at().keepsLedger() && posted().isNamed(order));
    }

    /** A kept quote against the orders that came of it. */
    public Result ofQuote(String number) {
        Findings findings = new Findings();
        QuoteBook book = book(findings);
        if (book.names().stream().noneMatch(name -> name.number().equals(number))) {
            return new Result.Refused("there is no kept quote " + number + "; quote list shows those there are");
        }
        Map<QuoteName, Map<String, String>> accepted = accepted(findings);
        Optional<QuoteName> name = accepted.keySet().stream()
                .filter(each -> each.number().equals(number))
                .reduce((earlier, later) -> later);
        Optional<KeptQuote> kept = name.flatMap(each -> book.read(number, each.revision()));
        if (kept.isEmpty()) {
            return new Result.Refused(
                    "no order is known to have come of quote " + number + "; quote accept notes it, --order names one");
        }
        return settled(
                kept.get().head().name().toString(),
                kept.get().work(),
                accepted.getOrDefault(kept.get().head().name(), Map.of()),
                stated(kept.get()));
    }

    /** The last revision of a kept quote against an order of another number. */
    public Result ofQuote(String number, String order) {
        return book(new Findings())
                .read(number, 0)
                .map(kept -> ofOrder(kept.head().name().toString(), kept.work(), order))
                .orElse(new Result.Refused("there is no kept quote " + number + "; quote list shows those there are"));
    }

    /** What every job with a line that is cut whole teaches. */
    public Learned learned() {
        Map<String, String> terminations = new HashMap<>();
        now.shop().catalogue().splices().terminations().forEach(each -> terminations.put(each.name(), each.id()));
        return Learned.of(all(), terminations);
    }

    private List<AfterCalculation> all() {
        Findings findings = new Findings();
        QuoteBook book = book(findings);
        List<AfterCalculation> all = new ArrayList<>();
        accepted(findings).forEach((name, lineOf) -> book.read(name.number(), name.revision())
                .map(kept -> settled(name.toString(), kept.work(), lineOf, stated(kept)))
                .filter(Result.Settled.class::isInstance)
                .ifPresent(found -> all.add(((Result.Settled) found).after())));
        return all;
    }

    private QuoteBook book(Findings findings) {
        return new QuoteBook(now.at(), now.shop().settings().money(), findings);
    }

    /** Of each quote that was accepted, which line of which order came of which line of it. */
    private Map<QuoteName, Map<String, String>> accepted(Findings findings) {
        Map<QuoteName, Map<String, String>> accepted = new HashMap<>();
        QuoteBook book = book(findings);
        for (QuoteEvent event : new QuoteLog(now.at(), findings).events()) {
            if (event.what() == QuoteEvent.What.ACCEPTED) {
                book.read(event.quote().number(), event.quote().revision()).ifPresent(kept -> kept.rows().stream()
                        .map(row -> row.getOrDefault("line", ""))
                        .forEach(line -> accepted.computeIfAbsent(event.quote(), key -> new TreeMap<>())
                                .put(event.order() + "/" + line, line)));
            }
        }
        for (OrderLine line : now.shop().orders()) {
            String quote = line.assembly().ordered().quote();
            int last = quote.lastIndexOf('/');
            if (last > 0) {
                QuoteName.find(quote.substring(0, last))
                        .ifPresent(name -> accepted.computeIfAbsent(name, key -> new TreeMap<>())
                                .put(line.assembly().ordered().source().lineId(), quote.substring(last + 1)));
            }
        }
        TreeMap<QuoteName, Map<String, String>> sorted = new TreeMap<>(Comparator.comparing(QuoteName::toString));
        sorted.putAll(accepted);
        return sorted;
    }

    /** The lines whose fittings the request stated in money, with what was stated: nobody knows them better since. */
    private static Map<String, Boolean> stated(KeptQuote kept) {
        Map<String, Boolean> stated = new HashMap<>();
        kept.rows().forEach(row -> stated.put(row.getOrDefault("line", ""), row.containsKey("hardware")));
        return stated;
    }

    private Result settled(String name, QuotedWork work, Map<String, String> lineOf, Map<String, Boolean> stated) {
        if (!now.at().keepsLedger()) {
            return new Result.NothingCut("the shop keeps no ledger, so nothing is posted: there is nothing to compare");
        }
        AfterCalculation after = AfterCalculation.of(
                name, work, lineOf, fittings(lineOf, stated), books(posted(), lineOf, work.tellsFreight()));
        return after.whole().isEmpty() ? new Result.NothingCut(why(after)) : new Result.Settled(after);
    }

    private static String why(AfterCalculation after) {
        int good = after.lines().stream().mapToInt(line -> line.pieces().good()).sum();
        return (good == 0
                        ? "nothing of order " + String.join(", ", after.orders()) + " is posted yet"
                        : "no line of order " + String.join(", ", after.orders()) + " is cut whole yet, "
                                + (good == 1 ? "one piece is" : good + " pieces are"))
                + ": there is nothing to compare";
    }

    private Map<String, Money> fittings(Map<String, String> lineOf, Map<String, Boolean> stated) {
        Map<String, Money> fittings = new TreeMap<>();
        for (OrderLine line : now.shop().orders()) {
            String of = lineOf.getOrDefault(line.assembly().ordered().source().lineId(), "");
            if (!of.isEmpty() && !stated.getOrDefault(of, false)) {
                QuoteLine ordered = new QuoteLine(line.assembly(), line.demanded(), QuoteLine.Asked.NOTHING);
                Money today = ordered.hardware(now.shop().settings().quote().parts());
                String part = line.assembly().membership().part();
                if (today.minor() > 0) {
                    fittings.put(part.isEmpty() ? of : of + " " + part, today);
                }
            }
        }
        return fittings;
    }

    private Posted posted() {
        Posted posted = told == null ? Posted.of(now) : told;
        told = posted;
        return posted;
    }

    private JobBooks books(Posted posted, Map<String, String> lineOf, boolean withoutFreight) {
        return new JobBooks(
                posted.standing(),
                posted.good(),
                posted.minutes(),
                new JobBooks.Rates(
                        usual(posted.standing(), lineOf, withoutFreight),
                        posted.paid(),
                        now.shop().settings().quote().work().labour()),
                posted.then());
    }

    /** What the rope of a job is counted at where nobody knows what was paid: by what could be had on the day of its last cut. */
    private Map<String, RopePrice> usual(List<Movement> standing, Map<String, String> lineOf, boolean withoutFreight) {
        List<Movement> ours = standing.stream()
                .filter(movement -> movement.entry().kind() == Movement.Kind.CUT
                        && !PieceLine.of(movement.entry().origin().piece(), lineOf)
                                .isEmpty())
                .toList();
        LocalDate last = ours.stream()
                .map(movement -> Moments.day(movement.at()))
                .max(Comparator.naturalOrder())
                .filter(cut -> !cut.isAfter(day))
                .orElse(day);
        Market market = now.shop().market(last);
        Map<String, List<Length>> cuts = ours.stream()
                .map(Movement::entry)
                .collect(Collectors.groupingBy(
                        entry -> entry.after().rope(),
                        Collectors.mapping(entry -> entry.piece().length(), Collectors.toList())));
        Map<String, RopePrice> usual = new TreeMap<>();
        for (Rope rope : now.shop().catalogue().ropes()) {
            usual.put(
                    rope.id(),
                    PriceInReach.of(market, rope.id(), cuts.getOrDefault(rope.id(), List.of()))
                            .map(found -> offered(found, withoutFreight))
                            .orElse(new RopePrice(rope.price(), RopePrice.Source.LIST)));
        }
        return usual;
    }

    private static RopePrice offered(PriceInReach found, boolean withoutFreight) {
        return new RopePrice(
                withoutFreight ? found.goods() : found.price(),
                found.inReach() ? RopePrice.Source.OFFER : RopePrice.Source.OUT_OF_REACH);
    }
}
