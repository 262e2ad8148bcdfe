package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Readings;
import bitterend.measure.Parsed;
import bitterend.packing.ShopCalendar;
import bitterend.packing.ShopCalendar.Ahead;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code closed}, {@code urgency} and {@code horizon} of {@code shop.json}: days off, how far ahead work is urgent, and planned. */
final class CalendarJson {
    private static final Pattern AHEAD = Pattern.compile("([0-9]{1,3}) *(working +)?days?");

    private CalendarJson() {}

    /** The same members, as they are read. */
    static JsonTree tree(ShopCalendar calendar) {
        return new JsonTree()
                .with("closed", (Object) calendar.closed().stream()
                        .sorted()
                        .map(LocalDate::toString)
                        .toList())
                .with(
                        "urgency",
                        new JsonTree().with("third", text(calendar.next())).with("fourth", text(calendar.soon())))
                .with("horizon", text(calendar.horizon()));
    }

    private static String text(Ahead ahead) {
        return ahead.days() + (ahead.working() ? " working" : "") + (ahead.days() == 1 ? " day" : " days");
    }

    static ShopCalendar read(JsonObject shop) {
        JsonObject urgency = shop.object("urgency");
        Fields limits = urgency.fields();
        ShopCalendar usual = ShopCalendar.USUAL;
        Ahead third = limits.optional("third", CalendarJson::ahead, usual.next());
        Ahead fourth = limits.optional("fourth", CalendarJson::ahead, usual.soon());
        if (limits.sound() && third.inFifths() > fourth.inFifths()) {
            boolean said = urgency.has("third");
            limits.warning(
                    said ? "third" : "fourth",
                    said
                            ? "no further ahead than the fourth class, which reaches " + text(fourth)
                            : "no less far ahead than the third class, which reaches " + text(third));
        }
        return new ShopCalendar(
                closed(shop), third, fourth, shop.fields().optional("horizon", CalendarJson::ahead, usual.horizon()));
    }

    /** The days of the list; one that stands there twice is told. */
    private static Set<LocalDate> closed(JsonObject shop) {
        Set<LocalDate> closed = new HashSet<>();
        for (Fields day : shop.entries("closed")) {
            LocalDate read = day.require("", Readings::day, LocalDate.MIN);
            if (day.sound() && !closed.add(read)) {
                day.warning("", "a day that is not in the list yet");
            }
        }
        return closed;
    }

    /** How much later than expected reels on order usually come. */
    static Parsed<Ahead> late(String text) {
        Parsed<Ahead> late = ahead(text);
        return late.value().isPresent()
                ? late
                : Parsed.refused("how late reels on order usually come, such as 2 working days; at most " + Ahead.MOST);
    }

    private static Parsed<Ahead> ahead(String text) {
        Matcher ahead = AHEAD.matcher(text);
        return ahead.matches() && Integer.parseInt(ahead.group(1)) <= Ahead.MOST
                ? Parsed.of(new Ahead(Integer.parseInt(ahead.group(1)), ahead.group(2) != null))
                : Parsed.refused("how far ahead, such as 1 working day, or 7 days; at most " + Ahead.MOST);
    }
}
