package bitterend.serve;

import bitterend.packing.strategy.EffortLevel;
import bitterend.report.Figures;
import bitterend.report.ShortagePage;
import bitterend.report.sheet.PagePart;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.plans.ForecastShortage;
import bitterend.work.plans.ForecastShortage.Forecast;
import bitterend.work.plans.PlanSearch;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which rope is short on which of the days ahead, and what would help: worked out behind the page once for each state of the
 * shop, in a line on the screen of today, and whole on a page of its own.
 */
final class ShortScreen implements Screen {
    static final String PATH = "/short";

    private static final Duration TIME = Duration.ofSeconds(2);
    private static final long SEED = 1;

    private final Loft loft;
    private final Site site;
    private final Runs runs;
    private @Nullable Asked asked;

    ShortScreen(Loft loft, Site site, Runs runs) {
        this.loft = loft;
        this.site = site;
        this.runs = runs;
    }

    /**
     * What is worked out.
     *
     * @param mark the state of the shop that it is of
     * @param now the shop in that state
     */
    private record Asked(String mark, ShopNow now, Run<Forecast> run) {}

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, request -> loft.whenRead(request, site, now -> show(request, now)));
    }

    private void show(Context request, ShopNow now) {
        Asked one = asked(now);
        if ("true".equals(request.header("HX-Request"))) {
            request.html(site.part(request, "serve/short.jte", line(one)));
        } else {
            Map<String, Object> values = line(one);
            values.put(
                    "blocks",
                    one.run().made().map(made -> blocks(one.now(), made)).orElse(""));
            site.show(request, "Rope of the days ahead", "serve/shortpage.jte", values);
        }
    }

    /** What is worked out for the shop as it is; while one is worked out no other is begun. */
    private synchronized Asked asked(ShopNow now) {
        Asked before = asked;
        String mark = loft.shelf().mark();
        if (before != null && (before.mark().equals(mark) || !before.run().isOver())) {
            return before;
        }
        Asked next = new Asked(mark, now, runs.begin("short", ear -> new ForecastShortage(now)
                .forecast(
                        new ForecastShortage.Request(Loft.day(now), null),
                        PlanSearch.of(EffortLevel.QUICK, TIME, SEED),
                        Watcher.who(ear.stop()))));
        asked = next;
        return next;
    }

    private static Optional<Forecast> made(Asked asked) {
        return asked.run().made();
    }

    private Map<String, Object> line(Asked asked) {
        Figures figures = loft.figures(asked.now());
        Map<String, Object> values = new HashMap<>();
        values.put(
                "words",
                made(asked)
                        .map(made -> new ShortagePage(figures).brief(made.ropes()))
                        .orElse(""));
        values.put("enough", made(asked).map(Forecast::isEnough).orElse(true));
        values.put("fault", asked.run().fault());
        return values;
    }

    private String blocks(ShopNow now, Forecast made) {
        return PagePart.blocks(new ShortagePage(loft.figures(now))
                .of(now.shop().settings().name(), made.horizon().until(), made.ropes()));
    }
}
