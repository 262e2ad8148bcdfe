package bitterend.exchange;

import bitterend.buying.Offer;
import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Codes;
import bitterend.catalogue.RopeKinds;
import bitterend.catalogue.SpliceBook;
import bitterend.demand.Assembly;
import bitterend.demand.DemandModel;
import bitterend.demand.Piece;
import bitterend.exchange.form.InputFile;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.history.History;
import bitterend.measure.Units;
import bitterend.packing.Pin;
import bitterend.stock.Reel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads a shop folder and tells every problem of every file in one run, those of the assemblies included. */
public final class ShopFolder {
    private final Path folder;
    private final Findings findings = new Findings();
    private final List<LeftOutRows> leftOutRows = new ArrayList<>();
    private final Map<String, String> digests = new TreeMap<>();
    private final @Nullable LedgerReels ledger;
    /** What the program knows of ends is read beside the shop's own files. */
    private final CompletableFuture<SpliceBook> builtIn = CompletableFuture.supplyAsync(SplicesJson::builtIn);

    private ShopFolder(Path folder, @Nullable LedgerReels ledger) {
        this.folder = folder;
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

    private ShopReading read() {
        Settings settings = require(ShopJson.NAME)
                .flatMap(file -> ShopJson.read(file, findings))
                .orElse(ShopJson.placeholder());
        RopeKinds kinds =
                find(RopeKindsJson.NAME).map(new RopeKindsJson(findings)::read).orElseGet(RopeKindsJson::builtIn);
        Ropes ropes = ropes(settings, kinds);
        Catalogue catalogue = new Catalogue(ropes.sound(), splices(settings.bench(), kinds));
        Products products = products();
        Findings ofOrders = new Findings();
        List<Assembly> assemblies = requireTable(OrdersCsv.NAME)
                .map(new OrdersCsv(ropes, products, findings, ofOrders)::read)
                .orElse(List.of());
        List<OrderLine> wanted = demanded(assemblies, ropes, new DemandModel(catalogue), settings, ofOrders);
        new MatchedSets(assemblies).check(ofOrders);
        new SharedHardware(assemblies).check(ofOrders);
        tellOfNoCode(assemblies, settings);
        LeftOutLines leftOut = new LeftOutLines(ofOrders);
        List<OrderLine> orders = leftOut.staying(wanted);
        findings.addAll(leftOut.findings());
        List<Finding> rowsLeftOut = rowsLeftOut(leftOut.findings());
        List<Reel> reels = reels(ropes);
        List<Pin> pins = pins(wanted, orders, reels);
        Supplies supplies = supplies(settings, ropes, products, catalogue);
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
                        digests,
                        Stream.concat(rowsLeftOut.stream(), leftOut.findings().stream())
                                .filter(Finding::leavesOut)
                                .toList());
        return new ShopReading(shop, findings.sorted());
    }

    private Ropes ropes(Settings settings, RopeKinds kinds) {
        Findings ofFile = new Findings();
        Optional<InputFile> file = require(RopesJson.NAME);
        Ropes ropes = file.map(new RopesJson(settings, kinds, ofFile)::read).orElse(Ropes.UNREAD);
        file.ifPresent(read -> {
            LeftOutRows left = RopesJson.leftOut(read, ofFile);
            findings.addAll(left.others());
            if (ropes.sound().isEmpty()) {
                findings.addAll(left.errors());
            } else {
                leftOutRows.add(left);
            }
        });
        return ropes;
    }

    /** Tells of ropes and hardware that cannot be used: as left out where an order is left out for want of one. */
    private List<Finding> rowsLeftOut(List<Finding> ofOrders) {
        Set<String> wanted = new HashSet<>();
        ofOrders.stream().filter(Finding::leavesOut).map(Finding::found).forEach(wanted::add);
        List<Finding> told = leftOutRows.stream()
                .flatMap(rows -> rows.told(wanted::contains).stream())
                .toList();
        findings.addAll(told);
        return told;
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
                ? requireTable(ReelsCsv.NAME)
                        .map(new ReelsCsv(ropes, findings)::read)
                        .orElse(List.of())
                : ledger.checked(ropes, findings);
    }

    private SpliceBook splices(Settings.Bench bench, RopeKinds kinds) {
        return splices(kinds).on(bench.tools()).with(codes(bench.code(), kinds));
    }

    /** The built-in codes and the shop's own, of which the stated one holds. */
    private Codes codes(String stated, RopeKinds kinds) {
        Codes codes =
                find(CodesJson.NAME).map(new CodesJson(findings, kinds)::read).orElseGet(CodesJson::builtIn);
        if (!stated.isEmpty() && !codes.knows(stated)) {
            findings.add(Finding.error(
                    ShopJson.NAME, "", "code", stated, "the id of a code: " + String.join(", ", codes.ids())));
        }
        return codes.stating(stated);
    }

    /** The built-in book of splices with the shop's changes, its thimbles and fittings; both files may be missing. */
    private SpliceBook splices(RopeKinds kinds) {
        SpliceBook book = digested(InputFile.find(folder, SplicesJson.NAME, findings))
                .map(file -> new SplicesJson(findings, kinds).read(file, builtIn.join()))
                .orElseGet(builtIn::join);
        return digested(InputFile.find(folder, ThimblesJson.NAME, findings))
                .map(file -> withHardware(file, book))
                .orElse(book);
    }

    private SpliceBook withHardware(InputFile file, SpliceBook book) {
        Findings ofFile = new Findings();
        SpliceBook whole = new ThimblesJson(ofFile).read(file, book);
        LeftOutRows left = ThimblesJson.leftOut(file, ofFile);
        findings.addAll(left.others());
        leftOutRows.add(left);
        return whole;
    }

    private Products products() {
        return digested(InputFile.find(folder, ProductsJson.NAME, findings))
                .map(new ProductsJson(findings)::read)
                .orElse(Products.NONE);
    }

    /** What the shop knows about buying; each of the files may be missing. */
    private Supplies supplies(Settings settings, Ropes ropes, Products products, Catalogue catalogue) {
        List<Offer> offers = findTable(OffersCsv.NAME)
                .filter(file -> ShopJson.isKnown(settings.money()))
                .map(new OffersCsv(ropes, settings.money(), findings)::read)
                .orElse(List.of())
                .stream()
                .filter(offer -> !ropes.isBroken(offer.rope()))
                .toList();
        Map<String, List<String>> came = ledger == null ? Map.of() : ledger.came();
        return new Supplies(
                offers,
                findTable(OnOrderCsv.NAME)
                        .map(new OnOrderCsv(ropes, offers, came, findings)::read)
                        .orElse(List.of())
                        .stream()
                        .filter(coming -> !ropes.isBroken(coming.rope()))
                        .toList(),
                findTable(HistoryCsv.NAME)
                        .map(
                                new HistoryCsv(ropes, products, new DemandModel(catalogue), settings.units(), findings)
                                        ::read)
                        .orElse(History.NONE),
                find(ValuesJson.NAME)
                        .map(file -> ValuesJson.read(file, ropes, findings))
                        .orElse(ShopValues.NONE));
    }

    private Optional<InputFile> find(String name) {
        return digested(InputFile.find(folder, name, findings));
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
        Set<String> pieceIds = new HashSet<>();
        wanted.forEach(line -> line.demanded().pieces().stream().map(Piece::id).forEach(pieceIds::add));
        Set<String> reelIds = new HashSet<>();
        reels.forEach(reel -> reelIds.add(reel.id()));
        if (ledger != null) {
            reelIds.addAll(ledger.gone());
        }
        PinsCsv pins = new PinsCsv(
                piece -> !allRead || pieceIds.contains(piece), reel -> !allRead || reelIds.contains(reel), findings);
        return findTable(PinsCsv.NAME).map(pins::read).orElse(List.of()).stream()
                .filter(pin -> allRead || isPlanned(pin, orders))
                .toList();
    }

    private static boolean isPlanned(Pin pin, List<OrderLine> orders) {
        return orders.stream()
                .flatMap(line -> line.demanded().pieces().stream())
                .anyMatch(piece -> piece.id().equals(pin.piece()));
    }

    private Optional<InputFile> require(String name) {
        return digested(InputFile.require(folder, name, findings));
    }

    private Optional<InputFile> findTable(String name) {
        return digested(InputFile.findTable(folder, name, findings));
    }

    private Optional<InputFile> requireTable(String name) {
        return digested(InputFile.requireTable(folder, name, findings));
    }

    private Optional<InputFile> digested(Optional<InputFile> file) {
        file.ifPresent(read -> digests.put(read.name(), read.digest()));
        return file;
    }
}
