package bitterend.finding;

import java.util.Comparator;

/**
 * The order in which people read ids and places: numbers inside them count as numbers, so that reel {@code E8} stands
 * before {@code E10} and {@code /ropes/2} before {@code /ropes/10}. All else goes by character code, on every machine
 * alike; ids that differ in leading zeros alone go as text. Engines break their ties by text instead.
 */
public final class NaturalOrder {
    /** Two ids; 0 for equal texts only. */
    public static final Comparator<String> IDS =
            ((Comparator<String>) NaturalOrder::byNumbers).thenComparing(Comparator.naturalOrder());

    private NaturalOrder() {}

    private static int byNumbers(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int endA = endOfNumber(a, i);
            int endB = endOfNumber(b, j);
            boolean numbers = endA > i && endB > j;
            int order = numbers
                    ? number(a.substring(i, endA), b.substring(j, endB))
                    : Character.compare(a.charAt(i), b.charAt(j));
            if (order != 0) {
                return order;
            }
            i = numbers ? endA : i + 1;
            j = numbers ? endB : j + 1;
        }
        return Integer.compare(a.length() - i, b.length() - j);
    }

    private static int endOfNumber(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    /** Digits of any length: more of them, leading zeros aside, are a larger number. */
    private static int number(String a, String b) {
        String digitsA = withoutZeros(a);
        String digitsB = withoutZeros(b);
        int longer = Integer.compare(digitsA.length(), digitsB.length());
        return longer != 0 ? longer : digitsA.compareTo(digitsB);
    }

    private static String withoutZeros(String digits) {
        int from = 0;
        while (from < digits.length() - 1 && digits.charAt(from) == '0') {
            from++;
        }
        return digits.substring(from);
    }
}
