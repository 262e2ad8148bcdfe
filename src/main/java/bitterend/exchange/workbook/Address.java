package bitterend.exchange.workbook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a cell is.
 *
 * @param row from 1
 * @param column from 1
 */
record Address(int row, int column) {
    private static final Pattern FORM = Pattern.compile("\\$?([A-Za-z]{1,3})\\$?([0-9]{1,7})");

    /** {@code C12}; refused where no sheet has such a cell. */
    static Address of(String text) throws Refused {
        Matcher form = FORM.matcher(text);
        if (form.matches()) {
            int column = 0;
            for (char letter : form.group(1).toUpperCase(java.util.Locale.ROOT).toCharArray()) {
                column = column * 26 + letter - 'A' + 1;
            }
            int row = Integer.parseInt(form.group(2));
            if (row >= 1 && row <= Limits.FORMAT_ROWS && column <= Limits.FORMAT_COLUMNS) {
                return new Address(row, column);
            }
        }
        throw new Refused("a cell called " + text, "cells from A1 to XFD" + Limits.FORMAT_ROWS);
    }
}
