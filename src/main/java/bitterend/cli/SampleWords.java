package bitterend.cli;

import java.util.Map;
import java.util.Optional;

/** What the capital words of a command line mean, and one of each as it could be typed. */
final class SampleWords {
    private record Word(String meaning, String sample) {}

    private static final Map<String, Word> WORDS = Map.ofEntries(
            word("SHOP", "the shop folder", "demo-data/eider-shed"),
            word("PLAN", "the plan", "12"),
            word("REEL", "the reel", "R-105"),
            word("NEW-REEL", "the new reel", "R-106"),
            word("ROPE", "the rope", "LAID-14"),
            word("LENGTH", "the length", "\"60 m\""),
            word("MASS", "the mass", "\"96.4 kg\""),
            word("ORDER", "the order", "1041"),
            word("ORDER/LINE", "the order line", "1041/3"),
            word("SET", "the set", "1041/3"),
            word("PIECE", "the piece", "1041/3.2"),
            word("PIECE=LENGTH", "the piece and its length", "\"1041/3.2=16.95 m\""),
            word("REEL=LENGTH", "the reel and its length", "\"R-105=16.95 m\""),
            word("ORDER=DAYS", "the order of rope and its delay", "P-88=3"),
            word("SPARE", "the spare piece", "S-1"),
            word("FLAW", "the flaw", "\"20 m to 21 m: chafed\""),
            word("FLAWS", "the flaws", "\"20 m to 21 m: chafed\""),
            word("PLACE", "the place", "\"hook 2\""),
            word("LOFT", "the loft", "\"North Quay\""),
            word("LOT", "the lot", "12"),
            word("EVENT", "the event", "7"),
            word("DATE", "the day", "2026-03-02"),
            word("TIME", "the time", "10s"),
            word("NUMBER", "the number", "4"),
            word("COUNTS", "the quantities", "1,2,5,10"),
            word("PERCENT", "the share", "\"2 %\""),
            word("SHARE", "the share of the pieces", "\"97 %\""),
            word("FACTOR", "the factor", "0.262"),
            word("FOLDER", "the folder", "pictures"),
            word("FILE", "the file", "new-file"),
            word("ANSWER", "the answer", "days=day-first"),
            word("QUOTE", "the quote", "Q-2601"),
            word("REQUEST", "the request", "request.csv"),
            word("HEAD", "the head", "3f2a9b7c1d2e.41.9c1e7d0a5b6c7d8e"),
            word("ID", "the id", "1041/3.2"),
            word("I/N", "the share", "1/4"),
            word("CODE", "the currency", "EUR"),
            word("MONEY", "the sum", "45"),
            word("AMOUNT", "the sum", "\"24 EUR\""),
            word("PRICE", "the price", "\"2.50 EUR/m\""),
            word("SYSTEM", "the units", "metric"),
            word("TOOLS", "the tools", "metric"),
            word("FID", "the fid", "\"12 mm: 95 mm + 165 mm\""),
            word("NAME", "the name", "\"the day shift\""),
            word("TEXT", "the words", "\"as the customer asked\""),
            word("MINUTES", "the minutes", "75"),
            word("WHY", "the reason", "\"lot test\""),
            word("HOW", "how", "counted"),
            word("KINDS", "the kinds of rope", "laid,braid"),
            word("KIND", "the kind", "3.1"),
            word("LEVEL", "the effort", "quick"),
            word("SIZE", "the size", "A4"),
            word("TYPE", "the type", "drum"),
            word("WHAT", "what", "due"),
            word("PORT", "the port", "7411"),
            word("ADDRESS", "the address", "192.168.1.20"),
            word("PART", "the part", "tables"));

    private SampleWords() {}

    private static Map.Entry<String, Word> word(String label, String meaning, String sample) {
        return Map.entry(label, new Word(meaning, sample));
    }

    /** Whether there is a sample. */
    static boolean has(String label) {
        return WORDS.containsKey(label);
    }

    /** What the word stands for, as in "name the reel". */
    static String meaning(String label) {
        return Optional.ofNullable(WORDS.get(label)).map(Word::meaning).orElse(label);
    }

    /** One as it could be typed. */
    static String sample(String label) {
        return Optional.ofNullable(WORDS.get(label)).map(Word::sample).orElse(label);
    }
}
