package bitterend.serve;

import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.report.Figures;
import bitterend.report.PlanView;
import bitterend.report.sheet.CardPage;
import bitterend.report.sheet.CardSheet;
import bitterend.report.sheet.CardWork;
import bitterend.work.ShopNow;
import bitterend.work.plans.LinesAsPlanned;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The splice cards of pieces that a plan cuts, one for each order line, the same as are printed. */
record CutCards(List<CardSheet> cards) {
    /** What is given for a piece that has none: its order has changed since it was planned, or it has no ends to make. */
    static final int NONE = -1;

    CutCards {
        cards = List.copyOf(cards);
    }

    /** Those of the pieces that come off a reel, by the orders as they are now. */
    static CutCards of(ShopNow now, PlanView view, Figures figures, String reel) {
        Set<String> pieces = view.draws().stream()
                .filter(draw -> draw.reel().equals(reel))
                .map(ReelDraw::cuts)
                .flatMap(List::stream)
                .map(Cut::piece)
                .collect(Collectors.toSet());
        return of(now, view, figures, pieces);
    }

    /** Those of the lines of these pieces. */
    static CutCards of(ShopNow now, PlanView view, Figures figures, Set<String> pieces) {
        List<CardWork> work = LinesAsPlanned.of(now.shop().orders(), view.problem()).stream()
                .filter(line -> line.demanded().pieces().stream().anyMatch(piece -> pieces.contains(piece.id())))
                .map(line -> new CardWork(line.assembly(), line.demanded()))
                .toList();
        return new CutCards(new CardPage(view, figures, work, "").cards());
    }

    /** Which of them is that of a piece. */
    int of(String piece) {
        for (int i = 0; i < cards.size(); i++) {
            if (cards.get(i).cuts().stream().anyMatch(cut -> cut.piece().equals(piece))) {
                return i;
            }
        }
        return NONE;
    }
}
