package bitterend.quoting;

import bitterend.measure.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * What a shop says on every quote beside its prices. Nothing of it is built in: no country's tax, nobody's terms.
 *
 * @param address of the shop, a line each; empty when not stated
 * @param contact who answers, and how; empty when not stated
 * @param terms how it is paid and delivered
 * @param own texts of the shop's own
 * @param taxes rates of tax, the usual one first; empty where prices are printed before tax alone
 * @param paper size of the paper, {@code A4} or {@code Letter}; empty for the usual
 */
public record Letter(
        List<String> address, String contact, Terms terms, OwnTexts own, List<TaxRate> taxes, String paper) {
    /** A shop that states nothing. */
    public static final Letter NONE = new Letter(List.of(), "", new Terms("", ""), new OwnTexts("", ""), List.of(), "");

    public Letter {
        address = List.copyOf(address);
        taxes = List.copyOf(taxes);
    }

    /**
     * How a job is paid and delivered, in the shop's words.
     *
     * @param payment empty when not stated
     * @param delivery empty when not stated
     */
    public record Terms(String payment, String delivery) {}

    /**
     * Texts of the shop's own.
     *
     * @param before above the lines; empty for none
     * @param after below them; empty for none
     */
    public record OwnTexts(String before, String after) {}

    /**
     * A rate of tax.
     *
     * @param name as printed, and as lines name it
     * @param rate share of the price before tax; not negative
     */
    public record TaxRate(String name, Ratio rate) {
        /** What a line or a customer names that pays no tax. */
        public static final String NO_TAX = "none";

        public TaxRate {
            if (name.isBlank() || rate.isNegative()) {
                throw new IllegalArgumentException("tax " + name + " of " + rate);
            }
        }
    }

    /** The rate of that name. */
    public Optional<TaxRate> findTax(String name) {
        return taxes.stream().filter(rate -> rate.name().equals(name)).findFirst();
    }
}
