package bitterend.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** The sheets of a plan that lie in the shop folder as they were written, for a page that leads to them. */
final class WrittenSheets {
    private final Path shop;
    private final int plan;
    private final LocalDate today;

    /**
     * @param plan the number of the plan
     * @param today the day of the plan
     */
    WrittenSheets(Path shop, int plan, LocalDate today) {
        this.shop = shop;
        this.plan = plan;
        this.today = today;
    }

    /** The address of the sheets of a day in a page at {@code page}; empty where none of this very plan were written. */
    String from(Path page, LocalDate day) {
        Path sheet = shop.resolve("sheet" + (day.equals(today) ? "" : SheetChoice.suffix(day)) + ".html");
        if (!isOfThePlan(sheet)) {
            return "";
        }
        Path beside = page.toAbsolutePath().normalize().getParent();
        Path there = sheet.toAbsolutePath().normalize();
        Path way = beside == null ? there : beside.relativize(there);
        StringBuilder address = new StringBuilder();
        way.forEach(part -> address.append(address.isEmpty() ? "" : "/").append(escaped(part)));
        return address.toString();
    }

    private boolean isOfThePlan(Path sheet) {
        if (!Files.isRegularFile(sheet)) {
            return false;
        }
        try {
            return Pattern.compile("\\bplan " + plan + "\\b")
                    .matcher(Files.readString(sheet))
                    .find();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** A name as part of an address. */
    private static String escaped(Path name) {
        try {
            return new URI(null, null, "/" + name, null).getRawPath().substring(1);
        } catch (URISyntaxException fault) {
            throw new IllegalArgumentException(name.toString(), fault);
        }
    }
}
