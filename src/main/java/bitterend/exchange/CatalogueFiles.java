package bitterend.exchange;

import bitterend.catalogue.Codes;
import bitterend.catalogue.RopeKinds;
import bitterend.catalogue.SpliceBook;
import bitterend.exchange.form.InputFile;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;

/** Reads the catalogue of a shop, and what its rows that cannot be used keep from being read. */
final class CatalogueFiles {
    private final FolderFiles files;
    private final Findings findings;
    private final List<LeftOutRows> leftOutRows = new ArrayList<>();
    /** What the program knows of ends is read beside the shop's own files. */
    private final CompletableFuture<SpliceBook> builtIn = CompletableFuture.supplyAsync(SplicesJson::builtIn);

    CatalogueFiles(FolderFiles files, Findings findings) {
        this.files = files;
        this.findings = findings;
    }

    /** The ropes; what is wrong with the file as a whole is told. */
    Ropes ropes(Settings settings, RopeKinds kinds) {
        Findings ofFile = new Findings();
        Optional<InputFile> file = files.requireEither(RopesJson.NAME, RopesJson.TABLE_NAME);
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
    List<Finding> rowsLeftOut(List<Finding> ofOrders) {
        Set<String> wanted = new HashSet<>();
        ofOrders.stream().filter(Finding::leavesOut).map(Finding::found).forEach(wanted::add);
        List<Finding> told = leftOutRows.stream()
                .flatMap(rows -> rows.told(wanted::contains).stream())
                .toList();
        findings.addAll(told);
        return told;
    }

    /** What the shop knows of ends, thimbles, fittings, hardware and codes. */
    SpliceBook splices(Settings.Bench bench, RopeKinds kinds) {
        return splices(kinds).on(bench.tools()).with(codes(bench.code(), kinds));
    }

    /** The built-in codes and the shop's own, of which the stated one holds. */
    private Codes codes(String stated, RopeKinds kinds) {
        Codes codes = files.find(CodesJson.NAME)
                .map(new CodesJson(findings, kinds)::read)
                .orElseGet(CodesJson::builtIn);
        if (!stated.isEmpty() && !codes.knows(stated)) {
            findings.add(Finding.error(
                    ShopJson.NAME, "", "code", stated, "the id of a code: " + String.join(", ", codes.ids())));
        }
        return codes.stating(stated);
    }

    /** The built-in book of splices with the shop's changes, its thimbles and fittings; both files may be missing. */
    private SpliceBook splices(RopeKinds kinds) {
        SpliceBook book = files.find(SplicesJson.NAME)
                .map(file -> new SplicesJson(findings, kinds).read(file, builtIn.join()))
                .orElseGet(builtIn::join);
        Set<String> ids = new HashSet<>();
        for (String name : ThimblesJson.NAMES) {
            Optional<InputFile> file = name.equals(ThimblesJson.NAME) ? files.find(name) : files.findTable(name);
            if (file.isPresent()) {
                book = withHardware(file.get(), book, ids);
            }
        }
        return book;
    }

    private SpliceBook withHardware(InputFile file, SpliceBook book, Set<String> ids) {
        Findings ofFile = new Findings();
        SpliceBook whole = new ThimblesJson(ofFile, ids).read(file, book);
        LeftOutRows left = ThimblesJson.leftOut(file, ofFile);
        findings.addAll(left.others());
        leftOutRows.add(left);
        return whole;
    }

    /** The standard products; none where there is no file of them. */
    Products products() {
        return files.either(ProductsJson.NAME, ProductsJson.TABLE_NAME)
                .map(new ProductsJson(findings)::read)
                .orElse(Products.NONE);
    }
}
