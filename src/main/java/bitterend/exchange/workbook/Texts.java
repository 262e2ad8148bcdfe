package bitterend.exchange.workbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The texts that cells share: a cell names one by its number. */
final class Texts {
    private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private Texts() {}

    /** All of a part. */
    static List<String> read(Xml xml) throws IOException {
        List<String> texts = new ArrayList<>();
        while (xml.next()) {
            if (xml.begins("si")) {
                texts.add(within(xml, "si"));
                if (texts.size() > Limits.MOST_TEXTS) {
                    throw new Refused(
                            "more than " + Limits.MOST_TEXTS + " texts",
                            "a workbook of at most " + Limits.MOST_TEXTS + " different texts");
                }
            }
        }
        return texts;
    }

    /** The text of an item, run by run; how it is spoken is left out. */
    static String within(Xml xml, String item) throws IOException {
        StringBuilder text = new StringBuilder();
        while (xml.next() && !xml.ends(item)) {
            if (xml.begins("rPh")) {
                xml.text(Limits.LONGEST_CELL);
            } else if (xml.begins("t")) {
                text.append(xml.text(Limits.LONGEST_CELL - Math.min(text.length(), Limits.LONGEST_CELL)));
            }
        }
        return plain(text.toString());
    }

    /** Characters that the format writes by their number. */
    static String plain(String text) {
        return text.contains("_x")
                ? ESCAPED.matcher(text)
                        .replaceAll(found -> java.util.regex.Matcher.quoteReplacement(
                                String.valueOf((char) Integer.parseInt(found.group(1), 16))))
                : text;
    }
}
