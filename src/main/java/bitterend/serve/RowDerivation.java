package bitterend.serve;

import bitterend.report.Figures;
import bitterend.report.LengthsPage;
import bitterend.report.page.Document;
import bitterend.report.sheet.PagePart;
import bitterend.report.sheet.PieceDrawing;
import bitterend.work.ShopNow;

/** How the cut length of a row of the order book comes about, as the command for lengths says it. */
record RowDerivation(ShopNow now, Figures figures) {
    /** Of what is made of the row at a place; empty while nothing can be. */
    String of(String place) {
        LengthsPage page = new LengthsPage(figures);
        PieceDrawing drawing = new PieceDrawing(figures);
        Document derived = now.shop().orders().stream()
                .filter(line -> line.assembly().origin().place().equals(place))
                .map(line -> page.derivation(
                        line.assembly(),
                        line.demanded(),
                        now.shop().catalogue(),
                        drawing.of(line.assembly(), line.demanded())))
                .reduce(Document::then)
                .orElse(Document.EMPTY);
        return derived.equals(Document.EMPTY) ? "" : PagePart.blocks(derived);
    }
}
