package bitterend.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** What a finished command tells the shell. */
enum ExitCode {
    DONE(0, "done"),
    INTERNAL_ERROR(1, "internal error: a fault in the program, not in your files"),
    BAD_COMMAND_LINE(2, "the command line was not understood"),
    BAD_INPUT(3, "the input has errors, or a file cannot be read or written"),
    NOT_ALL_PLANNED(4, "done, but some pieces could not be planned"),
    STOCK_CHANGED(5, "the stock changed underneath; nothing was posted"),
    STOPPED(130, "stopped by Ctrl-C; of a plan the best one so far is checked, kept and shown");

    private final int number;
    private final String meaning;

    ExitCode(int number, String meaning) {
        this.number = number;
        this.meaning = meaning;
    }

    int number() {
        return number;
    }

    /** What every code means, by its number, for people to read. */
    static Map<String, String> meanings() {
        Map<String, String> meanings = new LinkedHashMap<>();
        for (ExitCode code : values()) {
            meanings.put("" + code.number, code.meaning);
        }
        return meanings;
    }
}
