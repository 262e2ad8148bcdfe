package bitterend.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Anything in place of a part of a workbook, or of the whole of it. The first byte chooses the part; one that is past the last part
 * takes the others as the file itself.
 */
public final class WorkbookFuzz {
    private static final TriedShop SHOP = TriedShop.of("gannet-loft");
    private static final String BOOK = "requests/Q-2604.xlsx";
    private static final Map<String, byte[]> PARTS = parts();
    private static final List<String> NAMES = new ArrayList<>(PARTS.keySet());
    private static final List<String> COMMANDS =
            List.of("quote SHOP SHOP/requests/Q-2604.xlsx --time 50ms", "import SHOP SHOP/requests/Q-2604.xlsx");

    private WorkbookFuzz() {}

    private static Map<String, byte[]> parts() {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipFile zip = new ZipFile("demo-data/gannet-loft/" + BOOK)) {
            for (ZipEntry entry : zip.stream().toList()) {
                parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
            return parts;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static byte[] book(String name, byte[] part) {
        ByteArrayOutputStream book = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(book)) {
            for (Map.Entry<String, byte[]> each : PARTS.entrySet()) {
                zip.putNextEntry(new ZipEntry(each.getKey()));
                zip.write(each.getKey().equals(name) ? part : each.getValue());
                zip.closeEntry();
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return book.toByteArray();
    }

    /** What each part has at first, behind the byte that chooses it, and last the whole. */
    public static List<byte[]> seeds() {
        List<byte[]> seeds = new ArrayList<>();
        PARTS.values().forEach(part -> seeds.add(FilesFuzz.chosen(seeds.size(), part)));
        seeds.add(FilesFuzz.chosen(seeds.size(), SHOP.first(BOOK)));
        return seeds;
    }

    /** The shop is there before the first try is timed. */
    public static void fuzzerInitialize() {}

    /** One try. */
    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length > 0) {
            int part = Byte.toUnsignedInt(data[0]) % (NAMES.size() + 1);
            byte[] content = Arrays.copyOfRange(data, 1, data.length);
            SHOP.with(BOOK, part < NAMES.size() ? book(NAMES.get(part), content) : content, COMMANDS);
        }
    }
}
