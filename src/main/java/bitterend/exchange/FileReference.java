package bitterend.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the files of a shop hold, column by column and member by member: the tables of docs/file-formats.md, which the program
 * carries. Tests hold them against what the readers ask for.
 */
public final class FileReference {
    private static final String PAGE = "/bitterend/file-formats.md";
    private static final Pattern SECTION = Pattern.compile("## (\\S+\\.(?:csv|json))");
    private static final Pattern NAME = Pattern.compile("`([^`]+)`");
    private static final Pattern LINK = Pattern.compile("\\[([^\\]]*)\\]\\([^)]*\\)");

    private final Map<String, List<Member>> files;

    private FileReference(Map<String, List<Member>> files) {
        this.files = files;
    }

    /**
     * A column or a member.
     *
     * @param table what its table is about: {@code column}, {@code member}, or the kind of row
     * @param name its name
     * @param what what it holds, in a line without marks
     * @param usual what holds where it is left out; {@code required} where it must be there
     */
    public record Member(String table, String name, String what, String usual) {}

    /** The reference that the program carries. */
    public static FileReference builtIn() {
        return of(BuiltIn.text(PAGE));
    }

    /** The tables of a page. */
    static FileReference of(String page) {
        Map<String, List<Member>> files = new LinkedHashMap<>();
        String file = "";
        List<String> head = List.of();
        for (String line : page.lines().toList()) {
            Matcher section = SECTION.matcher(line);
            if (line.startsWith("## ")) {
                file = section.matches() ? section.group(1) : "";
            }
            List<String> cells = cells(line);
            if (line.startsWith("|--")) {
                continue;
            }
            if (cells.isEmpty()) {
                head = List.of();
            } else if (head.isEmpty()) {
                head = cells;
            } else if (!file.isEmpty() && cells.get(0).startsWith("`")) {
                files.computeIfAbsent(file, any -> new ArrayList<>()).addAll(members(head, cells));
            }
        }
        return new FileReference(files);
    }

    /** Names of the files in the order of the page. */
    public List<String> names() {
        return List.copyOf(files.keySet());
    }

    /** What a file holds; nothing of a file that the page has no table of. */
    public List<Member> members(String file) {
        return List.copyOf(files.getOrDefault(file, List.of()));
    }

    private static List<String> cells(String line) {
        return line.startsWith("| ")
                ? List.of(line.substring(2).replaceFirst("\\s*\\|\\s*$", "").split(" \\| ?", -1))
                : List.of();
    }

    /** A row may name several members that are alike. */
    private static List<Member> members(List<String> head, List<String> cells) {
        List<Member> members = new ArrayList<>();
        int what = head.indexOf("what") < 0 ? 1 : head.indexOf("what");
        int usual = head.indexOf("default");
        Matcher name = NAME.matcher(cells.get(0));
        while (name.find()) {
            members.add(new Member(
                    head.get(0).replace("`", ""),
                    name.group(1),
                    plain(cells, what),
                    usual < 0 ? "" : plain(cells, usual)));
        }
        return members;
    }

    private static String plain(List<String> cells, int column) {
        String cell = column < cells.size() ? cells.get(column) : "";
        return LINK.matcher(cell).replaceAll("$1").replace("`", "").strip();
    }
}
