package bitterend.exchange;

import bitterend.catalogue.BenchTools;
import bitterend.catalogue.DiameterLimit;
import bitterend.catalogue.Fid;
import bitterend.catalogue.FidTable;
import bitterend.catalogue.FidTable.Rule;
import bitterend.catalogue.FidTable.ShortSection;
import bitterend.catalogue.FidTable.Tool;
import bitterend.catalogue.Provenance;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Reads how long the fids of a shop are; its own tools come before the built-in ones, its own rule in place of theirs. */
final class FidsRow {
    private static final Reading<BenchTools> BENCH = Readings.word(BenchTools.values(), BenchTools::word);

    private final JsonObject row;
    private final Provenance usual;

    FidsRow(JsonObject row, Provenance usual) {
        this.row = row;
        this.usual = BookRow.provenance(row.fields(), usual);
    }

    FidTable on(FidTable base) {
        List<Tool> tools = row.objects("tools").stream().map(this::tool).toList();
        return new FidTable(
                Stream.concat(tools.stream(), base.tools().stream()).toList(), rule(base.rule()), base.bench());
    }

    private Rule rule(Rule base) {
        Map<BenchTools, Ratio> diameters = new EnumMap<>(BenchTools.class);
        diameters.putAll(base.diameters());
        addDiameters("diameters", BenchTools.METRIC, diameters);
        addDiameters("inchDiameters", BenchTools.INCH, diameters);
        boolean stated = row.has("diameters") || row.has("inchDiameters") || row.has("shortSections");
        return new Rule(
                diameters,
                row.has("shortSections") ? shortSections() : base.shortSections(),
                stated ? usual : base.provenance());
    }

    private void addDiameters(String member, BenchTools bench, Map<BenchTools, Ratio> diameters) {
        if (row.has(member)) {
            diameters.put(bench, row.fields().require(member, BookRow::positive, Ratio.ZERO));
        }
    }

    private Tool tool(JsonObject tool) {
        Fields fields = tool.fields();
        FineLength shortSection = fields.require("short", FidsRow::length, FineLength.ZERO);
        FineLength longSection = fields.require("long", FidsRow::length, FineLength.ZERO);
        return new Tool(
                fields.require("rope", DiameterText::parse, Diameter.NONE),
                tool.has("bench") ? fields.require("bench", BENCH, BenchTools.INCH) : null,
                new Fid(shortSection.plus(longSection), shortSection, BookRow.provenance(fields, usual)));
    }

    private List<ShortSection> shortSections() {
        List<ShortSection> steps = new ArrayList<>();
        for (JsonObject step : row.objects("shortSections")) {
            steps.add(new ShortSection(
                    BookRow.limit(step), step.fields().require("part", BookRow::positive, Ratio.ZERO)));
        }
        if (steps.isEmpty() || !steps.get(steps.size() - 1).limit().equals(DiameterLimit.ANY)) {
            row.fields().error("shortSections", "steps by diameter, the last without a limit");
            steps.add(new ShortSection(DiameterLimit.ANY, Ratio.ZERO));
        }
        return steps;
    }

    private static Parsed<FineLength> length(String text) {
        return LengthText.parseFine(text)
                .then(length -> length.isPositive() ? Parsed.of(length) : Parsed.refused("a length above 0"));
    }
}
