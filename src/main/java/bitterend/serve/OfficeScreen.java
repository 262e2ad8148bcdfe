package bitterend.serve;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where the office code is typed; on the shop's own machine also where it is set, and where pairings are ended. */
final class OfficeScreen implements Screen {
    /** The screen of the shop's own machine. */
    static final String DEVICES = "/devices";

    private static final String HERE = "This is done on the shop's own machine.";
    private static final String CLOSED =
            "There were too many wrong tries: for ten minutes none is taken. Wait, and ask who knows the code.";

    private final Office office;
    private final OfficeCode code;
    private final Devices devices;
    private final Guard guard;
    private final Site site;

    OfficeScreen(Office office, OfficeCode code, Devices devices, Guard guard, Site site) {
        this.office = office;
        this.code = code;
        this.devices = devices;
        this.guard = guard;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(Office.PATH, request -> ask(request, Sent.asked(request, "to"), ""));
        config.routes.post(Office.PATH, this::open);
        config.routes.post("/office/close", request -> {
            office.close(request);
            Back.to(request, "/");
        });
        config.routes.get(DEVICES, request -> devices(request, ""));
        config.routes.post("/devices/revoke", this::revoke);
        config.routes.post("/devices/office", this::set);
    }

    private void ask(Context request, String to, String wrong) {
        site.show(
                request,
                "For the office",
                "serve/office.jte",
                Map.of("to", to.isEmpty() ? "/" : to, "wrong", wrong, "open", office.isOpen(request)));
    }

    private void open(Context request) {
        String to = Sent.text(request, "to");
        if (!office.isSet() || office.isRight(typed(request, "code"))) {
            if (office.isSet()) {
                office.open(request);
            }
            Back.to(request, to);
        } else {
            request.status(403);
            ask(request, to, office.takesTries() ? "That is not the code." : CLOSED);
        }
    }

    /** As it was typed: blanks at its ends belong to it. */
    private static String typed(Context request, String field) {
        @Nullable String sent = request.formParam(field);
        return sent == null ? "" : sent;
    }

    private void devices(Context request, String told) {
        if (!guard.isHere(request)) {
            throw new ForbiddenResponse(HERE);
        }
        site.show(
                request,
                "Devices and office code",
                "serve/devices.jte",
                Map.of(
                        "devices",
                        devices.names().entrySet().stream()
                                .map(each -> new FormField.Choice(each.getKey(), each.getValue()))
                                .toList(),
                        "set",
                        office.isSet(),
                        "told",
                        told));
    }

    private void revoke(Context request) {
        if (!guard.isHere(request)) {
            throw new ForbiddenResponse(HERE);
        }
        devices.revoke(Sent.text(request, "device"));
        Back.to(request, DEVICES);
    }

    /** A code that is there is changed by whoever knows it. */
    private void set(Context request) {
        if (!guard.isHere(request)) {
            throw new ForbiddenResponse(HERE);
        }
        String next = typed(request, "next");
        String wrong = code.isSet() && !office.isRight(typed(request, "code"))
                ? office.takesTries() ? "That is not the code that holds. Nothing was changed." : CLOSED
                : !next.isEmpty() && next.length() < OfficeCode.FEWEST
                        ? "A code has at least " + OfficeCode.FEWEST + " characters. Nothing was changed."
                        : !next.equals(typed(request, "again"))
                                ? "The new code was not typed the same twice. Nothing was changed."
                                : "";
        if (!wrong.isEmpty()) {
            request.status(ReelScreen.NOT_BOOKED);
            devices(request, wrong);
            return;
        }
        if (next.isEmpty()) {
            code.end();
        } else {
            code.set(next);
            office.open(request);
        }
        devices(request, next.isEmpty() ? "There is no office code any more." : "The office code is set.");
    }
}
