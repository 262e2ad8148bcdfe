package bitterend.serve;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Collections;

/**
 * A key store that the shop gives, for https: PKCS 12, with the key of this machine and its certificate.
 *
 * @param store the store
 * @param password opens it, and the key in it
 */
public record Secured(KeyStore store, String password) {
    /** Reads a key store; one that cannot be opened, or has no key, is an {@link IOException} that says so. */
    public static Secured of(Path file, String password) throws IOException {
        KeyStore store = opened(file, password);
        try {
            for (String alias : Collections.list(store.aliases())) {
                if (store.isKeyEntry(alias)) {
                    return new Secured(store, password);
                }
            }
        } catch (GeneralSecurityException fault) {
            throw new IOException(file + " cannot be read as a key store", fault);
        }
        throw new IOException(file + " has no key in it");
    }

    private static KeyStore opened(Path file, String password) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new IOException(file + " is no file that can be read");
        }
        try (InputStream in = Files.newInputStream(file)) {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(in, password.toCharArray());
            return store;
        } catch (GeneralSecurityException | IOException fault) {
            throw new IOException(file + " cannot be opened as a PKCS 12 key store with that password", fault);
        }
    }
}
