package bitterend.serve;

import bitterend.stock.Event;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What a form sent. */
final class Sent {
    private static final int LONGEST = 200;
    /** Fields that say nothing of what is to be booked. */
    private static final Set<String> NOT_ASKED = Set.of(Guard.TOKEN, "booking", "back", People.TAPPED_BY);

    private Sent() {}

    /** A field as one line; empty where it was not sent. */
    static String text(Context request, String field) {
        return line(request.formParam(field));
    }

    /** What the address asks for, as one line; empty where it does not. */
    static String asked(Context request, String name) {
        return line(request.queryParam(name));
    }

    /** Without characters that end a line, do not show or turn others, and without blanks at its ends. */
    static String oneLine(@Nullable String text) {
        return text == null
                ? ""
                : text.replaceAll("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]", " ").strip();
    }

    private static String line(@Nullable String text) {
        String line = oneLine(text);
        return line.length() > LONGEST ? line.substring(0, LONGEST) : line;
    }

    /** The id that the page gave to this booking when it was made: sent twice, it counts once. */
    static String id(Context request) {
        String id = text(request, "booking");
        return id.matches("[A-Za-z0-9_-]{8,64}") ? id : Keys.random();
    }

    /** Puts into an act who does it, under which id, and all that was asked for. */
    static Event.Act by(Event.Act act, String who, String booking, Context request) {
        TreeMap<String, String> asked = new TreeMap<>();
        request.formParamMap().keySet().stream()
                .filter(field -> !NOT_ASKED.contains(field))
                .forEach(field -> asked.put(field, text(request, field)));
        return act.by(who).withId(booking).with(Event.ASKED, request.path() + " " + asked);
    }

    /** An id as part of a path. */
    static String path(String id) {
        return URLEncoder.encode(id, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
