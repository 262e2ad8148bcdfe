package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.demand.EndSpec;
import bitterend.demand.Measuring;
import bitterend.demand.Piece;
import bitterend.demand.calibration.MeasuredAssembly;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.measure.Written;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code measured.csv}: finished assemblies with the length they were cut to and the length they came out at. */
public final class MeasuredCsv {
    public static final String NAME = "measured.csv";
    /** The column of the minutes that a piece took, which older files do not have. */
    static final String MINUTES = "minutes";

    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("rope", "end a", "cut", "finished"),
            List.of("id", "end b", "measured", "extension", "bedded in", "splicer", MINUTES, "day", "note"));

    private final Shop shop;
    private final Findings findings;
    private final Findings ofRows = new Findings();

    private MeasuredCsv(Shop shop, Findings findings) {
        this.shop = shop;
        this.findings = findings;
    }

    /**
     * What the file says.
     *
     * @param assemblies the rows that could be read
     * @param findings what is wrong with the others, which are left out; errors of the file as a whole
     */
    public record Reading(List<MeasuredAssembly> assemblies, List<Finding> findings) {
        public Reading {
            assemblies = List.copyOf(assemblies);
            findings = List.copyOf(findings);
        }
    }

    /** Reads the file of a shop folder; it must be there. */
    public static Reading read(Path folder, Shop shop) {
        Findings findings = new Findings();
        List<MeasuredAssembly> assemblies = InputFile.requireTable(folder, NAME, findings)
                .map(file -> file.in(shop.settings().locale()))
                .map(new MeasuredCsv(shop, findings)::rows)
                .orElse(List.of());
        return new Reading(assemblies, findings.sorted());
    }

    private List<MeasuredAssembly> rows(InputFile file) {
        List<MeasuredAssembly> assemblies = new ArrayList<>();
        Map<String, String> ids = new HashMap<>();
        for (Fields row : new CsvTable(file, COLUMNS, findings, ofRows).rows()) {
            String id = row.optional("id", Readings::id, row.place());
            row.once("id", id, ids);
            MeasuredAssembly measured = measured(row, id);
            if (row.sound()) {
                assemblies.add(measured);
            }
        }
        ofRows.sorted().forEach(finding -> findings.add(finding.isError() ? finding.leavingOut() : finding));
        return assemblies;
    }

    private MeasuredAssembly measured(Fields row, String id) {
        String rope = row.require("rope", Readings::id, "?");
        if (row.text("rope").isPresent() && shop.catalogue().findRope(rope).isEmpty()) {
            row.error("rope", "a rope of " + RopesJson.NAME);
        }
        Measuring points = OrdersCsv.measuring(row);
        Assembly.Make make = new Assembly.Make(
                row.require("finished", Readings::wantedAsWritten, Written.worked(new Length(1))),
                points,
                row.require("end a", EndText::parse, EndSpec.of("plain")),
                row.optional("end b", EndText::parse, EndSpec.of("plain")),
                Assembly.Extras.NONE);
        row.optional("day", Readings::dayOfTable, LocalDate.MIN);
        Assembly assembly = new Assembly(
                new Assembly.Origin(row.file(), row.place()),
                new Assembly.Ordered(new Piece.Source(id.replace('/', '.'), "1", LocalDate.MAX, 5), "", "", 1, 1),
                List.of(rope),
                make,
                Assembly.Terms.USUAL);
        return new MeasuredAssembly(
                id,
                assembly,
                row.require("cut", Readings::wantedAsWritten, Written.worked(new Length(1))),
                row.optional("bedded in", Readings::yesOrNo, false),
                row.optional("splicer", Readings::text, ""),
                row.optional(MINUTES, StockText::minutes, 0));
    }
}
