package bitterend.catalogue;

import bitterend.catalogue.CodeRule.Rule;
import java.util.List;

/**
 * The codes of the regions, and which of them holds.
 *
 * @param ids every code there is
 * @param rules their rules; a shop's rows come first
 * @param stated the code that holds in the shop; empty where none is stated, and of all rules the larger holds
 */
public record Codes(List<String> ids, List<CodeRule> rules, String stated) {
    public static final Codes NONE = new Codes(List.of(), List.of(), "");

    public Codes {
        ids = List.copyOf(ids);
        rules = List.copyOf(rules);
    }

    /** The same where this code holds. */
    public Codes stating(String code) {
        return new Codes(ids, rules, code);
    }

    public boolean knows(String code) {
        return ids.contains(code);
    }

    /** The rules of a kind that hold on a rope; an order's own code comes before the shop's. */
    public List<CodeRule> holding(Rule rule, Rope rope, String ofOrder) {
        String code = ofOrder.isEmpty() ? stated : ofOrder;
        return rules.stream()
                .filter(each -> each.rule() == rule && each.suits().admits(rope))
                .filter(each -> code.isEmpty() || each.code().equals(code))
                .toList();
    }
}
