package bitterend.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A page of the documentation as somebody tries it: its fenced blocks, with the commands and the output they show. */
record DocsPage(List<Block> blocks) {
    private static final Pattern COMMAND =
            Pattern.compile("(?:\\$ )?(?:bitterend|java -jar target/bitterend.jar) (.*)|\\$ (sed .*)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** One command with the lines that the page shows below it. */
    record Step(String command, List<String> shown) {
        List<String> words() {
            List<String> words = new ArrayList<>();
            Matcher word = WORD.matcher(command);
            while (word.find()) {
                words.add(word.group(1) == null ? word.group(2) : word.group(1));
            }
            return words;
        }
    }

    /** One block between fences. */
    record Block(List<String> lines) {
        /** Whether a shell must read it: loops, redirections, a script. */
        boolean forShell() {
            return lines.stream().anyMatch(line -> line.startsWith("for ") || line.startsWith("#!"));
        }

        /** Its commands; none of a block that shows something else. */
        List<Step> steps() {
            List<Step> steps = new ArrayList<>();
            for (String line : lines) {
                Matcher command = COMMAND.matcher(line);
                if (command.matches()) {
                    String text = command.group(1) == null ? command.group(2) : command.group(1);
                    steps.add(new Step(text, new ArrayList<>()));
                } else if (!steps.isEmpty()) {
                    steps.get(steps.size() - 1).shown().add(line);
                }
            }
            return steps;
        }
    }

    static DocsPage read(Path page) throws IOException {
        List<Block> blocks = new ArrayList<>();
        List<String> open = null;
        for (String line : Files.readAllLines(page)) {
            if (!line.startsWith("```")) {
                if (open != null) {
                    open.add(line);
                }
            } else if (open == null) {
                open = new ArrayList<>();
            } else {
                blocks.add(new Block(open));
                open = null;
            }
        }
        return new DocsPage(blocks);
    }
}
