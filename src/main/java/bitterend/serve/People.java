package bitterend.serve;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Who stands before a browser: a person taps a name before anything is booked, and each event has it. */
final class People implements Screen {
    private static final int WORKING_DAY = 12 * 3600;
    private static final int LONGEST = 60;
    /** What who has said no name is told. */
    static final String FIRST = "Say first who you are: each booking has the name of who made it.";

    /** The field with the name of who tapped. */
    static final String TAPPED_BY = "by";

    private final Guard guard;

    People(Guard guard) {
        this.guard = guard;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.post("/who", this::set);
    }

    private void set(Context request) {
        String name = clean(request.formParam("name"));
        Cookie cookie =
                new Cookie(guard.cookie("who"), URLEncoder.encode(name, StandardCharsets.UTF_8), "/", WORKING_DAY);
        cookie.setHttpOnly(true);
        cookie.setSecure(guard.isSecure());
        cookie.setSameSite(SameSite.STRICT);
        request.cookie(cookie);
        Back.to(request);
    }

    /**
     * The name; empty where nobody has said one. What waited in a browser to be sent has the name of who tapped it: by now
     * somebody else may stand there.
     */
    String who(Context request) {
        boolean isForm = request.method().equals(HandlerType.POST) && !Guard.isUnread(request);
        String tapped = isForm ? clean(request.formParam(TAPPED_BY)) : "";
        return tapped.isEmpty() ? standing(request) : tapped;
    }

    /** Who stands before the browser now. */
    private String standing(Context request) {
        String sent = request.cookie(guard.cookie("who"));
        try {
            return sent == null ? "" : clean(URLDecoder.decode(sent, StandardCharsets.UTF_8));
        } catch (IllegalArgumentException fault) {
            return "";
        }
    }

    /** One line without characters that do not show. */
    private static String clean(@org.jspecify.annotations.Nullable String text) {
        String line = Sent.oneLine(text);
        return line.length() > LONGEST ? line.substring(0, LONGEST) : line;
    }
}
