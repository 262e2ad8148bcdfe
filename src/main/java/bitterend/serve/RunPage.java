package bitterend.serve;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * The page of a run: how far it is, asked for again and again by the page, and in the end what came of it.
 *
 * @param site where it is shown
 * @param title what is worked out
 * @param path where the page is; the run is stopped at {@code path/stop}
 * @param back where its end leads back to
 * @param busy what is said while it is worked out
 * @param stop what the button says that stops it
 */
record RunPage(Site site, String title, String path, String back, String busy, String stop) {
    /** Shows a run; {@code done} sets what came of it as HTML, everything typed in it escaped. */
    <T> void show(Context request, Run<T> run, Function<T, String> done) {
        Map<String, Object> values = new HashMap<>();
        values.put("title", title);
        values.put("path", path);
        values.put("back", back);
        values.put("busy", busy);
        values.put("stop", stop);
        values.put("run", run.id());
        values.put("lines", run.lines());
        values.put("fault", run.fault());
        values.put("over", run.isOver());
        values.put("result", run.made().map(done).orElse(""));
        if ("true".equals(request.header("HX-Request"))) {
            request.html(site.part(request, "serve/running.jte", values));
        } else {
            site.show(request, title, "serve/run.jte", values);
        }
    }
}
