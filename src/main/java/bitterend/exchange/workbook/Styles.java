package bitterend.exchange.workbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** How the numbers of cells are shown, of which two things matter: whether a number is a day or a time, and its unit. */
final class Styles {
    /** Numbers alone; for a workbook without styles. */
    static final Styles PLAIN = new Styles(List.of());

    private static final Pattern ELAPSED = Pattern.compile("\\[(h+|m+|s+)\\]");
    private static final Pattern NO_SIGNS = Pattern.compile("\"[^\"]*\"|\\\\.|_.|\\*.|\\[[^\\]]*\\]");

    private final List<Format> formats;

    private Styles(List<Format> formats) {
        this.formats = List.copyOf(formats);
    }

    /** What a number is. */
    enum Shown {
        NUMBER,
        DAY,
        TIME,
        ELAPSED
    }

    /**
     * How a cell is shown.
     *
     * @param shown what its number is
     * @param unit what is shown behind a number
     */
    record Format(Shown shown, UnitShown unit) {
        private static final Format PLAIN = new Format(Shown.NUMBER, UnitShown.NONE);

        private static Format of(String code) {
            Shown shown = Styles.shown(code);
            return new Format(shown, shown == Shown.NUMBER ? UnitShown.of(code) : UnitShown.NONE);
        }
    }

    static Styles read(Xml xml) throws IOException {
        Map<String, String> codes = new HashMap<>();
        List<Format> formats = new ArrayList<>();
        boolean ofCells = false;
        while (xml.next()) {
            if (xml.begins("numFmt")) {
                codes.put(xml.attribute("numFmtId"), xml.attribute("formatCode"));
            } else if (xml.begins("cellXfs") || xml.ends("cellXfs")) {
                ofCells = xml.begins("cellXfs");
            } else if (ofCells && xml.begins("xf")) {
                String id = xml.attribute("numFmtId");
                String code = codes.getOrDefault(id, "");
                formats.add(code.isEmpty() ? new Format(builtIn(id), UnitShown.NONE) : Format.of(code));
            }
        }
        return new Styles(formats);
    }

    /** How the cells of a style show a number; a style that is not there shows it as a number. */
    Format of(String style) {
        try {
            int index = style.isEmpty() ? 0 : Integer.parseInt(style);
            return index >= 0 && index < formats.size() ? formats.get(index) : Format.PLAIN;
        } catch (NumberFormatException noNumber) {
            return Format.PLAIN;
        }
    }

    /** Formats that need no code (ECMA-376 part 1, 18.8.30), those of East Asian editions included. */
    private static Shown builtIn(String id) {
        return switch (id) {
            case "14",
                    "15",
                    "16",
                    "17",
                    "22",
                    "27",
                    "28",
                    "29",
                    "30",
                    "31",
                    "34",
                    "35",
                    "36",
                    "50",
                    "51",
                    "52",
                    "53",
                    "54",
                    "57",
                    "58" -> Shown.DAY;
            case "18", "19", "20", "21", "32", "33", "45", "47", "55", "56" -> Shown.TIME;
            case "46" -> Shown.ELAPSED;
            default -> Shown.NUMBER;
        };
    }

    /** A code of the shop's own: letters of days and times outside quotes and brackets, in the part for positive numbers. */
    static Shown shown(String code) {
        String first = code.split(";", 2)[0].toLowerCase(Locale.ROOT);
        if (ELAPSED.matcher(first).find()) {
            return Shown.ELAPSED;
        }
        String signs =
                NO_SIGNS.matcher(first).replaceAll("").replace("general", "").replace("am/pm", "h");
        boolean time = signs.indexOf('h') >= 0 || signs.indexOf('s') >= 0;
        boolean day = signs.indexOf('y') >= 0 || signs.indexOf('d') >= 0 || (signs.indexOf('m') >= 0 && !time);
        return day ? Shown.DAY : time ? Shown.TIME : Shown.NUMBER;
    }
}
