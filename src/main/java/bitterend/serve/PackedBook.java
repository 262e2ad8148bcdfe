package bitterend.serve;

import bitterend.exchange.TableText;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.jspecify.annotations.Nullable;

/**
 * The book that a page was made from, carried by the page itself: so a save knows what has changed since, whether the program
 * was started anew meanwhile or not.
 */
final class PackedBook {
    private static final int LARGEST = 8_000_000;

    private PackedBook() {}

    /** As a field of a form holds it. */
    static String of(TableText table) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed)) {
            out.write(table.text().getBytes(StandardCharsets.UTF_8));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return Base64.getUrlEncoder().withoutPadding().encodeToString(packed.toByteArray());
    }

    /** What a form sent; nothing where that is no book. */
    static Optional<TableText> read(@Nullable String packed) {
        if (packed == null || packed.isEmpty()) {
            return Optional.empty();
        }
        try (InputStream in = new InflaterInputStream(
                new ByteArrayInputStream(Base64.getUrlDecoder().decode(packed)))) {
            byte[] text = in.readNBytes(LARGEST);
            return text.length < LARGEST
                    ? Optional.of(TableText.of(new String(text, StandardCharsets.UTF_8)))
                    : Optional.empty();
        } catch (IOException | IllegalArgumentException broken) {
            return Optional.empty();
        }
    }
}
