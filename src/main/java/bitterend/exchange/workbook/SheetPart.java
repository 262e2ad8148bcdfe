package bitterend.exchange.workbook;

import bitterend.exchange.workbook.Sheet.Row;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Reads the rows of one sheet; what is refused ends it, and the rows above are kept. */
final class SheetPart {
    private final List<String> texts;
    private final Styles styles;
    private final Numbers numbers;
    private final List<Row> rows = new ArrayList<>();
    private final SheetNotes notes;
    private int cells;
    private int row;

    SheetPart(String file, String name, List<String> texts, Styles styles, Numbers numbers) {
        this.notes = new SheetNotes(file, name);
        this.texts = texts;
        this.styles = styles;
        this.numbers = numbers;
    }

    Sheet read(Xml xml, boolean hidden) {
        try {
            while (xml.next()) {
                if (xml.begins("row")) {
                    row(xml);
                } else if (xml.begins("col") && xml.is("hidden")) {
                    notes.hiddenColumns(number(xml.attribute("min")), number(xml.attribute("max")));
                } else if (xml.begins("mergeCell")) {
                    notes.merged(xml.attribute("ref"));
                } else if (xml.begins("autoFilter")) {
                    notes.filtered();
                }
            }
        } catch (Refused refused) {
            notes.refused(refused, row);
        } catch (IOException unreadable) {
            notes.refused(new Refused("a sheet that cannot be read", "a file that can be read"), row);
        }
        return notes.sheet(hidden, rows);
    }

    private void row(Xml xml) throws IOException {
        String numbered = xml.attribute("r");
        int next = numbered.isEmpty() ? row + 1 : number(numbered);
        if (next <= row || next > Limits.FORMAT_ROWS) {
            throw new Refused(
                    "row " + (numbered.isEmpty() ? String.valueOf(next) : numbered)
                            + (row == 0 ? "" : " behind row " + row),
                    "rows in their order, 1 to " + Limits.FORMAT_ROWS);
        }
        row = next;
        boolean hidden = xml.is("hidden");
        List<Cell> read = new ArrayList<>();
        int column = 0;
        while (xml.next() && !xml.ends("row")) {
            if (xml.begins("c")) {
                column = column(xml, column);
                Cell cell = cell(xml);
                if (!cell.isBlank()) {
                    add(read, column, cell);
                }
            }
        }
        if (!read.isEmpty()) {
            tooMany(row > Limits.MOST_ROWS, "more than " + Limits.MOST_ROWS + " rows", Limits.MOST_ROWS + " rows");
            rows.add(new Row(row, read));
            if (hidden) {
                notes.hiddenRow(row);
            }
        }
    }

    private void add(List<Cell> read, int column, Cell cell) throws Refused {
        cells++;
        tooMany(
                cells > Limits.MOST_CELLS,
                "more than " + Limits.MOST_CELLS + " filled cells",
                Limits.MOST_CELLS + " filled cells");
        tooMany(
                column > Limits.MOST_COLUMNS,
                "something in column " + Sheet.letters(column),
                Limits.MOST_COLUMNS + " columns, A to " + Sheet.letters(Limits.MOST_COLUMNS));
        while (read.size() < column - 1) {
            read.add(Cell.BLANK);
        }
        read.add(cell);
    }

    private static void tooMany(boolean tooMany, String found, String most) throws Refused {
        if (tooMany) {
            throw new Refused(found, "a sheet of at most " + most);
        }
    }

    private int column(Xml xml, int before) throws Refused {
        String address = xml.attribute("r");
        Address at = address.isEmpty() ? new Address(row, before + 1) : Address.of(address);
        if (at.row() != row || at.column() <= before) {
            throw new Refused(
                    "cell " + address + " in row " + row
                            + (before == 0 ? "" : " behind column " + Sheet.letters(before)),
                    "the cells of a row in their order");
        }
        return at.column();
    }

    private Cell cell(Xml xml) throws IOException {
        String type = xml.attribute("t");
        String style = xml.attribute("s");
        String value = "";
        boolean valued = false;
        boolean formula = false;
        while (xml.next() && !xml.ends("c")) {
            if (xml.begins("f")) {
                formula = true;
            } else if (xml.begins("v")) {
                value = xml.text(Limits.LONGEST_CELL);
                valued = true;
            } else if (xml.begins("is")) {
                return new Cell(Cell.Kind.TEXT, Texts.within(xml, "is"));
            }
        }
        if (formula && !valued && !type.equals("str")) {
            return Cell.wrong(
                    "a formula without a value",
                    "a value; open the workbook in a spreadsheet program and save it again");
        }
        return value.isEmpty() ? Cell.BLANK : valued(type, style, value);
    }

    private Cell valued(String type, String style, String value) {
        return switch (type) {
            case "", "n" -> numbers.cell(value.strip(), styles.of(style));
            case "s" -> shared(value.strip());
            case "b" -> new Cell(
                    Cell.Kind.TRUTH, value.strip().equals("1") || value.strip().equals("true") ? "yes" : "no");
            case "e" -> Cell.wrong(value, "a value; this is what a formula shows that went wrong");
            case "d" -> new Cell(Cell.Kind.DATE, value.strip().replaceFirst("T00:00(:00(\\.0+)?)?Z?$", ""));
            default -> new Cell(Cell.Kind.TEXT, Texts.plain(value));
        };
    }

    private Cell shared(String value) {
        int index = value.matches("[0-9]{1,7}") ? Integer.parseInt(value) : Integer.MAX_VALUE;
        return index < texts.size()
                ? new Cell(Cell.Kind.TEXT, texts.get(index))
                : Cell.wrong(
                        "text " + value,
                        "one of the " + texts.size() + " texts of the workbook; save it again as .xlsx");
    }

    private static int number(String text) {
        return text.matches("[0-9]{1,9}") ? Integer.parseInt(text) : -1;
    }
}
