package bitterend.cli;

import static bitterend.exchange.workbook.RawBook.row;

import bitterend.exchange.workbook.RawBook;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** Order books that were broken, or made to break who reads them: each by what is wrong with it, as a file's name and bytes. */
final class HostileTables {
    private static final String HEAD = row(1, "order", "line", "rope", "length", "due");
    private static final String LAUGHS = "<!DOCTYPE x [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">"
            + "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\"><!ENTITY d \"&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;\">]>";
    private static final String CSV_HEAD = "order,line,rope,length,due\n";

    private final Map<String, byte[]> all = new LinkedHashMap<>();

    /** Workbooks and CSV files by what is wrong with them. */
    static Map<String, byte[]> all() {
        HostileTables tables = new HostileTables();
        tables.containers();
        tables.parts();
        tables.rows();
        tables.cells();
        tables.texts();
        return tables.all;
    }

    private void book(String wrong, RawBook book) {
        all.put("xlsx: " + wrong, book.bytes());
    }

    private void bytes(String wrong, byte[] bytes) {
        all.put("xlsx: " + wrong, bytes);
    }

    private void csv(String wrong, String text) {
        all.put("csv: " + wrong, text.getBytes(StandardCharsets.UTF_8));
    }

    private static RawBook whole() {
        return RawBook.of("Orders", HEAD + good(2));
    }

    private static String good(int number) {
        return row(number, "1041", "" + number, "DB12", "12.5 m", "2026-03-03");
    }

    private void containers() {
        byte[] whole = whole().bytes();
        bytes("nothing", new byte[0]);
        bytes("cut in half", Arrays.copyOf(whole, whole.length / 2));
        bytes("its end cut off", Arrays.copyOf(whole, whole.length - 10));
        bytes("the beginning of a packed file alone", new byte[] {'P', 'K', 3, 4});
        byte[] flipped = whole.clone();
        for (int at = 40; at < whole.length / 2; at += 7) {
            flipped[at] ^= 0x55;
        }
        bytes("bytes flipped", flipped);
        bytes("a CSV file", CSV_HEAD.getBytes(StandardCharsets.UTF_8));
        bytes("a web page", "<html><table><tr><td>order</td></tr></table></html>".getBytes(StandardCharsets.UTF_8));
        byte[] old = new byte[2048];
        System.arraycopy(new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0}, 0, old, 0, 4);
        bytes("of the old kind", old);
        byte[] locked = old.clone();
        byte[] stream = "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE);
        System.arraycopy(stream, 0, locked, 600, stream.length);
        bytes("with a password", locked);
        book(
                "another document",
                new RawBook()
                        .part("xl/workbook.xml", "none")
                        .part("mimetype", "x")
                        .part("content.xml", "<a/>"));
        book("parts without end", many(new RawBook().part("xl/workbook.xml", "none")));
        book(
                "a bomb",
                RawBook.of("Orders", HEAD)
                        .part("xl/worksheets/sheet1.xml", "<worksheet><sheetData>" + " ".repeat(30_000_000)));
        book("a bomb of texts", whole().texts("<t>" + "a".repeat(5_000_000) + "</t>"));
    }

    private static RawBook many(RawBook book) {
        for (int at = 0; at < 2_100; at++) {
            book.part("xl/part" + at, "x");
        }
        return book;
    }

    private void parts() {
        book("no workbook part", whole().part("xl/workbook.xml", "none"));
        book("no relations", whole().part("xl/_rels/workbook.xml.rels", "none"));
        book("a sheet without its part", whole().part("xl/worksheets/sheet1.xml", "none"));
        book(
                "a sheet somewhere else",
                whole().part("xl/worksheets/sheet1.xml", "none").part("../../../etc/passwd", "root"));
        book("no sheets", new RawBook());
        book("sheets without end", sheets(new RawBook(), 101));
        book("a sheet that is no XML", whole().part("xl/worksheets/sheet1.xml", "PK?? {not xml"));
        book("a sheet cut off", whole().part("xl/worksheets/sheet1.xml", "<worksheet><sheetData><row r=\"1\"><c><v>1"));
        book(
                "a billion laughs in a sheet",
                whole().part(
                                "xl/worksheets/sheet1.xml",
                                LAUGHS
                                        + "<worksheet><sheetData><row><c t=\"str\"><v>&d;</v></c></row></sheetData></worksheet>"));
        book(
                "a billion laughs in the texts",
                whole().texts("<t>a</t>").part("xl/sharedStrings.xml", LAUGHS + "<sst><si><t>&d;</t></si></sst>"));
        book(
                "a file of the machine as a text",
                whole().part(
                                "xl/worksheets/sheet1.xml",
                                "<!DOCTYPE x [<!ENTITY f SYSTEM \"file:///etc/hostname\">]><worksheet><sheetData><row><c t=\"str\"><v>&f;</v></c></row></sheetData></worksheet>"));
        book(
                "a declaration from elsewhere",
                whole().part("xl/workbook.xml", "<!DOCTYPE x SYSTEM \"http://127.0.0.1:1/x.dtd\"><workbook/>"));
        book(
                "an entity nobody declared",
                whole().part(
                                "xl/worksheets/sheet1.xml",
                                "<worksheet><sheetData><row><c t=\"str\"><v>&who;</v></c></row></sheetData></worksheet>"));
        book(
                "two sheets with the columns",
                RawBook.of("New", HEAD).sheet("Old", "", "<sheetData>" + HEAD + "</sheetData>"));
        book(
                "the columns on a hidden sheet",
                new RawBook().sheet("O", "state=\"veryHidden\"", "<sheetData>" + HEAD + "</sheetData>"));
    }

    private static RawBook sheets(RawBook book, int count) {
        for (int at = 0; at < count; at++) {
            book.sheet("S" + at, "", "<sheetData/>");
        }
        return book;
    }

    private void rows() {
        book("row 1,048,577", RawBook.of("Orders", HEAD + row(1_048_577, "1041")));
        book("row -1", RawBook.of("Orders", HEAD + "<row r=\"-1\"><c><v>1</v></c></row>"));
        book("row 0", RawBook.of("Orders", "<row r=\"0\"><c><v>1</v></c></row>"));
        book("row 99999999999", RawBook.of("Orders", HEAD + "<row r=\"99999999999\"/>"));
        book("a row twice", RawBook.of("Orders", HEAD + good(2) + good(2)));
        book("row 100,001", RawBook.of("Orders", HEAD + row(100_001, "1041")));
        book("cells out of their row", RawBook.of("Orders", HEAD + "<row r=\"2\"><c r=\"A7\"><v>1</v></c></row>"));
        book(
                "cells out of order",
                RawBook.of("Orders", HEAD + "<row r=\"2\"><c r=\"C2\"><v>1</v></c><c r=\"A2\"><v>1</v></c></row>"));
        book(
                "a cell beyond the last column",
                RawBook.of("Orders", HEAD + "<row r=\"2\"><c r=\"XFE2\"><v>1</v></c></row>"));
        book("a cell far to the right", RawBook.of("Orders", HEAD + "<row r=\"2\"><c r=\"ZZ2\"><v>1</v></c></row>"));
        book(
                "merged headings",
                new RawBook()
                        .sheet(
                                "Orders",
                                "",
                                "<sheetData>" + row(1, "order", "line", "rope", "length", "")
                                        + row(2, "1041", "1", "DB12", "12.5", "m")
                                        + "</sheetData><mergeCells><mergeCell ref=\"D1:E1\"/></mergeCells>"));
        book(
                "a merge of nothing",
                new RawBook()
                        .sheet(
                                "Orders",
                                "",
                                "<sheetData>" + HEAD
                                        + "</sheetData><mergeCells><mergeCell ref=\"A0:?\"/></mergeCells>"));
        book(
                "an order line twice",
                RawBook.of(
                        "Orders",
                        HEAD + good(2) + good(2).replace("r=\"2\"", "r=\"3\"").replaceAll("([A-E])2\"", "$13\"")));
    }

    private void cell(String wrong, String cell) {
        book(
                wrong,
                RawBook.of(
                                "Orders",
                                HEAD + "<row r=\"2\"><c r=\"A2\"><v>1041</v></c><c r=\"B2\"><v>1</v></c>"
                                        + "<c r=\"C2\" t=\"str\"><v>DB12</v></c>" + cell + "</row>")
                        .formats("General", "14"));
    }

    private void cells() {
        cell("a text that is not there", "<c r=\"D2\" t=\"s\"><v>4711</v></c>");
        cell("a text of number -1", "<c r=\"D2\" t=\"s\"><v>-1</v></c>");
        cell("a huge number", "<c r=\"D2\"><v>1E308</v></c>");
        cell("a number of a million digits", "<c r=\"D2\"><v>1E1000000</v></c>");
        cell("no number", "<c r=\"D2\"><v>NaN</v></c>");
        cell("an infinite length", "<c r=\"D2\"><v>INF</v></c>");
        cell("an error", "<c r=\"D2\" t=\"e\"><f>1/0</f><v>#DIV/0!</v></c>");
        cell("a formula nobody worked out", "<c r=\"D2\"><f>12*2</f></c>");
        cell("a day before 1900", "<c r=\"D2\" t=\"str\"><v>2 m</v></c><c r=\"E2\" s=\"1\"><v>-40</v></c>");
        cell("29 February 1900", "<c r=\"D2\" t=\"str\"><v>2 m</v></c><c r=\"E2\" s=\"1\"><v>60</v></c>");
        cell("a day after 9999", "<c r=\"D2\" t=\"str\"><v>2 m</v></c><c r=\"E2\" s=\"1\"><v>9999999999</v></c>");
        cell("a number of letters", "<c r=\"D2\" t=\"str\"><v>" + "9".repeat(32_767) + " m</v></c>");
        cell("a cell too long", "<c r=\"D2\" t=\"str\"><v>" + "x".repeat(32_768) + "</v></c>");
    }

    private void texts() {
        csv("nothing", "");
        csv("null characters", "\0\0\0\0" + CSV_HEAD);
        csv("a quote without its pair", CSV_HEAD + "\"1041,1,DB12,12.5 m,2026-03-03\n");
        csv("separators mixed", "order;line,rope\tlength\n1;2,3\t4\n");
        csv("fewer cells", CSV_HEAD + "1041,1\n");
        csv("more cells", CSV_HEAD + "1041,1,DB12,12.5 m,2026-03-03,x,y\n");
        csv("a column twice", "order,line,rope,length,length\n1041,1,DB12,1 m,2 m\n");
        csv("an order line twice", CSV_HEAD + "1041,1,DB12,1 m,\n1041,1,DB12,1 m,\n");
        csv("a huge number", CSV_HEAD + "1041,1,DB12," + "9".repeat(400) + " m,\n");
        csv("exponents", CSV_HEAD + "1041,1,DB12,1e9999 m,\n");
        csv("no number", CSV_HEAD + "1041,1,DB12,NaN m,\n");
        csv("a day that never was", CSV_HEAD + "1041,1,DB12,2 m,2026-02-30\n");
        csv("an escape", CSV_HEAD + "1041\u001b[2J,1,DB12,2 m,\n");
        csv("a direction turned", CSV_HEAD + "10\u202e41,1,DB12,2 m,\n");
        csv("a line of a million letters", CSV_HEAD + "x".repeat(1_000_000) + "\n");
        csv("ten thousand columns", "order,".repeat(10_000) + "\n");
        all.put("csv: a workbook", whole().bytes());
        all.put("csv: half a letter", new byte[] {'o', 'r', (byte) 0xc3, 0, (byte) 0xff, '\n'});
        all.put("csv: UTF-32", CSV_HEAD.getBytes(Charset.forName("UTF-32LE")));
    }
}
