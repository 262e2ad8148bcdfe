package bitterend.front;

import bitterend.finding.CommandWord;
import bitterend.measure.Sentence;
import bitterend.report.Figures;
import bitterend.report.PlanMark;
import bitterend.report.PlanPart;
import bitterend.report.PlanView;
import bitterend.report.sheet.CardPage;
import bitterend.report.sheet.CardWork;
import bitterend.report.sheet.CutList;
import bitterend.report.sheet.Paper;
import bitterend.report.sheet.Sheet;
import bitterend.report.sheet.SheetMaker;
import bitterend.report.sheet.SheetPage;
import bitterend.report.sheet.SheetPdf;
import bitterend.report.sheet.TagPage;
import bitterend.work.Remark;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.plans.PrintSheets.Sheets;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Sheets that are ready, on paper: the cut sheet, splice cards and tags, as HTML, PDF and CSV. */
public final class SheetPapers {
    private final PlanView view;
    private final Figures figures;
    private final List<CardWork> work;
    private final String made;
    /** What is said on tags: a piece is not another one because it is cut by now. */
    private final PlanMark marked;

    public SheetPapers(ShopNow now, Sheets sheets, Figures figures) {
        this.figures = figures;
        Verdict.Passed passed = sheets.plan();
        view = PlanViews.of(now.shop(), passed.problem(), passed.plan(), figures.units())
                .marked(mark(now, sheets, figures, remark -> true))
                .only(new PlanPart(
                        sheets.isWhole(),
                        sheets.chosen().reels(),
                        sheets.chosen().day()));
        marked = mark(now, sheets, figures, remark -> !remark.isPosted());
        Map<String, String> measured = sheets.measured().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, last -> last.getValue().words(figures::written)));
        work = sheets.lines().stream()
                .map(line -> new CardWork(line.assembly(), line.demanded(), measured))
                .toList();
        made = MadeWords.of(passed.kept().document(), sheets.ledger());
    }

    private static PlanMark mark(ShopNow now, Sheets sheets, Figures figures, Predicate<Remark> said) {
        Stream<PlanMark.Change> ofOrders = OrdersNow.words(now, figures).first(sheets.orders()).stream()
                .map(told -> new PlanMark.Change("", Sentence.of(told)));
        String shop = CommandWord.of(now.at().named());
        Stream<PlanMark.Change> since = Remark.toldOnce(sheets.remarks(), shop).stream()
                .filter(said)
                .map(remark -> new PlanMark.Change(remark.reel(), remark.sentence()));
        return new PlanMark(
                sheets.plan().number(),
                !sheets.isOut(),
                Stream.concat(ofOrders, since).toList(),
                shop,
                sheets.out());
    }

    /** One row for every mark. */
    public byte[] csv() {
        return bytes(CutList.csv(view));
    }

    /** The cut sheet as HTML. */
    public byte[] sheet() {
        return bytes(new SheetPage().html(made()));
    }

    /** The cut sheet as PDF. */
    public byte[] sheetPdf(Paper paper) {
        return new SheetPdf(new SheetPage()).pdf(made(), paper);
    }

    private Sheet made() {
        return new SheetMaker(view, figures, work).sheet(made);
    }

    /** A splice card for every order line, as HTML. */
    public byte[] cards() {
        return bytes(cardPage().html());
    }

    /** The splice cards as PDF. */
    public byte[] cardsPdf(Paper paper) {
        return cardPage().pdf(paper);
    }

    private CardPage cardPage() {
        return new CardPage(view, figures, work, made);
    }

    /** Tags for pieces and kept coils. */
    public byte[] tags(TagPage.Label label, Paper paper) {
        return bytes(tagPage().html(label, paper));
    }

    /** The tag of one piece; nothing where the plan does not cut it. */
    public Optional<byte[]> tag(String piece, TagPage.Label label, Paper paper) {
        return tagPage().html(piece, label, paper).map(SheetPapers::bytes);
    }

    private TagPage tagPage() {
        return new TagPage(view.marked(marked), figures, work);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
