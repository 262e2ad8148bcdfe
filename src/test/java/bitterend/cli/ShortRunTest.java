package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ShortRunTest {
    @ParameterizedTest
    @CsvSource({
        "plan shop --time 1s, true",
        "plan shop --time 2s, true",
        "plan shop --time 3s, false",
        "plan shop, false",
        "plan shop --effort reproducible, false",
        "check shop, false",
        "--version, false"
    })
    void runIsShort_whereItsTimeIsStatedSo(String typed, boolean isShort) {
        String[] args = typed.split(" ");
        assertEquals(
                isShort,
                ShortRun.isShort(Main.commandLine(Terminal.standard(), args).parseArgs(args)));
    }
}
