package bitterend.exchange;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.DiameterLimit;
import bitterend.catalogue.Grade;
import bitterend.catalogue.PartCount;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Term;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What rows of {@code splices.json} have in common: allowances, counts, where a number comes from. */
final class BookRow {
    private static final Reading<Grade> GRADE = Readings.word(Grade.values(), Grade::letter);

    private BookRow() {}

    /** Source, grade and whether it is verified; what is left out is as usual. */
    static Provenance provenance(Fields fields, Provenance usual) {
        return new Provenance(
                fields.optional("source", Readings::text, usual.source()),
                fields.optional("grade", GRADE, usual.grade()),
                fields.optional("verified", Readings::yesOrNo, usual.verified()));
    }

    /** A text of a list, told where it means nothing. */
    static <T> Optional<T> read(JsonObject row, String field, String text, Reading<T> reading) {
        Parsed<T> parsed = reading.read(text);
        parsed.refusal().ifPresent(expected -> row.fields().error(field, expected));
        return parsed.value();
    }

    /**
     * An allowance: a sum in {@code is}, a table in {@code byDiameter}, or both added up; and sums in {@code atLeast} that
     * count where they are longer.
     */
    static Allowance allowance(JsonObject row, Provenance usual) {
        return sum(row, usual);
    }

    /** The same for an object that has other members too. */
    static Allowance sum(JsonObject row, Provenance usual) {
        Fields fields = row.fields();
        List<Term> terms = new ArrayList<>(fields.optional("is", AllowanceText::parse, List.of()));
        List<Term.Step> steps = new ArrayList<>();
        for (JsonObject step : row.objects("byDiameter")) {
            List<Term> inner = step.fields().require("is", AllowanceText::parse, List.of());
            if (inner.size() > 1) {
                step.fields().error("is", "one summand");
            }
            inner.stream()
                    .limit(1)
                    .map(term -> new Term.Step(limit(step), term))
                    .forEach(steps::add);
        }
        if (row.has("byDiameter")) {
            terms.add(new Term.ByDiameter(steps));
        }
        if (!row.has("is") && !row.has("byDiameter")) {
            fields.error("is", "an allowance such as 1 fid, or a table byDiameter");
        }
        List<List<Term>> floors = new ArrayList<>();
        row.texts("atLeast").forEach(text -> read(row, "atLeast", text, AllowanceText::parse)
                .ifPresent(floors::add));
        return new Allowance(terms, terms.isEmpty() ? List.of() : floors, provenance(fields, usual));
    }

    /** {@code upTo} includes the diameter, {@code below} does not; without either a row is for every rope. */
    static DiameterLimit limit(JsonObject step) {
        Fields fields = step.fields();
        if (step.has("upTo") && step.has("below")) {
            fields.error("below", "either upTo or below");
        }
        if (step.has("upTo")) {
            return new DiameterLimit(fields.require("upTo", DiameterText::parse, Diameter.NONE), true);
        }
        return new DiameterLimit(fields.optional("below", DiameterText::parse, Diameter.NONE), false);
    }

    /** How many: {@code count}, or {@code perInch} and {@code plus}, or a table {@code byDiameter}; the larger counts. */
    static PartCount count(JsonObject row) {
        Fields fields = row.fields();
        Reading<Integer> whole = Readings.whole(0, 1000);
        List<PartCount.Step> steps = new ArrayList<>();
        for (JsonObject step : row.objects("byDiameter")) {
            steps.add(new PartCount.Step(limit(step), step.fields().require("count", whole, 0)));
        }
        int fixed = fields.optional("count", whole, 0);
        return new PartCount(
                fields.optional("perInch", BookRow::positive, Ratio.ZERO),
                fixed + fields.optional("plus", whole, 0),
                steps);
    }

    /** A number that is not negative. */
    static Parsed<Ratio> positive(String text) {
        return RatioText.parse(text)
                .then(ratio -> ratio.isNegative() ? Parsed.refused("a number that is not negative") : Parsed.of(ratio));
    }

    /** A number above zero. */
    static Parsed<Ratio> aboveZero(String text) {
        return positive(text).then(ratio -> ratio.isPositive() ? Parsed.of(ratio) : Parsed.refused("a number above 0"));
    }

    /** A part of at most a tenth. */
    static Parsed<Ratio> smallPart(String text) {
        return positive(text)
                .then(part -> part.compareTo(new Ratio(1, 10)) > 0
                        ? Parsed.refused("a part from 0 to 10 %")
                        : Parsed.of(part));
    }

    /** A factor within a tenth of one. */
    static Parsed<Ratio> nearOne(String text) {
        return positive(text)
                .then(factor -> factor.compareTo(new Ratio(9, 10)) < 0 || factor.compareTo(new Ratio(11, 10)) > 0
                        ? Parsed.refused("a factor from 0.9 to 1.1")
                        : Parsed.of(factor));
    }
}
