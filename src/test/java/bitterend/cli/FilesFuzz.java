package bitterend.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * Anything in place of a file of the shop: told with its place, or borne; never a fault of the program. The first byte chooses the
 * file, the others are what is in it.
 */
public final class FilesFuzz {
    private static final TriedShop SHOP = TriedShop.of("gannet-loft");
    private static final List<String> READ = List.of("check SHOP");

    /** A file with the commands that read it. */
    record Read(String file, List<String> commands) {}

    private static final List<Read> FILES = List.of(
            new Read("shop.json", READ),
            new Read("ropes.json", READ),
            new Read("orders.csv", List.of("check SHOP", "lengths SHOP", "orders SHOP")),
            new Read("reels.csv", READ),
            new Read("pins.csv", READ),
            new Read("splices.json", READ),
            new Read("thimbles.json", READ),
            new Read("assemblies.json", READ),
            new Read("constructions.json", READ),
            new Read("hardware.csv", READ),
            new Read("codes.json", READ),
            new Read("history.csv", List.of("check SHOP", "value SHOP --from-history --scenarios 2 --weeks 1")),
            new Read("offers.csv", List.of("check SHOP", "reorder SHOP")),
            new Read("suppliers.csv", List.of("check SHOP", "reorder SHOP")),
            new Read("on-order.csv", List.of("check SHOP", "reorder SHOP")),
            new Read("measured.csv", List.of("check SHOP", "calibrate SHOP")),
            new Read("quotes/Q-2600.1.json", List.of("quote list SHOP", "quote show SHOP Q-2600")),
            new Read("requests/Q-2603.csv", List.of("quote SHOP SHOP/requests/Q-2603.csv --time 50ms")),
            new Read("requests/Q-2602.json", List.of("quote SHOP SHOP/requests/Q-2602.json --time 50ms")));

    private FilesFuzz() {}

    /** What each file has at first, behind the byte that chooses it. */
    public static List<byte[]> seeds() {
        return seeds(FILES, read -> SHOP.first(read.file()));
    }

    static List<byte[]> seeds(List<Read> files, Function<Read, byte[]> first) {
        List<byte[]> seeds = new ArrayList<>();
        for (Read read : files) {
            seeds.add(chosen(seeds.size(), first.apply(read)));
        }
        return seeds;
    }

    /** Content behind the byte that chooses what it is of. */
    static byte[] chosen(int number, byte[] content) {
        byte[] seed = new byte[content.length + 1];
        seed[0] = (byte) number;
        System.arraycopy(content, 0, seed, 1, content.length);
        return seed;
    }

    /** The shop is there before the first try is timed. */
    public static void fuzzerInitialize() {}

    /** One try. */
    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length > 0) {
            Read read = FILES.get(Byte.toUnsignedInt(data[0]) % FILES.size());
            SHOP.with(read.file(), Arrays.copyOfRange(data, 1, data.length), read.commands());
        }
    }
}
