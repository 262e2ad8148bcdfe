package bitterend.serve;

import bitterend.exchange.PlanFolder.Kept;
import bitterend.finding.Findings;
import bitterend.front.SheetPapers;
import bitterend.report.sheet.Paper;
import bitterend.report.sheet.ReelTags;
import bitterend.report.sheet.TagPage;
import bitterend.stock.Reel;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import bitterend.work.plans.PlanOfPiece;
import bitterend.work.plans.PrintSheets;
import bitterend.work.plans.PrintSheets.Result;
import bitterend.work.plans.WhichSheets;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The same paper as the commands print, of today's sheets of the plan in force; and issuing them. */
final class PrintScreen implements Screen {
    static final String SHEET = "/print/sheet";

    /** These pages carry their style with them, as the files of the commands do; still no script runs in them. */
    private static final String OWN_STYLE =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; base-uri 'none'; frame-ancestors"
                    + " 'none'";

    /** Where the label of a reel is printed. */
    static final String LABEL = "/print/label?id=";

    /** Where the tag of a piece is printed. */
    static final String TAG = "/print/tag?piece=";

    private static final int NOT_FOUND = 404;

    private final Loft loft;
    private final Site site;
    private final People people;

    PrintScreen(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(SHEET, request -> print(request, SheetPapers::sheet, "text/html; charset=utf-8"));
        config.routes.get("/print/cards", request -> print(request, SheetPapers::cards, "text/html; charset=utf-8"));
        config.routes.get(
                "/print/tags",
                request -> print(
                        request, papers -> papers.tags(TagPage.Label.USUAL, Paper.A4), "text/html; charset=utf-8"));
        config.routes.get(
                "/print/sheet.pdf", request -> print(request, papers -> papers.sheetPdf(Paper.A4), "application/pdf"));
        config.routes.get("/print/tag", this::tag);
        config.routes.get("/print/label", request -> labels(request, Sent.asked(request, "id")));
        config.routes.get("/print/labels", request -> labels(request, ""));
        config.routes.post("/issue", this::issue);
    }

    /** The tag of a piece, cut or not, the same as is among those of its plan. */
    private void tag(Context request) {
        String piece = Sent.asked(request, "piece");
        ShopNow now = loft.now().orElse(null);
        Optional<byte[]> tag = Optional.ofNullable(now).flatMap(shop -> tag(shop, piece));
        if (tag.isPresent()) {
            withItsOwnStyle(request).result(tag.get());
        } else {
            request.status(now == null ? BenchBooking.WAITS : NOT_FOUND);
            site.tell(request, now == null ? Loft.BROKEN : "No plan that is kept cuts that piece, so it has no tag.");
        }
    }

    private Optional<byte[]> tag(ShopNow now, String piece) {
        Plans plans = now.at().plans(new Findings());
        return PlanOfPiece.of(now, plans, piece)
                .map(found -> new PrintSheets(now, plans)
                        .print(new PrintSheets.Request(
                                found.plan(), new WhichSheets.Reels(List.of(found.reel())), null)))
                .flatMap(result -> result instanceof Result.Printed printed
                        ? new SheetPapers(now, printed.sheets(), loft.figures(now))
                                .tag(piece, TagPage.Label.USUAL, Paper.A4)
                        : Optional.empty());
    }

    /** The labels of reels on the rack: of one of them, or of all where none is named. */
    private void labels(Context request, String reel) {
        ShopNow now = loft.now().orElse(null);
        List<Reel> reels = now == null
                ? List.of()
                : now.shop().reels().stream()
                        .filter(each -> reel.isEmpty() || each.id().equals(reel))
                        .toList();
        if (now == null || reels.isEmpty()) {
            site.tell(request, now == null ? Loft.BROKEN : "There is no such reel on the rack.");
            return;
        }
        withItsOwnStyle(request)
                .result(new ReelTags(now.shop().catalogue(), loft.figures(now))
                        .html(reels, TagPage.Label.USUAL, Paper.A4));
    }

    /** Answers with a page that carries its style with it. */
    static Context withItsOwnStyle(Context request) {
        return request.header("Content-Security-Policy", OWN_STYLE).contentType("text/html; charset=utf-8");
    }

    private void print(Context request, Function<SheetPapers, byte[]> paper, String type) {
        Result result = result(which(request), null).orElse(null);
        ShopNow now = loft.now().orElse(null);
        if (now != null && result instanceof Result.Printed printed) {
            withItsOwnStyle(request)
                    .contentType(type)
                    .result(paper.apply(new SheetPapers(now, printed.sheets(), loft.figures(now))));
        } else {
            site.tell(request, why(result));
        }
    }

    /** Those of a day that the address names; else those of today. */
    private static WhichSheets which(Context request) {
        String day = Sent.asked(request, "day");
        try {
            return day.isEmpty() ? new WhichSheets.Today() : new WhichSheets.OfDay(LocalDate.parse(day));
        } catch (DateTimeParseException none) {
            return new WhichSheets.OfDay(LocalDate.MIN);
        }
    }

    private Optional<Result> result(WhichSheets which, @Nullable String issuer) {
        return loft.now().flatMap(now -> {
            Plans plans = now.at().plans(new Findings());
            Optional<Kept> kept = plans.inForce().flatMap(plans::needed);
            return kept.map(plan -> new PrintSheets(now, plans).print(new PrintSheets.Request(plan, which, issuer)));
        });
    }

    private void issue(Context request) {
        String who = people.who(request);
        Result result =
                who.isEmpty() ? null : result(new WhichSheets.Today(), who).orElse(null);
        if (result instanceof Result.Printed) {
            Back.to(request, "/bench");
        } else {
            site.tell(request, who.isEmpty() ? People.FIRST : why(result));
        }
    }

    private static String why(@Nullable Result result) {
        if (result instanceof Result.NotLetThrough refused) {
            return String.join("; ", refused.why().reasons());
        }
        if (result instanceof Result.NotIssued not) {
            return String.join("; ", not.reasons()) + ". Nothing was issued.";
        }
        return result == null ? "No plan is in force." : "Nothing of the plan is cut on that day.";
    }
}
