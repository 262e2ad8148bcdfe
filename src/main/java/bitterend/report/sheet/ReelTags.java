package bitterend.report.sheet;

import bitterend.catalogue.Catalogue;
import bitterend.report.Figures;
import bitterend.report.ReelLabel;
import bitterend.stock.Reel;
import java.util.List;

/** The labels of reels and coils as they are on the rack, to print and stick on. */
public final class ReelTags {
    private final Catalogue catalogue;
    private final Figures figures;

    public ReelTags(Catalogue catalogue, Figures figures) {
        this.catalogue = catalogue;
        this.figures = figures;
    }

    /** As many labels on the paper as go, with equal margins. */
    public String html(List<Reel> reels, TagPage.Label label, Paper paper) {
        return TagPage.html(reels.stream().map(this::tag).toList(), label, paper);
    }

    private Tag tag(Reel reel) {
        String length = figures.written(reel.contents().written());
        String rope =
                catalogue.findRope(reel.rope()).map(each -> ", " + each.name()).orElse("");
        String measure = length + ", " + reel.contents().known().word();
        List<String> lines =
                ReelLabel.withFlaws(reel, rope, figures).stream().skip(1).toList();
        return new Tag(
                reel.id(),
                "reel",
                "",
                measure,
                lines,
                QrCode.of(new TagCode(TagCode.Kind.REEL, reel.id()).text() + "; rope " + reel.rope() + "; lot "
                        + reel.lot().substring(0, Math.min(reel.lot().length(), Tags.LONGEST_LOT))));
    }
}
