package bitterend.exchange;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.mapping.MappingsJson;
import bitterend.finding.NaturalOrder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Which files a shop lives by. */
public final class ShopFiles {
    private static final Set<String> NAMES = Set.of(
            ShopJson.NAME,
            RopesJson.NAME,
            RopesJson.TABLE_NAME,
            RopeKindsJson.NAME,
            CodesJson.NAME,
            SplicesJson.NAME,
            ThimblesJson.NAME,
            ThimblesJson.THIMBLES_TABLE,
            ThimblesJson.FITTINGS_TABLE,
            ThimblesJson.HARDWARE_TABLE,
            ProductsJson.NAME,
            ProductsJson.TABLE_NAME,
            OrdersCsv.NAME,
            ReelsCsv.NAME,
            PinsCsv.NAME,
            OffersCsv.NAME,
            SuppliersCsv.NAME,
            CustomersCsv.NAME,
            OnOrderCsv.NAME,
            HistoryCsv.NAME,
            ValuesJson.NAME,
            ValuesJson.OLD_NAME,
            MeasuredCsv.NAME,
            PlanFolder.OLDER,
            MappingsJson.NAME,
            "stock.db",
            "stock.db-journal");

    private static final Pattern PLAN = Pattern.compile("[0-9]+\\.json");

    private ShopFiles() {}

    /** Whether a file is one that the shop lives by, its plans and its ledger among them. */
    public static boolean has(Path folder, Path file) {
        Path shop = folder.toAbsolutePath().normalize();
        Path path = file.toAbsolutePath().normalize();
        Path name = path.getFileName();
        boolean inPlans = path.startsWith(shop.resolve(PlanFolder.NAME));
        return inPlans || (shop.equals(path.getParent()) && name != null && isNamed(name.toString()));
    }

    /**
     * SHA-256 of every file of a shop that is there, in hexadecimal, by its name, its plans behind the others; words in place of one
     * that cannot be read. A file that only happens to be in the folder is not looked at.
     */
    public static Map<String, String> digests(Path folder) {
        Map<String, String> digests = new LinkedHashMap<>();
        named(folder).forEach(name -> digests.put(name, digest(folder.resolve(name))));
        Path plans = folder.resolve(PlanFolder.NAME);
        named(plans).forEach(name -> digests.put(PlanFolder.NAME + "/" + name, digest(plans.resolve(name))));
        return digests;
    }

    /** SHA-256 of the bytes of a file, in hexadecimal, with how many they are; words where it cannot be read. */
    public static String digest(Path file) {
        try {
            return InputFile.sha256(file) + " of " + Files.size(file) + " bytes";
        } catch (IOException unreadable) {
            return "could not be read";
        }
    }

    private static List<String> named(Path folder) {
        boolean plans = folder.endsWith(PlanFolder.NAME);
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> plans ? PLAN.matcher(name).matches() : isNamed(name))
                    .sorted(NaturalOrder.IDS)
                    .toList();
        } catch (IOException | UncheckedIOException notThere) {
            return List.of();
        }
    }

    private static boolean isNamed(String name) {
        return NAMES.contains(name)
                || NAMES.stream().anyMatch(each -> InputFile.workbook(each).equals(name));
    }
}
