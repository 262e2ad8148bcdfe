package bitterend.serve;

import bitterend.day.OrderStatus;
import bitterend.day.PieceStatus.State;
import bitterend.demand.Piece;
import bitterend.demand.SpliceCard.How;
import bitterend.exchange.StockText;
import bitterend.measure.Written;
import bitterend.report.EndsInWords;
import bitterend.report.Figures;
import bitterend.report.sheet.CardSheet;
import bitterend.work.ShopNow;
import bitterend.work.orders.AskOrders;
import bitterend.work.orders.MeasureFinished;
import bitterend.work.orders.MeasureFinished.Boxes;
import bitterend.work.orders.MeasureFinished.By;
import bitterend.work.orders.MeasureFinished.Cut;
import bitterend.work.orders.MeasureFinished.Result;
import bitterend.work.orders.MeasureFinished.Said;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Pieces that are cut and wait for their ends, the earliest due day first, and the boxes of their cards. */
final class SplicingScreen implements Screen {
    private static final String NO_LENGTH =
            "That length could not be read: write it such as 23.4 m or 77 ft 6 in. Nothing was booked.";
    private static final String NO_MINUTES =
            "Those minutes could not be read: write whole minutes from 1 to 9999, such as 75. Nothing was booked.";

    private static final String NO_DAY = "no day";

    private final Loft loft;
    private final Site site;
    private final People people;

    SplicingScreen(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/splicing", request -> loft.whenRead(request, site, now -> show(request, now)));
        config.routes.post("/splicing", this::book);
    }

    private void show(Context request, ShopNow now) {
        site.show(
                request,
                "Splicing",
                "serve/splicing.jte",
                Map.of("lines", waiting(now), "unit", loft.unit(), "booking", Keys.random()));
    }

    private List<LineToSplice> waiting(ShopNow now) {
        Figures figures = loft.figures(now);
        Map<String, Piece> ordered = new HashMap<>();
        now.shop().pieces().forEach(piece -> ordered.put(piece.id(), piece));
        Map<String, List<Piece>> lines = new LinkedHashMap<>();
        new AskOrders(now, Loft.day(now))
                .status().orders().stream()
                        .map(OrderStatus::pieces)
                        .flatMap(List::stream)
                        .filter(piece -> piece.is(State.CUT) && ordered.containsKey(piece.piece()))
                        .forEach(piece -> lines.computeIfAbsent(piece.line(), any -> new ArrayList<>())
                                .add(ordered.get(piece.piece())));
        Map<String, CardSheet> cards = new WaitingCards(loft, now)
                .of(lines.values().stream().flatMap(List::stream).map(Piece::id).toList());
        return lines.entrySet().stream()
                .map(line -> line(line.getKey(), line.getValue(), cards, figures))
                .sorted(Comparator.comparing(LineToSplice::due))
                .toList();
    }

    private static LineToSplice line(String line, List<Piece> pieces, Map<String, CardSheet> cards, Figures figures) {
        return new LineToSplice(
                line,
                pieces.stream()
                        .map(piece -> due(piece))
                        .min(Comparator.naturalOrder())
                        .orElse(NO_DAY),
                pieces.stream()
                        .flatMap(piece -> Optional.ofNullable(cards.get(piece.id())).stream())
                        .distinct()
                        .toList(),
                pieces.stream().map(piece -> row(piece, figures)).toList());
    }

    private static String due(Piece piece) {
        LocalDate due = piece.source().due();
        return due.equals(LocalDate.MAX) ? NO_DAY : due.toString();
    }

    private static ToSplice row(Piece piece, Figures figures) {
        return new ToSplice(
                piece.id(),
                due(piece),
                figures.written(EndsInWords.of(piece.ends())),
                figures.written(piece.finished()));
    }

    private void book(Context request) {
        String who = people.who(request);
        ShopNow now = loft.now().orElse(null);
        if (who.isEmpty() || now == null) {
            request.status(BenchBooking.WAITS);
            site.tell(request, who.isEmpty() ? People.FIRST : Loft.BROKEN);
            return;
        }
        Optional<Written> cameOut = loft.length(StockText::asTyped)
                .apply(Sent.text(request, "length"))
                .value();
        String typed = Sent.text(request, "minutes");
        Optional<Integer> minutes =
                typed.isEmpty() ? Optional.of(0) : StockText.minutes(typed).value();
        if (cameOut.isEmpty() || minutes.isEmpty()) {
            refuse(request, cameOut.isEmpty() ? NO_LENGTH : NO_MINUTES);
            return;
        }
        Boxes boxes = new Boxes(
                Sent.text(request, "piece"),
                new Cut(Written.NOTHING, ""),
                cameOut.get(),
                how(Sent.text(request, "how")),
                new By(who, minutes.get()),
                LocalDate.now(now.at().clock().withZone(ZoneId.systemDefault())),
                said(Sent.text(request, "said"), who));
        String booking = Sent.id(request);
        Result result = MeasureFinished.book(
                now, boxes, act -> Sent.by(act, who, booking, request), Sent.text(request, "note"));
        if (result instanceof Result.Booked) {
            Back.to(request, "/splicing");
        } else {
            refuse(request, why(result, loft.figures(now)));
        }
    }

    private void refuse(Context request, String why) {
        request.status(409);
        site.tell(request, why);
    }

    private static How how(String word) {
        for (How how : How.values()) {
            if (how.word().equals(word)) {
                return how;
            }
        }
        return How.SLACK;
    }

    private static Said said(String word, String who) {
        return switch (word) {
            case "passed" -> Said.PASSED;
            case "accepted" -> Said.accepted(who);
            case "respliced" -> Said.RESPLICED;
            case "spoiled" -> Said.SPOILED;
            default -> Said.NOTHING;
        };
    }

    private static String why(Result result, Figures figures) {
        if (result instanceof Result.Outside outside) {
            return "It is outside of what passes: "
                    + figures.written(outside.boxes().cameOut()) + " where "
                    + figures.length(outside.wanted().length().roundedUp())
                    + " is wanted. Say what becomes of it. Nothing was booked.";
        }
        if (result instanceof Result.NotWritten not) {
            return "The row was not added: " + not.findings().get(0).toString().replaceFirst("^error: ", "")
                    + ". Nothing was booked.";
        }
        return result instanceof Result.Refused refused ? Wrong.onPage(refused.why()) + ". Nothing was booked." : "";
    }
}
