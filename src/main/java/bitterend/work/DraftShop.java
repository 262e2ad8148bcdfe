package bitterend.work;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The files of a shop as they would be: read in a folder of their own, which is gone again afterwards. */
public final class DraftShop {
    private static final Pattern COPIED = Pattern.compile("\\.(json|csv|xlsx)$");

    private final ShopAccess shop;

    public DraftShop(ShopAccess shop) {
        this.shop = shop;
    }

    /**
     * What the shop would say of these files.
     *
     * @param texts of files that would be other than they are, by name
     */
    public ShopFound with(Map<String, String> texts) {
        Path draft = folder();
        try {
            copyFiles(draft);
            for (Map.Entry<String, String> file : texts.entrySet()) {
                Files.writeString(draft.resolve(file.getKey()), file.getValue());
            }
            return new ShopAccess(draft, shop.ledger(), shop.clock()).readFiles();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } finally {
            remove(draft);
        }
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("orders");
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private void copyFiles(Path to) throws IOException {
        try (Stream<Path> files = Files.list(shop.folder())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (COPIED.matcher(file.toString()).find()) {
                    Files.copy(file, to.resolve(String.valueOf(file.getFileName())));
                }
            }
        }
    }

    private static void remove(Path draft) {
        try (Stream<Path> files = Files.list(draft)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
            Files.delete(draft);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
