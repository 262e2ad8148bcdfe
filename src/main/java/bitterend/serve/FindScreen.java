package bitterend.serve;

import bitterend.report.sheet.TagCode;
import bitterend.work.ShopNow;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One box that finds an order, a piece, a reel, a lot or a plan by what is typed of it, or read off the code of a tag. What
 * is named whole and is one thing alone is opened at once.
 */
final class FindScreen implements Screen {
    private static final int MOST = 50;

    private final Loft loft;
    private final Site site;

    FindScreen(Loft loft, Site site) {
        this.loft = loft;
        this.site = site;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/find", this::find);
    }

    private void find(Context request) {
        String asked = Sent.asked(request, "what");
        Optional<ShopNow> now = loft.now();
        if (now.isEmpty()) {
            site.tell(request, Loft.BROKEN);
            return;
        }
        Optional<TagCode> code = TagCode.read(asked);
        Known known = new Known(loft, now.get());
        List<Hit> whole = asked.isEmpty()
                ? List.of()
                : code.map(known::of).filter(hits -> !hits.isEmpty()).orElseGet(() -> known.called(asked));
        if (whole.size() == 1) {
            Back.to(request, whole.get(0).path());
            return;
        }
        List<Hit> hits = !whole.isEmpty()
                ? whole
                : asked.isEmpty()
                        ? List.of()
                        : known.like(code.map(TagCode::id).orElse(asked))
                                .limit(MOST)
                                .toList();
        site.show(request, "Look up", "serve/find.jte", Map.of("asked", asked, "hits", hits));
    }
}
