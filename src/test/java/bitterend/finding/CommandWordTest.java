package bitterend.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A word in a command that a sentence names can be pasted where the sentence was printed. */
final class CommandWordTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '~',
            delimiter = ';',
            value = {
                "loft;loft;loft",
                "two words;\"two words\";\"two words\"",
                "C:\\loft\\north;C:\\loft\\north;'C:\\loft\\north'",
                "C:\\Ann Lee\\loft;\"C:\\Ann Lee\\loft\";'C:\\Ann Lee\\loft'",
                "\\\\server\\our loft;\"\\\\server\\our loft\";'\\\\server\\our loft'",
                "it's;\"it's\";\"it's\"",
                "a$b;\"a$b\";'a$b'"
            })
    void words_areQuotedAsTheCommandLineReadsThem(String word, String windows, String others) {
        assertEquals(windows, CommandWord.of(word, true));
        assertEquals(others, CommandWord.of(word, false));
    }
}
