package bitterend.exchange;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.RopeKinds;
import bitterend.demand.Assembly;
import bitterend.demand.DemandModel;
import bitterend.demand.Piece;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.history.History;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.measure.Parsed;
import bitterend.measure.Units;
import bitterend.packing.Pin;
import bitterend.quoting.Recipient;
import bitterend.stock.LoftAddress;
import bitterend.stock.Reel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads a shop folder and tells every problem of every file in one run, those of the assemblies included. */
public final class ShopFolder {
    private final Findings findings = new Findings();
    private final FolderFiles files;
    private final CatalogueFiles catalogueFiles;
    private final @Nullable LedgerReels ledger;

    private ShopFolder(Path folder, @Nullable LedgerReels ledger) {
        this.files = new FolderFiles(folder, findings);
        this.catalogueFiles = new CatalogueFiles(files, findings);
        this.ledger = ledger;
    }

    /** What is in the folder. */
    public static ShopReading read(Path folder) {
        if (!Files.isDirectory(folder)) {
            return new ShopReading(
                    null, List.of(Finding.error(folder.toString(), "", "", "", "a shop folder with " + ShopJson.NAME)));
        }
        return new ShopFolder(folder, null).read();
    }

    /** What is in the folder, the reels being those of its ledger instead of {@code reels.csv}. */
    public static ShopReading read(Path folder, LedgerReels ledger) {
        return new ShopFolder(folder, ledger).read();
    }

    /** The settings alone; nothing when they cannot be read. */
    public static Optional<Settings> settings(Path folder) {
        Findings findings = new Findings();
        Optional<Settings> settings =
                InputFile.find(folder, ShopJson.NAME, findings).flatMap(file -> ShopJson.read(file, findings));
        return findings.hasErrors() ? Optional.empty() : settings;
    }

    /** Where {@code shop.json} says that the ledger is, looked at alone; refused where that cannot be read. */
    public static Parsed<LoftAddress> loft(Path folder) {
        Findings findings = new Findings();
        Optional<LoftAddress> loft = InputFile.find(folder, ShopJson.NAME, findings)
                .map(file -> JsonDocument.readPart(file, ShopJson.FORMAT, findings, ShopJson::loft))
                .orElse(Optional.of(LoftAddress.NONE));
        return loft.filter(read -> !findings.hasErrors())
                .map(Parsed::of)
                .orElse(Parsed.refused("a " + ShopJson.NAME + " that can be read"));
    }

    private ShopReading read() {
        Settings settings = files.require(ShopJson.NAME)
                .flatMap(file -> ShopJson.read(file, findings))
                .orElse(ShopJson.placeholder());
        files.in(settings.locale());
        RopeKinds kinds = files.find(RopeKindsJson.NAME)
                .map(new RopeKindsJson(findings)::read)
                .orElseGet(RopeKindsJson::builtIn);
        Ropes ropes = catalogueFiles.ropes(settings, kinds);
        Catalogue catalogue = new Catalogue(ropes.sound(), catalogueFiles.splices(settings.bench(), kinds));
        Products products = catalogueFiles.products();
        Findings ofOrders = new Findings();
        List<Assembly> assemblies = files.requireTable(OrdersCsv.NAME)
                .map(new OrdersCsv(ropes, products, findings, ofOrders)::read)
                .orElse(List.of());
        List<OrderLine> wanted = demanded(assemblies, ropes, new DemandModel(catalogue), settings, ofOrders);
        new MatchedSets(assemblies).check(ofOrders);
        new SharedHardware(assemblies).check(ofOrders);
        Unlikely.tell(
                assemblies,
                settings.day().equals(LocalDate.MIN) ? LocalDate.now(ZoneId.systemDefault()) : settings.day(),
                findings);
        tellOfNoCode(assemblies, settings);
        LeftOutLines leftOut = new LeftOutLines(ofOrders);
        List<OrderLine> orders = leftOut.staying(wanted);
        findings.addAll(leftOut.findings());
        List<Finding> rowsLeftOut = catalogueFiles.rowsLeftOut(leftOut.findings());
        List<Reel> reels = reels(ropes);
        List<Pin> pins = pins(wanted, orders, reels);
        Supplies supplies = supplies(settings, ropes, products, catalogue);
        Map<String, Recipient> customers = files.findTable(CustomersCsv.NAME)
                .map(new CustomersCsv(settings.quote().letter(), findings)::read)
                .orElse(Map.of());
        Shop shop = findings.hasErrors()
                ? null
                : new Shop(
                        settings,
                        catalogue,
                        orders,
                        reels.stream()
                                .filter(reel -> !ropes.isBroken(reel.rope()))
                                .toList(),
                        pins,
                        supplies,
                        customers,
                        files.digests(),
                        Stream.concat(rowsLeftOut.stream(), leftOut.findings().stream())
                                .filter(Finding::leavesOut)
                                .toList());
        return new ShopReading(shop, findings.sorted());
    }

    /** One line for the day. */
    private void tellOfNoCode(List<Assembly> assemblies, Settings settings) {
        boolean lifting = assemblies.stream()
                .map(Assembly::terms)
                .anyMatch(terms -> terms.use().isLifting() && terms.code().isEmpty());
        if (lifting && settings.bench().code().isEmpty()) {
            findings.add(noCode());
        }
    }

    /** That slings are made and no code is stated: the line of the day. */
    public static Finding noCode() {
        return Finding.warning(
                ShopJson.NAME,
                "",
                "code",
                "",
                "the code that holds for slings and lifting, such as us or en: where none is stated, the larger figure of"
                        + " all holds");
    }

    private List<Reel> reels(Ropes ropes) {
        return ledger == null
                ? files.requireTable(ReelsCsv.NAME)
                        .map(new ReelsCsv(ropes, findings)::read)
                        .orElse(List.of())
                : ledger.checked(ropes, findings);
    }

    /** What the shop knows about buying; each of the files may be missing. */
    private Supplies supplies(Settings settings, Ropes ropes, Products products, Catalogue catalogue) {
        List<Offer> offers = files
                .findTable(OffersCsv.NAME)
                .filter(file -> ShopJson.isKnown(settings.money()))
                .map(new OffersCsv(ropes, settings.money(), findings)::read)
                .orElse(List.of())
                .stream()
                .filter(offer -> !ropes.isBroken(offer.rope()))
                .toList();
        List<Supplier> suppliers = files.findTable(SuppliersCsv.NAME)
                .filter(file -> ShopJson.isKnown(settings.money()))
                .map(new SuppliersCsv(settings.money(), findings)::read)
                .orElse(List.of());
        Map<String, List<String>> came = ledger == null ? Map.of() : ledger.came();
        return new Supplies(
                offers,
                suppliers,
                files
                        .findTable(OnOrderCsv.NAME)
                        .map(new OnOrderCsv(ropes, offers, came, settings.money(), findings)::read)
                        .orElse(List.of())
                        .stream()
                        .filter(coming -> !ropes.isBroken(coming.rope()))
                        .toList(),
                files.findTable(HistoryCsv.NAME)
                        .map(
                                new HistoryCsv(ropes, products, new DemandModel(catalogue), settings.units(), findings)
                                        ::read)
                        .orElse(History.NONE),
                files.find(ValuesJson.NAME)
                        .map(file -> ValuesJson.read(file, ropes, findings))
                        .orElse(ShopValues.NONE),
                ledger == null ? List.of() : ledger.deliveries());
    }

    /** Lines whose ropes could all be read, with their pieces. No line depends on another: cores share them. */
    private static List<OrderLine> demanded(
            List<Assembly> assemblies, Ropes ropes, DemandModel model, Settings settings, Findings findings) {
        Units units = settings.units();
        List<OrderLine> orders = assemblies.parallelStream()
                .filter(assembly -> ropes.readable())
                .map(assembly -> TimedLine.of(
                        assembly, model.pieces(assembly), settings.bench().hours()))
                .toList();
        Set<String> told = new HashSet<>();
        for (OrderLine line : orders) {
            line.demanded().findings().forEach(finding -> findings.add(finding.in(units)));
            line.demanded().remarks().stream()
                    .map(remark -> remark.in(units))
                    .filter(remark -> told.add(remark.found() + remark.expected()))
                    .forEach(findings::add);
        }
        return orders;
    }

    /** While other files have errors, a pin may speak of what could not be read. */
    private List<Pin> pins(List<OrderLine> wanted, List<OrderLine> orders, List<Reel> reels) {
        boolean allRead = !findings.hasErrors() && findings.sorted().stream().noneMatch(Finding::leavesOut);
        Set<String> pieceIds = idsOf(wanted);
        Set<String> reelIds = new HashSet<>();
        reels.forEach(reel -> reelIds.add(reel.id()));
        if (ledger != null) {
            reelIds.addAll(ledger.gone());
        }
        PinsCsv pins = new PinsCsv(
                piece -> !allRead || pieceIds.contains(piece), reel -> !allRead || reelIds.contains(reel), findings);
        List<Pin> read = files.findTable(PinsCsv.NAME).map(pins::read).orElse(List.of());
        if (allRead) {
            return read;
        }
        Set<String> planned = idsOf(orders);
        return read.stream().filter(pin -> planned.contains(pin.piece())).toList();
    }

    private static Set<String> idsOf(List<OrderLine> lines) {
        Set<String> ids = new HashSet<>();
        lines.forEach(line -> line.demanded().pieces().stream().map(Piece::id).forEach(ids::add));
        return ids;
    }
}
