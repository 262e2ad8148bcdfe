package bitterend.work.imports;

import bitterend.exchange.Shop;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.OwnSheet;
import bitterend.exchange.mapping.Column;
import bitterend.exchange.mapping.Known;
import bitterend.exchange.mapping.MappingsJson;
import bitterend.exchange.mapping.SheetPreview;
import bitterend.exchange.mapping.SheetReading;
import bitterend.exchange.mapping.Table;
import bitterend.exchange.mapping.Understood;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.Nearest;
import bitterend.work.DraftShop;
import bitterend.work.ShopAccess;
import bitterend.work.ShopFound;
import bitterend.work.ShopNow;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A loft's own sheets brought into the files of its shop. It is looked at by the same code that takes it over; looking writes
 * nothing. What was answered about a sheet is kept by its headings, so that the next of its kind asks nothing.
 */
public final class ImportSheets {
    /** Bytes of a sheet that is sent by a browser. */
    public static final long MOST_SENT = OwnSheet.MOST_BYTES;

    private final ShopAccess shop;
    private final ShopTables tables;

    public ImportSheets(ShopAccess shop) {
        this.shop = shop;
        this.tables = new ShopTables(shop.folder());
    }

    /**
     * What is asked for.
     *
     * @param file the sheet or workbook
     * @param answers to questions, by their ids or by the headings that they are about
     */
    public record Request(Path file, Map<String, String> answers) {
        public Request {
            answers = new TreeMap<>(answers);
        }
    }

    /** What a file would do. */
    public sealed interface Result {
        /**
         * It was looked at.
         *
         * @param sheets each of its sheets that goes into a file of the shop, in the order in which they are taken over
         * @param skipped names of sheets without a row of headings
         * @param texts the files of the shop as they would be, by name
         * @param based the files as they were looked at, by name; none for one that is not there
         */
        record Looked(
                List<SheetPreview> sheets, List<String> skipped, Map<String, String> texts, Map<String, String> based)
                implements Result {
            public Looked {
                sheets = List.copyOf(sheets);
                skipped = List.copyOf(skipped);
                texts = new TreeMap<>(texts);
                based = new TreeMap<>(based);
            }

            /** Whether nothing is asked, so that it can be taken over. */
            public boolean isAnswered() {
                return sheets.stream().allMatch(SheetPreview::isAnswered);
            }

            /** Whether a row cannot be taken over. */
            public boolean hasWrong() {
                return sheets.stream()
                        .flatMap(sheet -> sheet.findings().stream())
                        .anyMatch(Finding::isError);
            }

            /** What tells it from another look: the files as they were, and as they would be. */
            public String mark() {
                return InputFile.sha256((texts + "\n" + based).getBytes(StandardCharsets.UTF_8));
            }

            /** Whether no file of the shop would be other than it is. */
            public boolean changesNothing() {
                return texts.equals(based);
            }
        }

        /** The file, or the shop, cannot be read. */
        record Unreadable(List<Finding> findings) implements Result {
            public Unreadable {
                findings = List.copyOf(findings);
            }
        }
    }

    /** Looks at a file; nothing is written. */
    public Result look(Request request) {
        Findings findings = new Findings();
        List<OwnSheet> sheets = OwnSheet.read(request.file(), findings);
        MappingsJson mappings = MappingsJson.find(shop.folder(), findings);
        ShopFound found = shop.readFiles();
        if (found.found().isEmpty()) {
            findings.addAll(found.findings().stream().filter(Finding::isError).toList());
        }
        if (sheets.isEmpty() || findings.hasErrors()) {
            return new Result.Unreadable(findings.sorted());
        }
        Looking looking =
                new Looking(request, mappings, found.found().map(ShopNow::shop).orElseThrow());
        for (OwnSheet sheet : looking.inOrder(sheets)) {
            looking.look(sheet);
        }
        return looking.result(findings.sorted());
    }

    /** A file while it is looked at: each sheet on top of those before it. */
    private final class Looking {
        private final Request request;
        private final Map<String, String> texts = new TreeMap<>();
        private final Map<String, String> based = new TreeMap<>();
        private final List<SheetPreview> previews = new ArrayList<>();
        private final List<String> skipped = new ArrayList<>();
        private final Set<String> known = new HashSet<>();
        private MappingsJson mappings;
        private Shop now;

        Looking(Request request, MappingsJson mappings, Shop now) {
            this.request = request;
            this.mappings = mappings;
            this.now = now;
        }

        /** Ropes before the reels of them, and reels before orders; of several sheets those without headings are passed over. */
        List<OwnSheet> inOrder(List<OwnSheet> sheets) {
            List<OwnSheet> able = new ArrayList<>();
            Set<OwnSheet> rest = new HashSet<>(sheets);
            for (Optional<Table> table : List.of(
                    Optional.of(Table.ROPES),
                    Optional.of(Table.REELS),
                    Optional.of(Table.ORDERS),
                    Optional.<Table>empty())) {
                for (OwnSheet sheet : sheets) {
                    List<String> headings = SheetReading.headings(sheet);
                    boolean alone = sheets.size() == 1;
                    if (rest.contains(sheet)
                            && (alone || !headings.isEmpty())
                            && SheetReading.table(sheet, answers(headings)).equals(table)) {
                        able.add(sheet);
                        rest.remove(sheet);
                    }
                }
            }
            sheets.stream().filter(rest::contains).map(OwnSheet::name).forEach(skipped::add);
            return able;
        }

        private Map<String, String> answers(List<String> headings) {
            Map<String, String> answers = new TreeMap<>(mappings.answers(headings));
            answers.putAll(request.answers());
            return answers;
        }

        void look(OwnSheet sheet) {
            List<String> headings = SheetReading.headings(sheet);
            now = read(texts).found().map(ShopNow::shop).orElse(now);
            Known shopKnows = new Known(
                    now.catalogue(),
                    now.settings().units(),
                    now.settings().money(),
                    now.settings().locale(),
                    tables.headers(),
                    Map.of(Table.ORDERS, now.orderedLengths(), Table.REELS, now.reelLengths()));
            Understood understood = SheetReading.read(sheet, shopKnows, mappings.answers(headings), request.answers());
            boolean before = mappings.knows(headings);
            SheetPreview preview = understood
                    .about()
                    .map(table -> preview(understood, table, before))
                    .orElseGet(() -> new SheetPreview(understood, "", before, List.of(), understood.wrong()));
            previews.add(preview);
            understood.questions().forEach(question -> known.add(question.id()));
            known.addAll(understood.settled().keySet());
            Map<String, String> old = mappings.answers(headings);
            Map<String, String> settled = new TreeMap<>(old);
            settled.putAll(understood.settled());
            if (understood.about().isPresent() && !settled.equals(old)) {
                mappings = mappings.with(headings, settled);
                texts.put(MappingsJson.NAME, mappings.text());
            }
        }

        private SheetPreview preview(Understood understood, Table table, boolean before) {
            List<Finding> findings = new ArrayList<>(understood.wrong());
            String file = tables.file(table);
            if (table == Table.REELS && shop.keepsLedger()) {
                findings.add(Finding.error(
                        understood.file(),
                        understood.head(),
                        "",
                        "reels",
                        "what is no reel: the rack of this shop is in its ledger, where stock receive books reels"));
                return new SheetPreview(understood, file, before, List.of(), findings);
            }
            List<Understood.Row> rows = ShopTables.once(understood, table, findings);
            Optional<TableDraft> draft = draft(table, rows);
            if (draft.isEmpty()) {
                findings.add(tables.refusal(file));
                return new SheetPreview(understood, file, before, List.of(), findings);
            }
            List<Finding> said = said(file, draft.get(), understood);
            Set<String> refused = new HashSet<>();
            said.stream().filter(Finding::isError).map(Finding::place).forEach(refused::add);
            List<Understood.Row> sound =
                    rows.stream().filter(row -> !refused.contains(row.place())).toList();
            TableDraft kept =
                    refused.isEmpty() ? draft.get() : draft(table, sound).orElseThrow();
            findings.addAll(said);
            List<Finding> broken = NewErrors.of(read(texts), read(with(file, kept)));
            if (!broken.isEmpty()) {
                findings.addAll(broken);
                return new SheetPreview(understood, file, before, List.of(), findings);
            }
            findings.addAll(CountedLines.told(understood, table, kept.changes()));
            based.putIfAbsent(file, text(file));
            texts.put(file, kept.text());
            return new SheetPreview(understood, file, before, kept.changes(), findings);
        }

        private Optional<TableDraft> draft(Table table, List<Understood.Row> rows) {
            String file = tables.file(table);
            return tables.put(
                    table, texts.getOrDefault(file, text(file)), rows, rope -> UsedRopes.has(shop, now, rope));
        }

        /** What the shop would say of the rows of the sheet, where they are in it. */
        private List<Finding> said(String file, TableDraft draft, Understood understood) {
            List<Finding> said = new ArrayList<>();
            for (Finding finding : read(with(file, draft)).findings()) {
                String place = draft.places().get(finding.place().replaceAll("(/ropes/[0-9]+)/.*", "$1"));
                if (finding.file().equals(file) && place != null) {
                    said.add(new Finding(
                            finding.severity(),
                            understood.file(),
                            place,
                            finding.field(),
                            finding.what(),
                            finding.wanted(),
                            finding.typed()));
                }
            }
            return said;
        }

        private Map<String, String> with(String file, TableDraft draft) {
            Map<String, String> would = new TreeMap<>(texts);
            would.put(file, draft.text());
            return would;
        }

        private ShopFound read(Map<String, String> would) {
            return would.isEmpty() ? shop.readFiles() : new DraftShop(shop).with(would);
        }

        private String text(String file) {
            return ShopTexts.read(shop.folder(), file);
        }

        Result result(List<Finding> ofFile) {
            List<Finding> idle = request.answers().entrySet().stream()
                    .filter(answer ->
                            !known.contains(answer.getKey()) && !known.contains(Column.question(answer.getKey())))
                    .map(answer -> Finding.error(
                            request.file().toString(),
                            "",
                            "answer",
                            answer.getKey() + "=" + answer.getValue(),
                            "a heading of the file, or the name of a question" + Nearest.hint(answer.getKey(), known)))
                    .toList();
            if (previews.isEmpty() || !idle.isEmpty()) {
                return new Result.Unreadable(idle.isEmpty() ? ofFile : idle);
            }
            if (texts.containsKey(MappingsJson.NAME)) {
                based.put(MappingsJson.NAME, text(MappingsJson.NAME));
            }
            previews.set(0, previews.get(0).with(ofFile));
            return new Result.Looked(previews, skipped, texts, based);
        }
    }
}
