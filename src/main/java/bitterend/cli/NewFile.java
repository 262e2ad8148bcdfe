package bitterend.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A file that a command is to write: whether it can be there is seen before any work is done. */
final class NewFile implements ITypeConverter<Path> {
    /** What is wrong with its name or place; nothing when it may be tried. */
    static Optional<String> refusal(String name) {
        if (name.isBlank()) {
            return Optional.of("found nothing, expected the name of a file");
        }
        Path file = Path.of(name);
        if (Files.isDirectory(file)) {
            return Optional.of("found the folder " + name + ", expected the name of a file");
        }
        Path parent = file.toAbsolutePath().getParent();
        if (parent != null && !Files.isDirectory(parent)) {
            return Optional.of("found " + name + ", expected a file in a folder that is there; make the folder first");
        }
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file)
                ? Optional.of("found " + name + ", which is no file to write to")
                : Optional.empty();
    }

    @Override
    public Path convert(String name) {
        refusal(name).ifPresent(why -> {
            throw new TypeConversionException(why);
        });
        return Path.of(name);
    }
}
