package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Figures that nobody can mean, one to three at once, in every file that money, stock, orders and lengths are read from: told with
 * their place, or borne; never a fault of the program. {@code -Dextremes=5000} tries more, {@code -Dseed=7} others.
 */
final class ExtremeFiguresTest {
    private static final int ROUNDS = Integer.getInteger("extremes", 25);
    private static final long SEED = Long.getLong("seed", 1);
    private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");
    private static final Pattern MEMBER = Pattern.compile("(?<=: )\"[^\"]*[0-9][^\"]*\"|(?<=: )[0-9.]+");
    private static final String FEW = " --from-history --scenarios 20 --weeks 2";

    private static final String[] FIGURES = {
        "0",
        "0.0001",
        "0.1",
        "1",
        "95",
        "100",
        "999",
        "9999",
        "10000",
        "19999.999",
        "20000",
        "29999.99",
        "100000",
        "999999",
        "2147483647",
        "99999999.99",
        "999999999999",
        "92233720368547758.07",
        "9223372036854775807",
        "1000000000000000000000000000000",
        "-1",
        "-9223372036854775808"
    };
    private static final String[] UNITS = {
        "mm", "m", "km", "in", "ft", "EUR", "EUR/m", "EUR/mm", "EUR/h", "%", "min", "kg/m", ""
    };

    private static final String SHOP =
            """
            {
              "format": "bitterend/shop/1",
              "name": "Eider Shed",
              "currency": "EUR",
              "minorDigits": 2,
              "day": "2026-03-02",
              "urgency": {"third": "2 working days", "fourth": "7 days"},
              "labour": "42.00 EUR/h",
              "cutLoss": {"fibre": "10 mm", "whipped": "40 mm", "wire": "5 mm"},
              "cutToNearest": {"fibre": "10 mm", "wire": "5 mm"},
              "prices": {"opening": "3 min", "changing": "2 min", "handling": "2 min", "splitOrder": "2 min",
                "movedPiece": "1 min", "ageCredit": "0.80 EUR", "coilCharge": "0.80 EUR"},
              "interest": "12 %",
              "room": "0.10 EUR",
              "quote": {"settingUp": "10 min", "spoilage": "2 %", "packing": "4.00 EUR", "overhead": "20 %",
                "margin": "30 %", "minimum": "25.00 EUR", "validDays": 30}
            }
            """;
    private static final String VALUES =
            """
            {
              "format": "bitterend/values/1",
              "values": [
                {"rope": "BRAID-12", "typed": "yes", "knots": [{"length": "1 m", "share": "0.05"}, {"length": "20 m", "share": "80 %"}]},
                {"rope": "LAID-14", "knots": [{"length": "3000 mm", "share": "0.1"}]}
              ]
            }
            """;
    private static final String OFFERS =
            """
            offer,supplier,rope,length,price,breaks,freight,supply,minimum,tolerance,lead days,lead spread,valid until,note
            B12-100,Northquay Cordage,BRAID-12,100 m,196.00 EUR,5: 190.00 EUR; 10: 180.00 EUR,4.00 EUR,10,1,1 %,2,1,2026-12-31,
            B12-200,Northquay Cordage,BRAID-12,200 m,1.85 EUR/m,2: 1.80 EUR/m,0 EUR,3,1,0,2,,,
            L14-110,Longreach Ropeworks,LAID-14,110 m,171.00 EUR,,9.50 EUR,,2,2 %,7,2,,
            """;
    private static final String SUPPLIERS =
            """
            supplier,address,contact,freight by order,freight by weight,free freight from,minimum order,note
            Northquay Cordage,Ropewalk 3,orders desk,6.50 EUR,0.45 EUR/kg,750.00 EUR,100.00 EUR,
            Longreach Ropeworks,,,9.00 EUR,20 EUR/100 lb,,,
            """;
    private static final String ON_ORDER =
            """
            number,rope,length,quantity,expected
            P-88,BRAID-12,149 m,1,2026-03-06
            """;
    private static final String MEASURED =
            """
            id,rope,end a,end b,cut,finished,measured,bedded in,splicer,day,note
            B-01,BRAID-12,double-braid-eye length 150 mm,sealed,10729 mm,10 m,flat,no,Iversen,2026-01-06,
            B-02,BRAID-12,double-braid-eye length 150 mm,sealed,10734 mm,10 m,flat,no,Iversen,2026-01-07,
            B-03,BRAID-12,double-braid-eye length 150 mm,sealed,10722 mm,10 m,flat,no,Okafor,2026-01-08,
            """;
    private static final String PRODUCTS =
            """
            {
              "format": "bitterend/assemblies/1",
              "products": [
                {"id": "bridle",
                 "line": {"rope": "BRAID-12", "length": "4.5 m", "end a": "double-braid-eye length 150 mm", "end b": "sealed",
                   "legs": "2", "sample": "1 m", "spare": "1 m", "tolerance": "20 mm"},
                 "parts": [{"part": "sleeve", "rope": "LAID-14", "length": "600 mm", "legs": "2"}]}
              ]
            }
            """;
    private static final String SPLICES =
            """
            {
              "format": "bitterend/splices/1",
              "counters": [
                {"ropes": ["BRAID-12"], "factor": "0.995", "source": "run against a tape", "grade": "S", "verified": true}
              ],
              "terminations": [
                {"id": "double-braid-eye", "source": "own benches", "grade": "S", "verified": true,
                 "allowances": {
                   "takeUp": {"is": "0.66 fids", "source": "own benches", "grade": "S", "verified": true},
                   "room": {"is": "1 fid + 2 short sections", "source": "own benches", "grade": "S", "verified": true}}}
              ]
            }
            """;
    private static final String THIMBLES =
            """
            {
              "format": "bitterend/thimbles/1",
              "thimbles": [
                {"id": "T12", "name": "solid thimble for 12 mm", "groove": "130 mm", "throatToBearing": "56 mm",
                 "crown": "3.5 mm", "ropeFrom": "10.5 mm", "ropeTo": "13 mm"}
              ]
            }
            """;
    private static final String MORE_ORDERS =
            """
            E-41,1,sloop,,,,,2,2026-03-04,3,,,bridles,bridle
            E-42,1,sloop,BRAID-12,9 m,double-braid-eye thimble T12,sealed,1,2026-03-04,3,,,,
            """;
    private static final String REQUEST =
            """
            line,customer,rope,length,end a,end b,quantity,hardware,minutes,test,shorter,longer,fewest,most
            1,pilot boat,BRAID-12,11.2 m,double-braid-eye length 150 mm,sealed,3,14.20 EUR,35 min,25.00 EUR,200 mm,200 mm,2,5
            2,pilot boat,LAID-14,7.6 m,three-strand-eye length 340 mm pin 100 mm,whipped,4,,60 min,,,,,
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void extremeFigures_areLocatedOrBorne() throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        Map<String, String> files = new TreeMap<>(Map.of(
                "shop.json",
                SHOP,
                "values.json",
                VALUES,
                "offers.csv",
                OFFERS,
                "on-order.csv",
                ON_ORDER,
                "request.csv",
                REQUEST,
                "measured.csv",
                MEASURED,
                "assemblies.json",
                PRODUCTS,
                "splices.json",
                SPLICES,
                "thimbles.json",
                THIMBLES));
        files.put("suppliers.csv", SUPPLIERS);
        for (String name : List.of("history.csv", "orders.csv", "reels.csv", "ropes.json")) {
            files.put(name, Files.readString(shop.resolve(name)));
        }
        files.computeIfPresent(
                "orders.csv",
                (name, text) -> text.replaceFirst("\n", ",product\n").replaceAll("(?m)^(E-.*)$", "$1,") + MORE_ORDERS);
        write(shop, files);
        assertBorne(shop, "nothing changed", true);
        Random random = new Random(SEED);
        for (int round = 0; round < ROUNDS; round++) {
            Map<String, String> changed = new TreeMap<>(files);
            StringBuilder told = new StringBuilder("seed " + SEED + ", round " + round);
            for (int change = random.nextInt(3); change >= 0; change--) {
                change(changed, random, told);
            }
            write(shop, changed);
            assertBorne(shop, told.toString(), false);
        }
    }

    private static void write(Path shop, Map<String, String> files) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            Files.writeString(shop.resolve(file.getKey()), file.getValue());
        }
    }

    /** No command of these fails by itself; what it cannot read it tells by file and place. */
    private void assertBorne(Path shop, String changed, boolean sound) throws IOException {
        String out = " --out " + folder.resolve("plan.json");
        for (String words : List.of(
                "check SHOP",
                "plan SHOP --time 10ms" + out,
                "lengths SHOP --json",
                "calibrate SHOP",
                "orders SHOP",
                "quote SHOP SHOP/request.csv --time 10ms",
                "quote SHOP --order E-32 --time 10ms",
                "buy SHOP",
                "buy SHOP" + FEW,
                "value SHOP",
                "value SHOP" + FEW)) {
            Run run = Run.of(words.replace("SHOP", shop.toString()).split(" "));
            String all = changed + "\n" + words + "\n" + run.code() + "\n" + run.err();
            assertFalse(run.code() == 1 || run.code() == 2, all);
            assertFalse(run.err().contains("internal error"), all);
            assertTrue(!sound || run.code() == 0 || (run.code() == 4 && !words.startsWith("check")), all);
            if (run.code() == 3) {
                assertTrue(run.out().concat(run.err()).matches("(?s).*(\\.csv|\\.json|error: ).*"), all);
                if (words.startsWith("check")) {
                    return;
                }
            }
        }
    }

    private static void change(Map<String, String> files, Random random, StringBuilder told) {
        String file = new ArrayList<>(files.keySet()).get(random.nextInt(files.size()));
        String text = Objects.requireNonNull(files.get(file));
        List<int[]> places = file.endsWith(".json") ? members(text) : cells(text);
        int[] place = places.get(random.nextInt(places.size()));
        String was = text.substring(place[0], place[1]);
        String now = extreme(was, random);
        told.append("; ").append(file).append(": ").append(was).append(" is ").append(now);
        files.put(file, text.substring(0, place[0]) + now + text.substring(place[1]));
    }

    private static String extreme(String was, Random random) {
        String figure = FIGURES[random.nextInt(FIGURES.length)];
        Matcher number = NUMBER.matcher(was);
        if (random.nextInt(4) == 0 || !number.find()) {
            String other = (figure + " " + UNITS[random.nextInt(UNITS.length)]).strip();
            return was.startsWith("\"") ? '"' + other + '"' : other;
        }
        return number.replaceFirst(Matcher.quoteReplacement(figure));
    }

    private static List<int[]> members(String text) {
        List<int[]> places = new ArrayList<>();
        Matcher member = MEMBER.matcher(text);
        while (member.find()) {
            if (!member.group().contains("bitterend/")) {
                places.add(new int[] {member.start(), member.end()});
            }
        }
        return places;
    }

    /** Every cell below the header that has none of quotes. */
    private static List<int[]> cells(String text) {
        List<int[]> places = new ArrayList<>();
        Matcher cell = Pattern.compile("(?<=[,\n])[^,\"\n]*(?=[,\n])").matcher(text);
        int header = text.indexOf('\n');
        while (cell.find()) {
            if (cell.start() > header) {
                places.add(new int[] {cell.start(), cell.end()});
            }
        }
        return places;
    }
}
