package bitterend.serve;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.Map;

/** Where a device beyond this machine types the code that the machine shows. */
final class PairScreen implements Screen {
    private final Devices devices;
    private final Site site;

    PairScreen(Devices devices, Site site) {
        this.devices = devices;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(Devices.PATH, this::show);
        config.routes.post(Devices.PATH, this::pair);
    }

    private void show(Context request) {
        site.show(request, "Pair this device", "serve/pair.jte", Map.of("wrong", ""));
    }

    private void pair(Context request) {
        String name = Sent.text(request, "name");
        if (devices.pair(Guard.deviceOf(request), name.isEmpty() ? "device" : name, Sent.text(request, "code"))) {
            Back.to(request, "/");
        } else {
            request.status(403);
            site.show(
                    request,
                    "Pair this device",
                    "serve/pair.jte",
                    Map.of("wrong", "That is not the code, or it is too old: ask for a new one."));
        }
    }
}
