package bitterend.work;

import bitterend.exchange.ShopFolder;
import bitterend.measure.Parsed;
import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerPlace;
import bitterend.stock.LoftAddress;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Where {@code shop.json} says that the ledger of a shop is: a file of its folder, unless it names a server. It is looked up
 * at each use, for the file may change while a program runs.
 */
public final class ShopLedgerPlace implements LedgerPlace {
    private final Path folder;
    private final LedgerPlace file;
    private final Function<LoftAddress, LedgerPlace> served;
    private final Set<LedgerPlace> begun = ConcurrentHashMap.newKeySet();
    private final Map<LoftAddress, LedgerPlace> lofts = new ConcurrentHashMap<>();

    /**
     * The place of a shop.
     *
     * @param file the place in its folder
     * @param served the place on a server
     */
    public ShopLedgerPlace(Path folder, LedgerPlace file, Function<LoftAddress, LedgerPlace> served) {
        this.folder = folder;
        this.file = file;
        this.served = served;
    }

    /** The place that counts; nothing where {@code shop.json} cannot be read and no file is there. */
    private Optional<LedgerPlace> found() {
        Parsed<LoftAddress> named = ShopFolder.loft(folder);
        if (named.value().isEmpty()) {
            return file.isKept() ? Optional.of(file) : Optional.empty();
        }
        Optional<LedgerPlace> loft = loft(named);
        loft.filter(there -> file.isKept()).ifPresent(this::refuseTwo);
        return Optional.of(loft.orElse(file));
    }

    private Optional<LedgerPlace> loft(Parsed<LoftAddress> named) {
        return named.value().filter(LoftAddress::isNamed).map(address -> lofts.computeIfAbsent(address, served));
    }

    private void refuseTwo(LedgerPlace loft) {
        throw new LedgerException.Refused(
                "shop.json says that the ledger is " + loft.text() + ", and there is " + file.text()
                        + ", too. To carry the file there: bitterend stock move-ledger SHOP. To go on with the file: take"
                        + " \"ledger\" out of shop.json");
    }

    private LedgerPlace place() {
        return found().orElseThrow(() ->
                new LedgerException.Refused("shop.json cannot be read, and it may say where the ledger is:"
                        + " bitterend check SHOP tells what is wrong with it"));
    }

    @Override
    public String name() {
        return found().orElse(file).name();
    }

    @Override
    public String text() {
        return found().orElse(file).text();
    }

    @Override
    public boolean isInTheFolder() {
        return found().orElse(file).isInTheFolder();
    }

    /** A loft that was begun stays: it is not asked again. */
    @Override
    public boolean isKept() {
        return found().filter(this::isKept).isPresent();
    }

    private boolean isKept(LedgerPlace place) {
        boolean kept = begun.contains(place) || place.isKept();
        if (kept && !place.isInTheFolder()) {
            begun.add(place);
        }
        return kept;
    }

    @Override
    public void begin(Event.Act act, Consumer<Ledger.Books> first) {
        place().begin(act, first);
    }

    @Override
    public Ledger toRead() {
        return place().toRead();
    }

    @Override
    public Ledger toWrite() {
        return place().toWrite();
    }

    @Override
    public Restored restore(Path backup, Whose whose, Event.Act act) {
        return place().restore(backup, whose, act);
    }

    @Override
    public Carried carry(Where where) {
        return loft(ShopFolder.loft(folder)).orElseGet(this::place).carry(where);
    }

    @Override
    public boolean wentOn(Path aside, Head printed) {
        return place().wentOn(aside, printed);
    }
}
