package bitterend.serve;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Prices, quotes, settings and the money of the rack are for the office: where the shop has set a code, a browser shows them once it was
 * typed there, until the browser is closed or a working day is over. Few wrong tries, and none is taken for a while.
 */
final class Office {
    /** Where the code is typed. */
    static final String PATH = "/office";

    private static final List<String> GUARDED = List.of("/buying", "/quotes", ImportScreen.PATH, SettingsScreen.PATH);
    private static final Duration DAY = Duration.ofHours(12);
    private static final Duration PAUSE = Duration.ofMinutes(10);
    private static final int TRIES = 5;
    private static final String PURPOSE = "office";

    private final OfficeCode code;
    private final Keys keys;
    private final Guard guard;
    private final Clock clock;
    private int wrong;
    private Instant pauseUntil = Instant.MIN;

    Office(OfficeCode code, Keys keys, Guard guard, Clock clock) {
        this.code = code;
        this.keys = keys;
        this.guard = guard;
        this.clock = clock;
    }

    boolean isSet() {
        return code.isSet();
    }

    /** Whether a browser is shown money. */
    boolean isOpen(Context request) {
        return !code.isSet() || isSigned(request);
    }

    private boolean isSigned(Context request) {
        String sent = request.cookie(guard.cookie(PURPOSE));
        int dot = sent == null ? -1 : sent.indexOf('.');
        if (sent == null || dot < 1 || !sent.substring(0, dot).matches("[0-9]{1,12}")) {
            return false;
        }
        Instant typed = Instant.ofEpochSecond(Long.parseLong(sent.substring(0, dot)));
        Instant now = clock.instant();
        return !typed.isAfter(now)
                && now.isBefore(typed.plus(DAY))
                && keys.isSigned(PURPOSE, said(request, sent.substring(0, dot)), sent.substring(dot + 1));
    }

    private String said(Context request, String typed) {
        return Guard.deviceOf(request) + "\n" + typed + "\n" + code.kept();
    }

    /** Asks for the code before a page that is for the office. */
    void check(Context request) {
        boolean guarded = GUARDED.stream()
                .anyMatch(path -> request.path().equals(path) || request.path().startsWith(path + "/"));
        if (!guarded || isOpen(request)) {
            return;
        }
        if (request.method().equals(HandlerType.GET)) {
            request.redirect(PATH + "?to=" + Sent.path(request.path()));
            request.skipRemainingHandlers();
        } else {
            throw new ForbiddenResponse("This is for the office: type its code first.");
        }
    }

    /** Whether tries are taken now. */
    synchronized boolean takesTries() {
        return !clock.instant().isBefore(pauseUntil);
    }

    /** Whether a code is right; wrong ones count, from whichever browser they come. */
    synchronized boolean isRight(String typed) {
        if (!takesTries()) {
            return false;
        }
        boolean right = code.is(typed);
        wrong = right ? 0 : wrong + 1;
        if (wrong == TRIES) {
            wrong = 0;
            pauseUntil = clock.instant().plus(PAUSE);
        }
        return right;
    }

    /** Shows money to a browser from now on. */
    void open(Context request) {
        String typed = Long.toString(clock.instant().getEpochSecond());
        give(request, typed + "." + keys.sign(PURPOSE, said(request, typed)));
    }

    /** Shows it no money any more. */
    void close(Context request) {
        give(request, "closed");
    }

    /** A cookie that goes with the browser's session. */
    private void give(Context request, String value) {
        Cookie cookie = new Cookie(guard.cookie(PURPOSE), value, "/");
        cookie.setHttpOnly(true);
        cookie.setSecure(guard.isSecure());
        cookie.setSameSite(SameSite.STRICT);
        request.cookie(cookie);
    }
}
