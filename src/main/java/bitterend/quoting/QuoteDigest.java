package bitterend.quoting;

import bitterend.measure.Length;
import bitterend.measure.RatioText;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * A few letters and digits that change when anything a customer was told changes: what, how many, at what price, on which
 * terms. Who signs for a quote signs for these.
 */
final class QuoteDigest {
    private static final int LETTERS = 12;
    private static final int GROUP = 4;

    private QuoteDigest() {}

    /** The first twelve hexadecimal digits of a SHA-256, in groups of four: {@code 3f9a-02cc-71d0}. */
    static String of(Quote quote) {
        String hex = HexFormat.of().formatHex(hash(String.join("\n", said(quote))));
        return hex.substring(0, GROUP) + "-" + hex.substring(GROUP, 2 * GROUP) + "-"
                + hex.substring(2 * GROUP, LETTERS);
    }

    private static List<String> said(Quote quote) {
        QuoteRequest request = quote.request();
        Letter letter = quote.policy().letter();
        List<String> said = new ArrayList<>(List.of(
                quote.number(),
                Integer.toString(quote.revision()),
                request.customer(),
                request.recipient().number(),
                String.join("; ", request.recipient().address()),
                request.day().toString(),
                quote.validUntil().toString(),
                letter.terms().payment(),
                letter.terms().delivery(),
                request.given().delivery().words(),
                letter.own().before(),
                letter.own().after()));
        quote.lines().forEach(line -> said.add(line(quote, line)));
        quote.taxes()
                .forEach(tax -> said.add(tax.rate().name() + " "
                        + RatioText.exact(tax.rate().rate()) + " " + tax.tax().minor()));
        return said;
    }

    private static String line(Quote quote, LineQuote quoted) {
        QuoteLine line = quoted.line();
        Length sample = line.assembly().make().extras().sample().roundedUp();
        return String.join(
                "|",
                line.name(),
                line.rope(),
                line.assembly().make().finished().kept(),
                line.assembly().make().measuring().words(),
                line.pieces().get(0).ends(),
                Integer.toString(line.assembly().ordered().legs()),
                Integer.toString(line.quantity()),
                line.assembly().ordered().note(),
                line.assembly().terms().certificate(),
                Long.toString(sample.mm()),
                Long.toString(quoted.buildUp().each().minor()),
                quote.policy().letter().taxes().isEmpty()
                        ? ""
                        : TaxSum.rate(quote, quoted).name());
    }

    private static byte[] hash(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException fault) {
            throw new IllegalStateException("every Java has SHA-256", fault);
        }
    }
}
