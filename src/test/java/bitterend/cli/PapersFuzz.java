package bitterend.cli;

import java.util.Arrays;
import java.util.List;

/**
 * Anything in place of a paper that comes back to a shop in the middle of its day: the plan that is posted, a list of counts, of
 * what came in, of what is to be ordered, another program's orders, a quote on file. The first byte chooses the paper, the others
 * are what is in it.
 */
public final class PapersFuzz {
    private static final TriedShop SHOP = TriedShop.inItsDay();

    private static final List<FilesFuzz.Read> PAPERS = List.of(
            new FilesFuzz.Read("plans/1.json", List.of("show SHOP", "sheet SHOP --csv", "stock post SHOP --all")),
            new FilesFuzz.Read("plans/1.json", List.of("stock post SHOP --reel E8 --left E8=0m --sure")),
            new FilesFuzz.Read("count.csv", List.of("stock count SHOP --file SHOP/count.csv --accept")),
            new FilesFuzz.Read("came.csv", List.of("stock receive SHOP --file SHOP/came.csv --accept --sure")),
            new FilesFuzz.Read("proposal.csv", List.of("stock order SHOP SHOP/proposal.csv --accept")),
            new FilesFuzz.Read("own.csv", List.of("import SHOP SHOP/own.csv --accept")),
            new FilesFuzz.Read("measured.csv", List.of("calibrate SHOP", "orders deliver SHOP E-32")),
            new FilesFuzz.Read("orders.csv", List.of("orders SHOP", "stock post SHOP --all")),
            new FilesFuzz.Read("quotes/Q-2601.1.json", List.of("quote show SHOP Q-2601", "quote accept SHOP Q-2601")),
            new FilesFuzz.Read("../out/filed.json", List.of("quote compare SHOP OUT/filed.json")));

    private PapersFuzz() {}

    /** What each paper has at first, behind the byte that chooses it. */
    public static List<byte[]> seeds() {
        return FilesFuzz.seeds(PAPERS, read -> SHOP.first(read.file()));
    }

    /** The shop is there before the first try is timed. */
    public static void fuzzerInitialize() {}

    /** One try. */
    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length > 0) {
            FilesFuzz.Read read = PAPERS.get(Byte.toUnsignedInt(data[0]) % PAPERS.size());
            SHOP.with(read.file(), Arrays.copyOfRange(data, 1, data.length), read.commands());
        }
    }
}
