package bitterend.exchange;

import bitterend.exchange.FileReference.Member;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A text for whoever fills in a new shop: a line on every column and setting, with its usual value. */
final class AboutFiles {
    static final String NAME = "about-the-files.txt";
    private static final int WIDTH = 100;
    private static final String INDENT = "    ";
    /** Tables whose members are told where the file in their place is. */
    private static final Map<String, String> TOLD_BY =
            Map.of(RopesJson.TABLE_NAME, RopesJson.NAME, ProductsJson.TABLE_NAME, ProductsJson.NAME);

    private AboutFiles() {}

    /** What the files of these names hold, the settings, which come first, and the customers, whom a new shop does not list. */
    static String text(Collection<String> files) {
        FileReference reference = FileReference.builtIn();
        List<String> lines = new ArrayList<>(List.of(
                "What the files of this shop hold. Nothing reads this text; delete it when you know it.",
                "Only what is marked \"required\" must be filled in; behind \"usually\" is what holds otherwise."));
        List<String> told = new ArrayList<>(List.of(ShopJson.NAME));
        told.addAll(files);
        told.add(CustomersCsv.NAME);
        for (String file : told) {
            List<Member> members = reference.members(TOLD_BY.getOrDefault(file, file));
            if (!members.isEmpty()) {
                lines.add("");
                lines.add(file.equals(CustomersCsv.NAME) ? file + ", which you may add: whom quotes go to" : file);
                members.forEach(member -> lines.addAll(lines(file, member)));
            }
        }
        return String.join("\n", lines) + "\n";
    }

    private static List<String> lines(String file, Member member) {
        String name = file.equals(RopesJson.TABLE_NAME) ? columns(member.name()) : member.name();
        String usual = member.usual().isEmpty()
                ? ""
                : member.usual().startsWith("required")
                        ? " (" + member.usual() + ")"
                        : " (usually: " + member.usual() + ")";
        String within = member.table().endsWith(" member") ? member.table().replace(" member", ", ") : "";
        return wrapped(within + name + ": " + member.what() + usual);
    }

    /** The column of a member: {@code usual reel} for {@code usualReel}. */
    private static String columns(String member) {
        return member.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }

    private static List<String> wrapped(String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder("  ");
        String gap = "";
        for (String word : text.split(" ")) {
            if (line.length() + word.length() >= WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(INDENT);
                gap = "";
            }
            line.append(gap).append(word);
            gap = " ";
        }
        lines.add(line.toString());
        return lines;
    }
}
