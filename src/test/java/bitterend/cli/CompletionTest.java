package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The script that completes commands, in bash itself. */
@EnabledOnOs(OS.LINUX)
final class CompletionTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void completion_knowsTheCommandsOfTheLauncher() throws IOException, InterruptedException {
        Run run = Run.of("--completion");
        assertEquals(0, run.code(), run.err());
        Files.writeString(folder.resolve("completion"), run.out());
        assertEquals("receive\n", completed("target/bitterend stock rec"));
        assertEquals("plan\n", completed("target/bitterend pl"));
        assertEquals("--customer\n", completed("bitterend quote --cus"));
    }

    /** What bash offers, without what it says of being asked outside of a prompt, for the last word of what is typed. */
    private String completed(String typed) throws IOException, InterruptedException {
        String[] words = typed.split(" ");
        String asked =
                "source ./completion; name=${1##*/}; function=$(complete -p \"$name\" | sed 's/.*-F //; s/ .*//');"
                        + " COMP_WORDS=(\"$@\"); COMP_CWORD=$(($# - 1)); $function 2>/dev/null; printf '%s\\n' \"${COMPREPLY[@]}\"";
        String[] command = new String[words.length + 4];
        command[0] = "bash";
        command[1] = "-c";
        command[2] = asked;
        command[3] = "bash";
        System.arraycopy(words, 0, command, 4, words.length);
        Process bash = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, bash.waitFor(), said);
        return said;
    }
}
