package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.demand.calibration.Effect;
import bitterend.demand.calibration.EndMinutes;
import bitterend.demand.calibration.MeasuredAssembly;
import bitterend.demand.calibration.TakeUpFit;
import bitterend.measure.Sentence;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.stream.Collectors;

/** What measured assemblies teach about take-up, and what that changes in the open orders. */
public final class CalibrationPage {
    private final Figures figures;

    public CalibrationPage(Figures figures) {
        this.figures = figures;
    }

    /** The page; without fits it says so. */
    public Document of(List<TakeUpFit> fits, List<Effect> effects, List<EndMinutes> minutes, Catalogue catalogue) {
        Writing page = new Writing();
        page.title("Take-up as measured");
        if (fits.isEmpty()) {
            page.paragraph("Nothing could be fitted: at least three assemblies of a termination and rope are needed.");
            minutes(page, minutes);
            return page.document();
        }
        fits(page, fits, catalogue);
        fits.forEach(fit -> {
            outliers(page, fit);
            fit.remarks().forEach(remark -> remark(page, fit, remark));
        });
        page.gap();
        page.paragraph(
                "All for one end. The finished length aims at the mean; the cut adds a margin up to what the next end stays"
                        + " below 95 times in 100, and less for each of two ends alike, since both together seldom take"
                        + " up most. Of two ends alike that were measured only the sum is seen: each is given half.");
        effects(page, effects);
        minutes(page, minutes);
        return page.document();
    }

    private static void minutes(Writing page, List<EndMinutes> minutes) {
        if (minutes.isEmpty()) {
            return;
        }
        page.heading("Minutes of an end");
        TableRows table = new TableRows(
                Column.words("termination"),
                Column.words("rope"),
                Column.figure("ends"),
                Column.figure("mean\nbooked"),
                Column.figure("set"));
        minutes.forEach(each -> table.row(
                each.termination(),
                each.rope(),
                Integer.toString(each.ends()),
                Integer.toString(each.mean()),
                each.set() > 0 ? Integer.toString(each.set()) : "none"));
        page.table(table);
        page.gap();
        page.paragraph(
                "Minutes are booked for a whole assembly: each end has a share by the minutes that are set for it in"
                        + " splices.json, or half where none are set for either. They are set there; nothing changes them here.");
    }

    private void fits(Writing page, List<TakeUpFit> fits, Catalogue catalogue) {
        TableRows table = new TableRows(
                Column.words("termination"),
                Column.words("rope"),
                Column.figure("assemblies"),
                Column.figure("mean\n" + figures.fineUnit()),
                Column.figure("up to\n" + figures.fineUnit()),
                Column.figure("of two\n" + figures.fineUnit()),
                Column.words("till now"));
        for (TakeUpFit fit : fits) {
            table.row(
                    fit.termination(),
                    fit.rope(),
                    Integer.toString(fit.count()),
                    figures.fine(fit.mean().roundedUp().fine()),
                    figures.fine(fit.upper().fine()),
                    figures.fine(fit.upperOfTwo().fine()),
                    tillNow(fit, catalogue));
        }
        page.table(table);
    }

    /** The allowance that was planned with, as its source states it. */
    private static String tillNow(TakeUpFit fit, Catalogue catalogue) {
        return catalogue.splices().terminations().stream()
                .filter(row -> row.id().equals(fit.termination()))
                .findFirst()
                .map(row -> row.on(catalogue.rope(fit.rope())))
                .map(CalibrationPage::takeUp)
                .orElse("");
    }

    private static String takeUp(Termination row) {
        String text = row.allowance(What.TAKE_UP).text();
        return (text.isEmpty() ? "none" : text)
                + (row.allowance(What.TAKE_UP).provenance().verified() ? "" : ", unverified");
    }

    private static void outliers(Writing page, TakeUpFit fit) {
        if (!fit.outliers().isEmpty()) {
            page.gap();
            page.paragraph("Left out of " + fit.termination() + " on " + fit.rope() + ", far from the rest: "
                    + fit.outliers().stream().map(CalibrationPage::named).collect(Collectors.joining(", "))
                    + ". Look at them: a slip of the tape, or a splice to redo?");
        }
    }

    private void remark(Writing page, TakeUpFit fit, Sentence remark) {
        page.gap();
        page.paragraph("Of " + fit.termination() + " on " + fit.rope() + ": " + figures.sentence(remark) + ".");
    }

    private static String named(MeasuredAssembly measured) {
        String splicer = measured.splicer().isEmpty() ? "" : ", by " + measured.splicer();
        return measured.id() + " (" + measured.assembly().origin().place() + splicer + ")";
    }

    private void effects(Writing page, List<Effect> effects) {
        page.heading("In the open orders");
        if (effects.isEmpty()) {
            page.paragraph("Nothing changes.");
            return;
        }
        TableRows table = new TableRows(
                Column.words("rope"), Column.figure("pieces"), Column.figure("more rope"), Column.figure("cost"));
        for (Effect effect : effects) {
            table.row(
                    effect.rope(),
                    Integer.toString(effect.pieces()),
                    figures.length(effect.more()),
                    figures.money(effect.cost()));
        }
        page.table(table);
    }
}
