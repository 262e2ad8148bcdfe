package bitterend.exchange.form;

import bitterend.finding.Finding;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A mistake in how a JSON file is written, in a person's words and at the line where it was made: a parser notices a missing
 * comma only at what follows it, and a missing bracket only at the end.
 */
final class JsonMistake {
    private static final int LONGEST_SHOWN = 60;
    private static final Pattern ID = Pattern.compile("\"id\"\\s*:\\s*\"([^\"]*)\"");
    private static final Pattern STARTED = Pattern.compile("expected close marker for (Object|Array).*?line: (\\d+)");
    private static final Pattern CLOSING = Pattern.compile("Unexpected close marker '.': expected '(.)'");
    private static final Pattern TWICE = Pattern.compile("Duplicate field '([^']*)'");
    private static final Pattern BARE = Pattern.compile("Unrecognized token '([^']*)'");
    private static final Pattern CHARACTER = Pattern.compile("Unexpected character \\('(.)' \\(code (\\d+)");

    private static final Pattern TOO_MUCH = Pattern.compile("(.+) \\(\\d+\\) exceeds the maximum allowed \\((\\d+)");

    private final InputFile file;
    private final String why;
    private final int at;
    private final int line;

    private JsonMistake(InputFile file, JsonProcessingException malformed) {
        this.file = file;
        this.why = malformed.getOriginalMessage().lines().findFirst().orElse("");
        JsonLocation location = malformed.getLocation();
        this.line = location == null ? 1 : location.getLineNr();
        this.at = offset(file.text(), line, location == null ? 1 : location.getColumnNr());
    }

    /** What is wrong, where, and what to write instead. */
    static Finding of(InputFile file, JsonProcessingException malformed) {
        return new JsonMistake(file, malformed).finding();
    }

    private Finding finding() {
        Matcher tooMuch = TOO_MUCH.matcher(why);
        if (tooMuch.find()) {
            return told(line, "at most " + tooMuch.group(2) + " " + much(tooMuch.group(1)));
        }
        if (why.contains("was expecting comma")) {
            return comma();
        }
        Matcher started = STARTED.matcher(why);
        if (started.find()) {
            String bracket = started.group(1).equals("Object") ? "}" : "]";
            String opened = bracket.equals("}") ? "{" : "[";
            return told(
                    Integer.parseInt(started.group(2)),
                    "a " + bracket + " for the " + opened + " of this line, before the end of the file");
        }
        Matcher closing = CLOSING.matcher(why);
        if (closing.find()) {
            return told(line, "a " + closing.group(1) + " first: what was opened last is closed first");
        }
        Matcher twice = TWICE.matcher(why);
        if (twice.find()) {
            return told(line, "the member " + twice.group(1) + " once in an object" + inRow(at));
        }
        Matcher bare = BARE.matcher(why);
        if (bare.find()) {
            return told(line, "double quotes around a text: \"" + bare.group(1) + '"');
        }
        return character();
    }

    private static String much(String what) {
        return switch (what) {
            case "Document nesting depth" -> "brackets open at once";
            case "Number value length" -> "digits in a number";
            case "String value length", "Name length" -> "characters in a text";
            default -> "names, values and brackets in a file";
        };
    }

    /** A comma that is missing after what stands before. */
    private Finding comma() {
        int before = lastBefore(at);
        return told(lineOf(before), "a comma at the end of this" + inRow(before) + ", since more follows");
    }

    private Finding character() {
        Matcher character = CHARACTER.matcher(why);
        char found = character.find() ? character.group(1).charAt(0) : 0;
        int before = lastBefore(at);
        if (why.contains("CTRL-CHAR") || why.contains("closing quote")) {
            return told(line, "a double quote at the end of the text that begins in this line");
        }
        if ((found == '}' || found == ']') && before >= 0 && file.text().charAt(before) == ',') {
            return told(lineOf(before), "no comma before the closing " + found + inRow(before));
        }
        return switch (found) {
            case '\'', '\u201c', '\u201d', '\u201e', '\u201f', '\u00ab', '\u00bb' -> told(
                    line, "plain double quotes, \", around texts and names");
            case '/', '#' -> told(line, "no comment: JSON has none; \"note\" is for what people should know");
            case ',' -> told(line, "one comma between two things, and none before the first");
            case '=' -> told(line, "a colon between a name and what it is");
            default -> other();
        };
    }

    private Finding other() {
        if (why.contains("colon")) {
            return told(line, "a colon between a name and what it is");
        }
        if (why.contains("Trailing token") || why.contains("to close")) {
            return told(line, "nothing after the last }: there is one too many before, or two files in one");
        }
        if (why.contains("double-quote to start field name")) {
            return told(line, "a name in double quotes");
        }
        return told(line, "well-formed JSON (" + why + ")");
    }

    private Finding told(int number, String expected) {
        String found = file.text()
                .lines()
                .skip(Math.max(0, number - 1L))
                .findFirst()
                .orElse("")
                .strip();
        return Finding.error(
                file.name(),
                "line " + number,
                "",
                found.length() > LONGEST_SHOWN ? found.substring(0, LONGEST_SHOWN) + "..." : found,
                expected);
    }

    /** The row by its id, as far as one was named before a place of the text. */
    private String inRow(int place) {
        Matcher id = ID.matcher(file.text())
                .region(0, Math.max(0, Math.min(place + 1, file.text().length())));
        String last = "";
        while (id.find()) {
            last = id.group(1);
        }
        return last.isEmpty() ? "" : ", at " + last;
    }

    private int lastBefore(int place) {
        int before = Math.min(place, file.text().length()) - 1;
        while (before >= 0 && Character.isWhitespace(file.text().charAt(before))) {
            before--;
        }
        return before;
    }

    private int lineOf(int place) {
        return 1
                + (int) file.text()
                        .substring(0, Math.max(0, place))
                        .chars()
                        .filter(each -> each == '\n')
                        .count();
    }

    /** The place of a line and column in the text, both from 1. */
    private static int offset(String text, int line, int column) {
        int start = 0;
        for (int passed = 1; passed < line; passed++) {
            int end = text.indexOf('\n', start);
            if (end < 0) {
                return text.length();
            }
            start = end + 1;
        }
        return Math.min(text.length(), start + Math.max(0, column - 1));
    }
}
