package bitterend.exchange.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds its way through the parts of a workbook: which sheets there are, and what their cells refer to. */
final class Book {
    private static final String MAIN = "xl/workbook.xml";

    private final String file;
    private final Parts parts;

    Book(String file, Parts parts) {
        this.file = file;
        this.parts = parts;
    }

    /** What a part refers to: the last word of its kind, and the name of the part. */
    private record Relation(String kind, String part) {}

    /** A tab of the workbook. */
    private record Tab(String name, boolean hidden, String relation) {}

    List<Sheet> sheets() throws IOException {
        String main = main();
        Map<String, Relation> relations = relations(main);
        List<Tab> tabs = new ArrayList<>();
        boolean from1904 = false;
        try (Xml xml = xml(main).orElseThrow(this::noWorkbook)) {
            while (xml.next()) {
                if (xml.begins("workbookPr")) {
                    from1904 = xml.is("date1904");
                } else if (xml.begins("sheet")) {
                    String state = xml.attribute("state");
                    tabs.add(new Tab(xml.attribute("name"), state.contains("idden"), xml.relation()));
                }
            }
        }
        if (tabs.size() > Limits.MOST_SHEETS) {
            throw new Refused(tabs.size() + " sheets", "a workbook of at most " + Limits.MOST_SHEETS + " sheets");
        }
        return read(tabs, relations, new Numbers(from1904));
    }

    private List<Sheet> read(List<Tab> tabs, Map<String, Relation> relations, Numbers numbers) throws IOException {
        List<String> texts = List.of();
        Styles styles = Styles.PLAIN;
        for (Relation relation : relations.values()) {
            Optional<Xml> part =
                    relation.kind().equals("sharedStrings") || relation.kind().equals("styles")
                            ? xml(relation.part())
                            : Optional.empty();
            if (part.isPresent()) {
                try (Xml xml = part.get()) {
                    if (relation.kind().equals("styles")) {
                        styles = Styles.read(xml);
                    } else {
                        texts = Texts.read(xml);
                    }
                }
            }
        }
        List<Sheet> sheets = new ArrayList<>();
        for (Tab tab : tabs) {
            Relation relation = relations.getOrDefault(tab.relation(), new Relation("", ""));
            if (relation.kind().equals("worksheet")) {
                sheets.add(sheet(tab, relation.part(), new SheetPart(file, tab.name(), texts, styles, numbers)));
            }
        }
        if (sheets.isEmpty()) {
            throw new Refused("no sheet with cells", "a workbook with a sheet");
        }
        return sheets;
    }

    private Sheet sheet(Tab tab, String part, SheetPart reader) throws IOException {
        Optional<Xml> found = xml(part);
        if (found.isEmpty()) {
            throw new Refused(
                    "sheet " + tab.name() + " without its part " + part, "a whole workbook; save it again as .xlsx");
        }
        try (Xml xml = found.get()) {
            return reader.read(xml, tab.hidden());
        }
    }

    private String main() throws IOException {
        return relations("").values().stream()
                .filter(relation -> relation.kind().equals("officeDocument"))
                .map(Relation::part)
                .findFirst()
                .orElse(MAIN);
    }

    private Map<String, Relation> relations(String of) throws IOException {
        int name = of.lastIndexOf('/') + 1;
        String folder = of.substring(0, name);
        Map<String, Relation> relations = new HashMap<>();
        Optional<Xml> part = xml(folder + "_rels/" + of.substring(name) + ".rels");
        if (part.isPresent()) {
            try (Xml xml = part.get()) {
                while (xml.next()) {
                    if (xml.begins("Relationship")) {
                        String target = xml.attribute("Target");
                        String kind = xml.attribute("Type");
                        relations.put(
                                xml.attribute("Id"),
                                new Relation(
                                        kind.substring(kind.lastIndexOf('/') + 1),
                                        target.startsWith("/") ? target.substring(1) : folder + target));
                    }
                }
            }
        }
        return relations;
    }

    private Optional<Xml> xml(String part) throws IOException {
        Optional<InputStream> in = parts.find(part);
        return in.isPresent() ? Optional.of(new Xml(in.get(), part)) : Optional.empty();
    }

    private Refused noWorkbook() {
        if (parts.has("content.xml") && parts.has("mimetype")) {
            return new Refused("a document of the kind .ods or .odt", "the sheet saved as .xlsx or .csv");
        }
        if (parts.has("xl/workbook.bin")) {
            return new Refused("a workbook of the kind .xlsb", "the workbook saved as .xlsx");
        }
        return new Refused("a packed file that is no workbook", "a workbook saved as .xlsx");
    }
}
