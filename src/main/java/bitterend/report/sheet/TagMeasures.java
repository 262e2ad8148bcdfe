package bitterend.report.sheet;

import bitterend.demand.Assembly;
import bitterend.demand.Piece;
import bitterend.demand.SpliceCard;
import bitterend.measure.Written;
import bitterend.report.Figures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a tag says of the length of its piece: how it is measured, what passes, what a tape finds on the floor. */
final class TagMeasures {
    private final Figures figures;
    private final Map<String, CardWork> work = new HashMap<>();

    TagMeasures(Figures figures, List<CardWork> lines) {
        this.figures = figures;
        lines.forEach(line -> line.demanded().pieces().forEach(piece -> work.put(piece.id(), line)));
    }

    /** As lines, most important first; none for a piece whose order is not at hand. */
    List<String> of(Piece piece) {
        CardWork line = work.get(piece.id());
        if (line == null) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        String made = line.measured().getOrDefault(piece.id(), "");
        if (!made.isEmpty()) {
            lines.add(made);
        }
        line.demanded().findCard().ifPresent(card -> lines.addAll(of(card)));
        String extra = extra(line, piece);
        if (!extra.isEmpty()) {
            lines.add(extra);
        }
        return lines;
    }

    private List<String> of(SpliceCard card) {
        List<String> lines =
                new ArrayList<>(List.of(figures.sentence(card.ordered().measured())));
        if (card.ordered().isJudged()) {
            lines.add("passes " + figures.length(card.ordered().least()) + " to "
                    + figures.length(card.ordered().most()));
        }
        if (!card.floor().length().equals(card.ordered().length())) {
            lines.add(figures.length(card.floor().length()) + " "
                    + figures.sentence(card.floor().measured()));
        }
        return lines;
    }

    /** Only the first piece of a line carries the sample. */
    private String extra(CardWork line, Piece piece) {
        Assembly.Extras extras = line.assembly().make().extras();
        boolean first = piece.id().equals(line.demanded().pieces().get(0).id());
        return ExtraRope.brief(first ? extras.sample() : Written.NOTHING, extras.spare(), figures);
    }
}
