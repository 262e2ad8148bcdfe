package bitterend.exchange;

import bitterend.exchange.form.InputFile;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The plans of a shop, {@code plans/1.json} and so on: each is written once and never again. A {@code plan.json} of an
 * older version of the program counts as the next one until {@link #moveOver} gives it its number.
 */
public final class PlanFolder {
    /** The folder of the plans inside a shop folder. */
    public static final String NAME = "plans";
    /** Where the only plan lay before plans were numbered. */
    public static final String OLDER = "plan.json";

    private static final Pattern NUMBERED = Pattern.compile("([1-9][0-9]{0,8})\\.json");

    private final Path shop;

    public PlanFolder(Path shop) {
        this.shop = shop;
    }

    /** A plan and the name its bytes give it. */
    public record Kept(PlanDocument document, Path file, String digest) {
        /** Whether the file holds these bytes, as a look at it shows. */
        public boolean isHeld() {
            return bytes(file).map(InputFile::sha256).filter(digest::equals).isPresent();
        }
    }

    /** The numbers of all plans, lowest first. */
    public List<Integer> numbers() {
        List<Integer> numbers = new java.util.ArrayList<>(numbered(folder()));
        older().filter(bytes -> movedAs(bytes).isEmpty()).ifPresent(bytes -> numbers.add(next(numbers)));
        return List.copyOf(numbers);
    }

    /** The numbers of the files in a folder that are called by one, lowest first. */
    static List<Integer> numbered(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> NUMBERED.matcher(String.valueOf(file.getFileName())))
                    .filter(Matcher::matches)
                    .map(name -> Integer.valueOf(name.group(1)))
                    .sorted()
                    .toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    static int next(List<Integer> numbers) {
        return numbers.isEmpty() ? 1 : numbers.get(numbers.size() - 1) + 1;
    }

    /** The file of a plan. */
    public Path file(int number) {
        Path file = folder().resolve(number + ".json");
        boolean older = !Files.exists(file) && numbers().contains(number) && Files.isRegularFile(shop.resolve(OLDER));
        return older ? shop.resolve(OLDER) : file;
    }

    /** A plan by its number; what is wrong with it is told to the findings. */
    public Optional<Kept> read(int number, Findings findings) {
        Path file = file(number);
        if (!Files.exists(file)) {
            findings.add(Finding.error(NAME, "", "", "plan " + number, "a plan that was made: " + told(numbers())));
            return Optional.empty();
        }
        return read(file, findings).flatMap(kept -> numbered(kept, number, findings));
    }

    /** A file in the older form takes the number it is called by; in any other the two must agree. */
    private static Optional<Kept> numbered(Kept kept, int number, Findings findings) {
        PlanDocument document = kept.document();
        if (document.facts() instanceof PlanFacts.Older) {
            return Optional.of(new Kept(document.numbered(number), kept.file(), kept.digest()));
        }
        if (document.number() != number) {
            findings.add(Finding.error(
                    String.valueOf(kept.file().getFileName()), "", "number", "" + document.number(), "" + number));
            return Optional.empty();
        }
        return Optional.of(kept);
    }

    /** A plan file that lies anywhere; in the older form it has no number. */
    public static Optional<Kept> read(Path file, Findings findings) {
        return PlanJson.input(file, findings).flatMap(input -> PlanJson.read(input, findings)
                .map(document -> new Kept(document, file, input.digest())));
    }

    private static String told(List<Integer> numbers) {
        return numbers.isEmpty()
                ? "none yet"
                : numbers.size() == 1 ? "1" : numbers.get(0) + " to " + numbers.get(numbers.size() - 1);
    }

    /** Writes a plan under the next number, above {@code least} too; whoever else does so at once gets another one. */
    public Kept keep(PlanDocument document, int least) {
        createFolder();
        int number = Math.max(next(numbers()), least + 1);
        while (true) {
            PlanDocument numbered = document.numbered(number);
            byte[] bytes = PlanJson.text(numbered).getBytes(StandardCharsets.UTF_8);
            Path file = folder().resolve(number + ".json");
            if (WholeFile.create(file, bytes)) {
                return new Kept(numbered, file, InputFile.sha256(bytes));
            }
            number++;
        }
    }

    /**
     * Gives a plan of an older version its number: the file is moved as it is, once, however many do so at the same time.
     * The number, where there was one.
     */
    public Optional<Integer> moveOver() {
        Optional<byte[]> bytes = older();
        Optional<Integer> number = bytes.map(this::moved);
        if (number.isPresent()) {
            try {
                Files.deleteIfExists(shop.resolve(OLDER));
            } catch (IOException fault) {
                throw new UncheckedIOException(fault);
            }
        }
        return number;
    }

    /** Whoever has the next number taken from him looks whether it was for the same plan. */
    private int moved(byte[] bytes) {
        createFolder();
        int number = next(numbered(folder()));
        Optional<Integer> already = movedAs(bytes);
        while (already.isEmpty() && !WholeFile.create(folder().resolve(number + ".json"), bytes)) {
            already = movedAs(bytes);
            number++;
        }
        return already.orElse(number);
    }

    /** The number that the plan of an older version has been given, while its file is still there as well. */
    private Optional<Integer> movedAs(byte[] bytes) {
        return numbered(folder()).stream()
                .filter(number -> Arrays.equals(
                        bytes, bytes(folder().resolve(number + ".json")).orElse(null)))
                .findFirst();
    }

    /** The plan of an older version as it is; nothing when there is none, or no longer. */
    private Optional<byte[]> older() {
        return bytes(shop.resolve(OLDER));
    }

    private static Optional<byte[]> bytes(Path file) {
        try {
            return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
        } catch (NoSuchFileException gone) {
            return Optional.empty();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private Path folder() {
        return shop.resolve(NAME);
    }

    private void createFolder() {
        try {
            Files.createDirectories(folder());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
