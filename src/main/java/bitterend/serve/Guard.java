package bitterend.serve;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import io.javalin.http.SameSite;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Who may ask for what. Only requests that name this server by its own address are answered, a change only from a page of
 * this server in a browser that is known here: so no page of another site can book anything, and no name that somebody
 * points at this machine is believed.
 */
final class Guard {
    /** The field of a form, and the header of a request by script, that a page of this server fills. */
    static final String TOKEN = "token";

    static final String TOKEN_HEADER = "X-Bitterend-Token";
    private static final String DEVICE = "device";
    /** Fields of a form; an order book of a thousand rows has half as many cells. */
    static final int MOST_FIELDS = 30_000;

    private static final String UNREAD = "unread";
    /** Bytes of a form that is too large. */
    private static final long PASSED_OVER = 100_000_000;

    private static final int YEAR = 365 * 24 * 3600;

    /**
     * Nothing from elsewhere, no script or style inside a page, in no frame. A page tells its address to this server alone: with
     * "no-referrer" a browser would keep from us, too, where a form comes from.
     */
    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self' data:;"
                    + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
            "X-Content-Type-Options",
            "nosniff",
            "Referrer-Policy",
            "same-origin",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin");

    private final Keys keys;
    private final String cookie;
    private final Names names;
    private final String scheme;
    private final Devices devices;
    private final Predicate<String> here;
    private final Pace pace = new Pace(System::nanoTime);

    /**
     * @param names how this server is called
     * @param scheme http or https
     * @param here whether an address that a request comes from is the shop's own machine
     */
    Guard(Keys keys, Names names, String scheme, Devices devices, Predicate<String> here) {
        this.here = here;
        this.keys = keys;
        this.scheme = scheme;
        this.names = names;
        this.devices = devices;
        cookie = "bitterend-" + keys.sign("instance", "").substring(0, 8).toLowerCase(Locale.ROOT) + "-" + DEVICE;
    }

    void watch(JavalinConfig config) {
        config.routes.before(this::check);
    }

    private void check(Context request) {
        HEADERS.forEach(request::header);
        request.header("Cache-Control", request.path().startsWith(Assets.PATH) ? "max-age=3600" : "no-store");
        String host = request.header("Host");
        if (host == null || !names.has(host)) {
            throw new ForbiddenResponse("This page is not served under that name.");
        }
        if (request.path().startsWith(Assets.PATH)) {
            return;
        }
        Optional<String> known = known(request);
        if (!pace.lets(known.orElseGet(request::ip))) {
            request.header("Retry-After", "1");
            throw new HttpResponseException(429, "Too much is asked for at once: wait a moment. Nothing was booked.");
        }
        String device = known.orElseGet(() -> given(request));
        request.attribute(DEVICE, device);
        if (!isHere(request) && !devices.mayUse(device) && !isForAll(request)) {
            unpaired(request);
            return;
        }
        boolean reads =
                request.method().equals(HandlerType.GET) || request.method().equals(HandlerType.HEAD);
        if (!reads) {
            fromOurPage(request);
            isForm(request);
            hasToken(request, device);
        }
    }

    /** Whether it comes from the shop's own machine, which needs no pairing. */
    boolean isHere(Context request) {
        return here.test(request.ip());
    }

    private static boolean isForAll(Context request) {
        return request.path().equals(Devices.PATH);
    }

    /** Nothing of what an unpaired device sends is read. */
    private static void unpaired(Context request) {
        if (request.method().equals(HandlerType.GET)) {
            request.redirect(Devices.PATH);
            request.skipRemainingHandlers();
        } else {
            throw new ForbiddenResponse("This device is not paired.");
        }
    }

    /** The name of the browser, if this server gave it one. */
    private Optional<String> known(Context request) {
        String sent = request.cookie(cookie);
        int dot = sent == null ? -1 : sent.indexOf('.');
        return sent != null && dot > 0 && keys.isSigned(DEVICE, sent.substring(0, dot), sent.substring(dot + 1))
                ? Optional.of(sent.substring(0, dot))
                : Optional.empty();
    }

    /** A name for a browser that comes first. */
    private String given(Context request) {
        String made = Keys.random();
        Cookie given = new Cookie(cookie, made + "." + keys.sign(DEVICE, made), "/", YEAR);
        given.setHttpOnly(true);
        given.setSecure(isSecure());
        given.setSameSite(SameSite.STRICT);
        request.cookie(given);
        return made;
    }

    /** No page of this server sends anything but the fields of a form, and no book has so many cells. */
    private static void isForm(Context request) {
        String type = request.contentType();
        if (SentSheet.isOne(request)) {
            readSheet(request);
            return;
        }
        if (type != null && !type.startsWith("application/x-www-form-urlencoded")) {
            throw new HttpResponseException(415, "Only the fields of a form are taken, no files. Nothing was booked.");
        }
        if (fields(request) > MOST_FIELDS) {
            throw new HttpResponseException(
                    413, "A form of more than " + MOST_FIELDS + " cells is not taken. Nothing was booked.");
        }
    }

    private static void readSheet(Context request) {
        try {
            SentSheet.read(request);
        } catch (HttpResponseException refused) {
            request.attribute(UNREAD, true);
            passOver(request);
            throw refused;
        }
    }

    private static int fields(Context request) {
        try {
            return request.formParamMap().size();
        } catch (HttpResponseException tooLarge) {
            request.attribute(UNREAD, true);
            passOver(request);
            throw tooLarge;
        }
    }

    /** Takes the rest in, and keeps none of it: a browser reads the answer only when all of a form was taken off it. */
    private static void passOver(Context request) {
        try (InputStream rest = request.req().getInputStream()) {
            long left = PASSED_OVER;
            long passed = 1;
            while (left > 0 && passed > 0) {
                passed = rest.skip(left);
                left -= passed;
            }
        } catch (IOException gone) {
            // Who sent it does not wait for an answer.
        }
    }

    /** Whether the form that came could not be read: to ask for its fields would fail once more. */
    static boolean isUnread(Context request) {
        return request.attribute(UNREAD) != null;
    }

    private void fromOurPage(Context request) {
        String origin = request.header("Origin");
        boolean ours =
                origin == null ? "same-origin".equals(request.header("Sec-Fetch-Site")) : names.hasOrigin(origin);
        if (!ours) {
            throw new ForbiddenResponse("A change is taken from a page of this server alone.");
        }
    }

    private void hasToken(Context request, String device) {
        String header = request.header(TOKEN_HEADER);
        String token = header == null ? request.formParam(TOKEN) : header;
        if (token == null || !keys.isSigned(TOKEN, device, token)) {
            throw new ForbiddenResponse("This page is too old: load it again, then do it once more.");
        }
    }

    /** Whether cookies go over https alone. */
    boolean isSecure() {
        return scheme.equals("https");
    }

    /** What a page fills its forms with. */
    String token(Context request) {
        return keys.sign(TOKEN, deviceOf(request));
    }

    /** The browser that asks. */
    static String deviceOf(Context request) {
        String device = request.attribute(DEVICE);
        return device == null ? "" : device;
    }

    /** What a cookie of this server is called, so that two shops on one machine do not mix theirs. */
    String cookie(String what) {
        return cookie.substring(0, cookie.length() - DEVICE.length()) + what;
    }
}
