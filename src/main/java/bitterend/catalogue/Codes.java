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

    /** The code that holds for an order: its own before the shop's; empty where none is stated. */
    public String holding(String ofOrder) {
        return ofOrder.isEmpty() ? stated : ofOrder;
    }

    /**
     * The rules of a kind that hold for all of these ends on a rope: those of the code in force, and where it has none or
     * none is stated those of every code.
     */
    public List<CodeRule> ruling(Rule rule, Rope rope, List<Termination> ends, String ofOrder) {
        List<CodeRule> ofAll = rules.stream()
                .filter(each -> each.rule() == rule && each.suits().concerns(rope))
                .filter(each -> ends.stream().allMatch(each::isFor))
                .toList();
        List<CodeRule> ofCode = ofAll.stream()
                .filter(each -> each.code().equals(holding(ofOrder)))
                .toList();
        return ofCode.isEmpty() ? ofAll : ofCode;
    }
}
