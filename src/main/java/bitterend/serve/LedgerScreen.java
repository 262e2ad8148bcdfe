package bitterend.serve;

import bitterend.stock.LedgerException;
import bitterend.work.ShopNow;
import bitterend.work.rack.BeginLedger;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;

/** Begins the ledger of a shop that keeps none yet: before that nothing can be booked. */
final class LedgerScreen implements Screen {
    static final String PATH = "/ledger";

    private final Loft loft;
    private final Site site;
    private final People people;

    LedgerScreen(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.post(PATH, this::begin);
    }

    /** One that is there already is what was asked for. */
    private void begin(Context request) {
        String who = people.who(request);
        ShopNow now = loft.now().orElse(null);
        if (who.isEmpty() || now == null) {
            request.status(BenchBooking.WAITS);
            site.tell(request, who.isEmpty() ? People.FIRST : Loft.BROKEN);
            return;
        }
        try {
            new BeginLedger(loft.access()).begin(now.shop(), who);
        } catch (LedgerException.Refused there) {
            if (!loft.access().keepsLedger()) {
                throw there;
            }
        }
        Back.to(request);
    }
}
