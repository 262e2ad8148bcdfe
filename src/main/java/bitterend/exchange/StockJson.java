package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.stock.Balance;
import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Held;
import bitterend.stock.Holding;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
import bitterend.stock.Paid;
import bitterend.stock.Reel;
import bitterend.stock.Transfers.OnTheWay;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the ledger answers under {@code --json}, exact and for programs. */
public final class StockJson {
    private StockJson() {}

    /** Reels as they stand. */
    public static String rack(List<Holding> holdings) {
        return new JsonTree()
                .with("format", "bitterend/rack/1")
                .with(
                        "reels",
                        holdings.stream()
                                .map(holding -> tree(holding.reel())
                                        .with("gone", holding.gone())
                                        .with("movements", holding.movements()))
                                .toList())
                .text();
    }

    /** Movements, oldest first, each with its reel as it stood afterwards. */
    public static String movements(List<Movement> movements) {
        return tree(movements).text();
    }

    /** The same of a reel, with what was paid for it where that is known, and the events that put that right. */
    public static String history(
            List<Movement> movements, Optional<Paid.OfReel> paid, List<Paid.Corrected> corrected, MoneyText money) {
        JsonTree tree = tree(movements);
        paid.ifPresent(known -> tree.with("paid", tree(known, corrected, money)));
        return tree.text();
    }

    private static JsonTree tree(Paid.OfReel reel, List<Paid.Corrected> corrected, MoneyText money) {
        JsonTree tree = new JsonTree()
                .with("byMetre", money.exact(reel.byMetre()))
                .with("overLength", LengthText.exact(reel.found()));
        amounts(tree, reel.paid(), money);
        return tree.with(
                "corrected",
                corrected.stream()
                        .map(each -> amounts(tree(each.event()), each.paid(), money))
                        .toList());
    }

    private static JsonTree tree(Event event) {
        return new JsonTree()
                .with("event", event.number())
                .with("at", event.at().toString())
                .with("who", event.act().who())
                .with("note", event.act().note());
    }

    private static JsonTree amounts(JsonTree tree, Paid paid, MoneyText money) {
        Optional.ofNullable(paid.price()).ifPresent(price -> tree.with("price", money.print(price)));
        Optional.ofNullable(paid.freight()).ifPresent(freight -> tree.with("freight", money.print(freight)));
        return tree;
    }

    private static JsonTree tree(List<Movement> movements) {
        return new JsonTree()
                .with("format", "bitterend/movements/1")
                .with("movements", movements.stream().map(StockJson::tree).toList());
    }

    /** The pieces that came of a lot, and what is on the rack of it. */
    public static String lot(String lot, List<Movement> pieces, List<Holding> rack) {
        return new JsonTree()
                .with("format", "bitterend/lot/1")
                .with("lot", lot)
                .with("pieces", pieces.stream().map(StockJson::tree).toList())
                .with(
                        "reels",
                        rack.stream().map(holding -> tree(holding.reel())).toList())
                .text();
    }

    private static JsonTree tree(Movement movement) {
        Movement.Entry entry = movement.entry();
        Movement.Origin origin = entry.origin();
        return new JsonTree()
                .with("number", movement.number())
                .with("event", movement.event())
                .with("at", movement.at().toString())
                .with("who", movement.who())
                .with("kind", entry.kind().word())
                .with("count", movement.count())
                .with("by", LengthText.exact(movement.by()))
                .with("left", LengthText.exact(entry.left()))
                .with("note", entry.note())
                .with("piece", origin.piece())
                .with("plan", origin.plan())
                .with("was", origin.was())
                .with("pieceLength", LengthText.exact(entry.piece().length()))
                .with("ordered", tree(entry.piece().ordered()))
                .with("parent", origin.parent())
                .with("undoes", origin.undoes())
                .with("reel", tree(entry.after()));
    }

    private static JsonTree tree(Ordered ordered) {
        return new JsonTree()
                .with("order", ordered.piece().order())
                .with("line", ordered.piece().line())
                .with("number", ordered.piece().number())
                .with("leg", ordered.piece().leg())
                .with("part", ordered.piece().part())
                .with("rope", ordered.make().rope())
                .with("finished", ordered.make().finished())
                .with("ends", ordered.make().ends())
                .with("needed", LengthText.exact(ordered.make().needed()))
                .with("set", ordered.bond().set())
                .with("match", ordered.bond().match())
                .with("customer", ordered.wish().customer())
                .with("due", ordered.wish().due())
                .with("certificate", ordered.terms().certificate())
                .with("ownRope", ordered.terms().ownRope())
                .with("measured", ordered.terms().measured());
    }

    private static JsonTree tree(Reel reel) {
        return new JsonTree()
                .with("reel", reel.id())
                .with("rope", reel.rope())
                .with("lot", reel.lot())
                .with("length", LengthText.exact(reel.length()))
                .with("written", reel.contents().written().text())
                .with("uncertainty", LengthText.exact(reel.contents().uncertainty()))
                .with("leadTrim", LengthText.exact(reel.contents().leadTrim()))
                .with("innerWraps", LengthText.exact(reel.contents().innerWraps()))
                .with("known", reel.contents().known().word())
                .with(
                        "flaws",
                        reel.flaws().stream()
                                .map(flaw -> new JsonTree()
                                        .with("from", LengthText.exact(flaw.from()))
                                        .with("to", LengthText.exact(flaw.to()))
                                        .with("uncertainty", LengthText.exact(flaw.uncertainty()))
                                        .with("what", flaw.what()))
                                .toList())
                .with("certificate", reel.papers().certificate())
                .with("certificateNumber", reel.papers().number())
                .with("useBy", day(reel.papers().useBy()))
                .with("received", day(reel.papers().received()))
                .with("owner", reel.custody().owner())
                .with("state", Codec.word(reel.custody().state()))
                .with("forOrder", reel.custody().order())
                .with(
                        "held",
                        reel.custody().held().stream().map(StockJson::tree).toList())
                .with("full", reel.full())
                .with("place", reel.where().place())
                .with("note", reel.where().note());
    }

    private static JsonTree tree(Held held) {
        return new JsonTree()
                .with("length", LengthText.exact(held.length()))
                .with(held.kind().word(), held.name())
                .with("until", day(held.until()))
                .with("why", held.why());
    }

    /** Where the rope went, and the end of the chain. */
    public static String balance(Balance balance, Head head, List<OnTheWay> onTheWay) {
        JsonTree accounts = new JsonTree();
        for (Balance.Account account : Balance.Account.values()) {
            accounts.with(Codec.word(account), LengthText.exact(balance.of(account)));
        }
        JsonTree tree = new JsonTree()
                .with("format", "bitterend/balance/1")
                .with("sound", true)
                .with("head", head.text())
                .with("accounts", accounts);
        return (onTheWay.isEmpty() ? tree : tree.with("onTheWay", trees(onTheWay))).text();
    }

    /** What is on the way between lofts. */
    public static String onTheWay(List<OnTheWay> all) {
        return new JsonTree()
                .with("format", "bitterend/on-the-way/1")
                .with("onTheWay", trees(all))
                .text();
    }

    private static List<JsonTree> trees(List<OnTheWay> all) {
        return all.stream()
                .map(each -> new JsonTree()
                        .with("from", each.from())
                        .with("to", each.to())
                        .with("event", each.event())
                        .with("reel", tree(each.reel())))
                .toList();
    }

    /**
     * How much is on a reel by its sizes or its weight.
     *
     * @param figures by name, in order
     */
    public static String gauged(String reel, Map<String, String> figures) {
        JsonTree tree = new JsonTree().with("format", "bitterend/gauge/1").with("reel", reel);
        figures.forEach(tree::with);
        return tree.text();
    }

    /** What is wrong with a ledger. */
    public static String damaged(List<String> faults) {
        return new JsonTree()
                .with("format", "bitterend/balance/1")
                .with("sound", false)
                .with("faults", (Object) faults)
                .text();
    }

    /**
     * A ledger that stands in a file.
     *
     * @param kept where the one is kept that stood there before; empty when none did
     */
    public static String ledger(String file, Head head, String kept) {
        return new JsonTree()
                .with("format", "bitterend/ledger/1")
                .with("file", file)
                .with("head", head.text())
                .with("kept", kept)
                .text();
    }

    private static String day(LocalDate day) {
        return day.equals(LocalDate.MAX) || day.equals(LocalDate.MIN) ? "" : day.toString();
    }
}
