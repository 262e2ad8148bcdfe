package bitterend.report.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * What binds a signature to a page: letters and digits over the very text and drawings above the place where it is signed,
 * {@code 3f9a-02cc-71d0}. They change with anything that is said there.
 */
public final class PageMark {
    /** The heading below which a page is signed. */
    public static final String SIGNED_BELOW = "Accepted";

    private static final int LETTERS = 12;
    private static final int GROUP = 4;

    private PageMark() {}

    /** The mark of a page that is to be signed below all that it says so far. */
    public static String of(Document page) {
        String hex = HexFormat.of().formatHex(hash(said(page)));
        return hex.substring(0, GROUP) + "-" + hex.substring(GROUP, 2 * GROUP) + "-"
                + hex.substring(2 * GROUP, LETTERS);
    }

    /** The mark that is printed on a page; empty for one that nobody signs. */
    public static String printedOn(Document page) {
        List<Block> blocks = page.blocks();
        for (int i = blocks.size() - 1; i >= 0; i--) {
            if (blocks.get(i) instanceof Block.Heading heading
                    && heading.words().equals(SIGNED_BELOW)) {
                return of(new Document(blocks.subList(0, i)));
            }
        }
        return "";
    }

    private static String said(Document page) {
        StringBuilder said = new StringBuilder(page.text(Ink.PLAIN));
        for (Block block : page.blocks()) {
            if (block instanceof Block.Picture picture) {
                said.append(picture.svg())
                        .append('\n')
                        .append(picture.caption())
                        .append('\n');
            }
        }
        return said.toString();
    }

    private static byte[] hash(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException fault) {
            throw new IllegalStateException("every Java has SHA-256", fault);
        }
    }
}
