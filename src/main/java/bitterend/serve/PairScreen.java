package bitterend.serve;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.util.Map;

/**
 * Where a device beyond this machine types the code that the machine shows; on the machine itself, where somebody asks for the
 * code of one more device.
 */
final class PairScreen implements Screen {
    private static final String CODE = Devices.PATH + "/code";
    private static final String TITLE = "Pair this device";

    private final Devices devices;
    private final Site site;
    private final Guard guard;

    PairScreen(Devices devices, Site site, Guard guard) {
        this.guard = guard;
        this.devices = devices;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(Devices.PATH, this::show);
        config.routes.post(Devices.PATH, this::pair);
        config.routes.post(CODE, this::code);
    }

    private void show(Context request) {
        if (guard.isHere(request)) {
            shop(request, "");
        } else {
            device(request, "");
        }
    }

    /** The shop's own machine: it needs no pairing, and shows the code for a device that does. */
    private void shop(Context request, String code) {
        site.show(
                request,
                "Pair a device",
                "serve/code.jte",
                Map.of("code", code, "minutes", Devices.LASTS.toMinutes(), "action", CODE));
    }

    private void device(Context request, String wrong) {
        site.show(request, TITLE, "serve/pair.jte", Map.of("wrong", wrong));
    }

    /** Shown to the shop's machine alone; the code before it counts no more. */
    private void code(Context request) {
        if (!guard.isHere(request)) {
            throw new ForbiddenResponse("A code is asked for on the shop's own machine.");
        }
        shop(request, devices.newCode());
    }

    private void pair(Context request) {
        String name = Sent.text(request, "name");
        if (devices.pair(Guard.deviceOf(request), name.isEmpty() ? "device" : name, Sent.text(request, "code"))) {
            Back.to(request, "/");
        } else {
            request.status(403);
            device(request, "That is not the code, or it is too old: ask for a new one.");
        }
    }
}
