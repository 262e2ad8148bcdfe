package bitterend.serve;

import bitterend.front.SettingsPage;
import bitterend.work.AskSettings;
import bitterend.work.ShopNow;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;

/** What the settings of the shop are, for the office; they are changed in their file. */
final class SettingsScreen implements Screen {
    static final String PATH = "/settings";

    private final Loft loft;
    private final Site site;

    SettingsScreen(Loft loft, Site site) {
        this.loft = loft;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, request -> loft.whenRead(request, site, now -> show(request, now)));
    }

    private void show(Context request, ShopNow now) {
        site.show(
                request,
                SettingsPage.of(
                        new AskSettings(now).settings(), now.shop().settings().name()));
    }
}
