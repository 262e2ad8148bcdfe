package bitterend.exchange;

import bitterend.day.CountedRack;
import bitterend.day.CountedRack.Line;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.stock.Counted;
import bitterend.stock.Reel;
import java.util.Set;

/** What a count found against the ledger, for programs. */
public final class CountJson {
    private final MoneyText money;

    public CountJson(MoneyText money) {
        this.money = money;
    }

    /**
     * Every line with what is booked of it.
     *
     * @param sure reels that are booked although they are set apart
     * @param event number of the event that it was booked as; 0 while it is not
     */
    public String text(CountedRack rack, Set<String> sure, long event) {
        JsonTree tree = new JsonTree()
                .with("format", "bitterend/count/1")
                .with("event", event)
                .with(
                        "lines",
                        rack.lines().stream().map(line -> line(line, sure)).toList())
                .with("difference", LengthText.exact(CountedRack.by(rack.differing())))
                .with("worth", money.print(CountedRack.money(rack.differing())))
                .with("notCounted", rack.uncounted().stream().map(Reel::id).toList())
                .with(
                        "notInTheBooks",
                        rack.strangers().stream().map(Counted::reel).toList());
        return tree.text();
    }

    private JsonTree line(Line line, Set<String> sure) {
        return new JsonTree()
                .with("reel", line.book().id())
                .with("rope", line.book().rope())
                .with("place", line.book().where().place())
                .with("found", line.counted().found().word())
                .with("booked", LengthText.exact(line.book().length()))
                .with("counted", LengthText.exact(line.counted().length().roundedDown()))
                .with("difference", LengthText.exact(line.by()))
                .with("worth", money.print(line.money()))
                .with("agrees", line.agrees())
                .with("apart", line.agrees() ? "" : line.apart().words())
                .with("accepted", line.isBooked(sure));
    }
}
