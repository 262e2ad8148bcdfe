package bitterend.front;

import bitterend.exchange.SettingsText.Setting;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The settings of a shop in words, each with what is usual and where it is changed. */
public final class SettingsPage {
    private static final String SHOP = "The shop";
    private static final String AHEAD = "Work ahead";
    private static final String BENCH = "The bench";
    private static final String RULES = "What the rules of planning cost";
    private static final String RACK = "The rack";
    private static final String QUOTES = "Quotes";

    /** A setting in words, under a heading. */
    private record Meant(String heading, String words) {}

    private static final Map<String, Meant> MEANT = meant();

    private SettingsPage() {}

    private static Map<String, Meant> meant() {
        Map<String, Meant> all = new LinkedHashMap<>();
        all.put("name", new Meant(SHOP, "name, as printed"));
        all.put("units", new Meant(SHOP, "units of what is printed"));
        all.put("currency", new Meant(SHOP, "currency"));
        all.put("minorDigits", new Meant(SHOP, "digits of its smallest coin"));
        all.put("locale", new Meant(SHOP, "place by which days and figures are typed"));
        all.put("code", new Meant(SHOP, "code that holds for slings and lifting"));
        all.put("day", new Meant(AHEAD, "day the rope is cut"));
        all.put("closed", new Meant(AHEAD, "days off beside Saturdays and Sundays"));
        all.put("horizon", new Meant(AHEAD, "how far ahead a plan looks"));
        all.put("urgency third", new Meant(AHEAD, "work left undone is of the third class up to"));
        all.put("urgency fourth", new Meant(AHEAD, "of the fourth class up to"));
        all.put("lateness", new Meant(AHEAD, "reels on order usually come later by"));
        all.put("brake", new Meant(AHEAD, "usual urgent work kept while rope is short, times"));
        all.put("budget", new Meant(AHEAD, "most paid for reels at once"));
        all.put("mostWeeks", new Meant(AHEAD, "most weeks of work that rope is bought for"));
        all.put("labour", new Meant(BENCH, "rate of labour"));
        all.put("benchTools", new Meant(BENCH, "what splicers measure with"));
        all.put("benchHours", new Meant(BENCH, "hours that all at the bench work"));
        for (String day : List.of("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")) {
            all.put("benchHours " + day, new Meant(BENCH, "hours that all at the bench work, " + day));
        }
        all.put("benchMinutes cut", new Meant(BENCH, "measuring, cutting, sealing and tagging a piece"));
        all.put("benchMinutes fetch", new Meant(BENCH, "bringing a reel and putting it back"));
        all.put("cutLoss fibre", new Meant(BENCH, "rope lost at a cut, fibre cut hot"));
        all.put("cutLoss whipped", new Meant(BENCH, "rope lost at a cut between whippings"));
        all.put("cutLoss wire", new Meant(BENCH, "rope lost at a cut, wire"));
        all.put("cutToNearest fibre", new Meant(BENCH, "cut lengths of fibre are rounded up to"));
        all.put("cutToNearest wire", new Meant(BENCH, "cut lengths of wire are rounded up to"));
        all.put("prices opening", new Meant(RULES, "opening a full reel"));
        all.put("prices changing", new Meant(RULES, "fetching a reel"));
        all.put("prices handling", new Meant(RULES, "cutting a run off and putting it aside"));
        all.put("prices splitOrder", new Meant(RULES, "a further lot for an order"));
        all.put("prices movedPiece", new Meant(RULES, "a piece that a new plan moves"));
        all.put("interest", new Meant(RACK, "interest of a year on what is on the rack"));
        all.put("room", new Meant(RACK, "place of a coil, a week"));
        all.put("quote waste", new Meant(QUOTES, "view of the waste that is charged"));
        all.put("quote floorAtRope", new Meant(QUOTES, "no line pays less than the rope in it"));
        all.put("quote settingUp", new Meant(QUOTES, "setting up, for each line"));
        all.put("quote spoilage", new Meant(QUOTES, "share lost to work that goes wrong"));
        all.put("quote packing", new Meant(QUOTES, "packing, for each assembly"));
        all.put("quote overhead", new Meant(QUOTES, "overhead"));
        all.put("quote margin", new Meant(QUOTES, "margin"));
        all.put("quote minimum", new Meant(QUOTES, "least that a line is charged"));
        all.put("quote parts", new Meant(QUOTES, "prices of parts"));
        all.put("quote validDays", new Meant(QUOTES, "days that a price holds"));
        all.put("letter address", new Meant(QUOTES, "address of the shop"));
        all.put("letter contact", new Meant(QUOTES, "who answers"));
        all.put("letter payment", new Meant(QUOTES, "terms of payment"));
        all.put("letter delivery", new Meant(QUOTES, "terms of delivery"));
        all.put("letter before", new Meant(QUOTES, "text above the lines"));
        all.put("letter after", new Meant(QUOTES, "text below the lines"));
        all.put("letter taxes", new Meant(QUOTES, "rates of tax"));
        all.put("letter paper", new Meant(QUOTES, "size of the paper"));
        return all;
    }

    /** The page. */
    public static Document of(List<Setting> settings, String shop) {
        Map<String, Setting> said = new LinkedHashMap<>();
        settings.forEach(setting -> said.put(setting.member(), setting));
        Map<String, List<String[]>> tables = new LinkedHashMap<>();
        MEANT.forEach((member, meant) -> {
            Setting setting = said.get(member);
            if (setting != null) {
                tables.computeIfAbsent(meant.heading(), any -> new ArrayList<>())
                        .add(row(meant.words(), setting));
            }
        });
        settings.stream()
                .filter(setting -> !MEANT.containsKey(setting.member()))
                .forEach(setting -> tables.computeIfAbsent("Others", any -> new ArrayList<>())
                        .add(row("", setting)));
        Writing page = new Writing();
        page.paragraph(
                "They are changed in the file shop.json in the folder of the shop, under the name in the last column;"
                        + " the page follows when the file is saved. How each is written: docs/file-formats.md.");
        tables.forEach((heading, rows) -> {
            page.heading(heading);
            TableRows table = new TableRows(
                    Column.words("setting"), Column.words("here"), Column.words("usual"), Column.words("in shop.json"));
            rows.forEach(table::row);
            page.table(table);
        });
        return page.document().titled("Settings", "What shop.json says", shop);
    }

    private static String[] row(String words, Setting setting) {
        return new String[] {
            words, setting.says().isEmpty() ? "as usual" : setting.says(), setting.usual(), setting.member()
        };
    }
}
