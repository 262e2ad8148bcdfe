package bitterend.exchange;

import bitterend.measure.LengthText;
import bitterend.stock.Holding;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

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
        return new JsonTree()
                .with("format", "bitterend/movements/1")
                .with("movements", movements.stream().map(StockJson::tree).toList())
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
                .with("parent", origin.parent())
                .with("undoes", origin.undoes())
                .with("reel", tree(entry.after()));
    }

    private static JsonTree tree(Reel reel) {
        return new JsonTree()
                .with("reel", reel.id())
                .with("rope", reel.rope())
                .with("lot", reel.lot())
                .with("length", LengthText.exact(reel.length()))
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
                .with(
                        "state",
                        reel.custody().state().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .with("forOrder", reel.custody().order())
                .with("full", reel.full())
                .with("place", reel.where().place());
    }

    private static String day(LocalDate day) {
        return day.equals(LocalDate.MAX) || day.equals(LocalDate.MIN) ? "" : day.toString();
    }
}
