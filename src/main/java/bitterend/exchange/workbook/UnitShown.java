package bitterend.exchange.workbook;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The unit of length that the format of a cell shows behind a number, as {@code 0.0" mm"} does, so that it is the cell's own.
 *
 * @param unit as files write it; empty for none
 * @param thousands how many times what is shown is parted by 1000, as {@code 0.0," m"} does once
 */
record UnitShown(String unit, int thousands) {
    static final UnitShown NONE = new UnitShown("", 0);

    private static final Map<String, List<String>> WORDS = Map.of(
            "mm", List.of("mm"),
            "cm", List.of("cm"),
            "m", List.of("m", "metre", "metres", "meter", "meters"),
            "ft", List.of("ft", "foot", "feet", "'", "\u2032"),
            "in", List.of("in", "inch", "inches", "\"", "\u2033"));

    /** The unit of the part of a format that is for positive numbers; none where parts are chosen by size. */
    static UnitShown of(String code) {
        if (code.matches(".*\\[[<>=].*")) {
            return NONE;
        }
        String plain = code.replaceFirst("(?i)general", "0");
        StringBuilder behind = new StringBuilder();
        int commas = 0;
        for (int at = 0; at < plain.length() && plain.charAt(at) != ';'; at++) {
            char sign = plain.charAt(at);
            if (sign == '"' || sign == '[') {
                int end = plain.indexOf(sign == '"' ? '"' : ']', at + 1);
                end = end < 0 ? plain.length() : end;
                behind.append(sign == '"' ? plain.substring(at + 1, end) : "");
                at = end;
            } else if (sign == '\\' || sign == '_' || sign == '*') {
                at++;
                behind.append(sign == '\\' && at < plain.length() ? plain.charAt(at) : ' ');
            } else if (sign == '0' || sign == '#' || sign == '?') {
                behind.setLength(0);
                commas = 0;
            } else if (sign == ',' && behind.isEmpty()) {
                commas++;
            } else {
                behind.append(sign);
            }
        }
        return named(behind.toString().strip().toLowerCase(Locale.ROOT), commas);
    }

    private static UnitShown named(String word, int commas) {
        return WORDS.entrySet().stream()
                .filter(unit -> unit.getValue().contains(word))
                .findFirst()
                .map(unit -> new UnitShown(unit.getKey(), commas))
                .orElse(NONE);
    }

    /** A number as it is shown, {@code 4250 mm}; without a unit the number alone. */
    String with(BigDecimal number) {
        BigDecimal shown = unit.isEmpty() ? number : number.movePointLeft(3 * thousands);
        String plain = shown.signum() == 0 ? "0" : shown.toPlainString();
        return unit.isEmpty() ? plain : plain + " " + unit;
    }
}
