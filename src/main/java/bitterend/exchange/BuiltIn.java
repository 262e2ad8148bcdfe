package bitterend.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Files that come with the program. */
final class BuiltIn {
    private BuiltIn() {}

    static String text(String name) {
        try (InputStream in = BuiltIn.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("no " + name + " in the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new IllegalStateException("cannot read " + name, unreadable);
        }
    }
}
