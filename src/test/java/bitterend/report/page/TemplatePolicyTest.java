package bitterend.report.page;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gg.jte.html.HtmlAttribute;
import gg.jte.html.HtmlPolicyException;
import gg.jte.html.HtmlTag;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the compiler of the templates refuses. */
final class TemplatePolicyTest {
    private record Attribute(String name, char quotes) implements HtmlAttribute {
        @Override
        public String getName() {
            return name;
        }

        @Override
        public char getQuotes() {
            return quotes;
        }

        @Override
        public boolean isBoolean() {
            return false;
        }

        @Override
        public boolean isEmpty() {
            return false;
        }
    }

    private static final HtmlTag BUTTON = () -> "button";

    private static void validate(String name, char quotes) {
        new TemplatePolicy().validateHtmlAttribute(BUTTON, new Attribute(name, quotes));
    }

    @Test
    void handlersAndBareValues_areRefused() {
        assertDoesNotThrow(() -> validate("name", '"'));
        assertThrows(HtmlPolicyException.class, () -> validate("onclick", '"'));
        assertThrows(HtmlPolicyException.class, () -> validate("name", '\0'));
        assertThrows(HtmlPolicyException.class, () -> validate("${name}", '"'));
    }

    @Test
    void compilerOfTheTemplates_isGivenThePolicy() throws IOException {
        assertTrue(Files.readString(Path.of("pom.xml"))
                .contains("<htmlPolicyClass>" + TemplatePolicy.class.getName() + "</htmlPolicyClass>"));
    }
}
