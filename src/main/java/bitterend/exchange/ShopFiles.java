package bitterend.exchange;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.mapping.MappingsJson;
import java.nio.file.Path;
import java.util.Set;

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
            OnOrderCsv.NAME,
            HistoryCsv.NAME,
            ValuesJson.NAME,
            ValuesJson.OLD_NAME,
            MeasuredCsv.NAME,
            PlanFolder.OLDER,
            MappingsJson.NAME,
            "stock.db",
            "stock.db-journal");

    private ShopFiles() {}

    /** Whether a file is one that the shop lives by, its plans and its ledger among them. */
    public static boolean has(Path folder, Path file) {
        Path shop = folder.toAbsolutePath().normalize();
        Path path = file.toAbsolutePath().normalize();
        Path name = path.getFileName();
        boolean inPlans = path.startsWith(shop.resolve(PlanFolder.NAME));
        return inPlans || (shop.equals(path.getParent()) && name != null && isNamed(name.toString()));
    }

    private static boolean isNamed(String name) {
        return NAMES.contains(name)
                || NAMES.stream().anyMatch(each -> InputFile.workbook(each).equals(name));
    }
}
