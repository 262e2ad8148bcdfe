package bitterend.quoting;

import bitterend.measure.Units;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Whom a quote goes to, beside the name.
 *
 * @param number the shop's number for the customer; empty when there is none
 * @param address a line each; empty when not stated
 * @param contact who asked; empty when not stated
 * @param tax rate of tax of every line that names none; empty for the shop's usual one
 * @param payment terms of payment; empty for those of the shop
 * @param units in which the customer's page is; null for those of the shop
 */
public record Recipient(
        String number, List<String> address, String contact, String tax, String payment, @Nullable Units units) {
    /** Nothing is known of the customer but the name. */
    public static final Recipient UNKNOWN = new Recipient("", List.of(), "", "", "", null);

    public Recipient {
        address = List.copyOf(address);
    }

    /** This, and what it leaves open as another states it. */
    public Recipient completedBy(Recipient other) {
        return new Recipient(
                number.isEmpty() ? other.number : number,
                address.isEmpty() ? other.address : address,
                contact.isEmpty() ? other.contact : contact,
                tax.isEmpty() ? other.tax : tax,
                payment.isEmpty() ? other.payment : payment,
                units == null ? other.units : units);
    }

    /** In which units the customer's page is; nothing for those of the shop. */
    public Optional<Units> findUnits() {
        return Optional.ofNullable(units);
    }

    /** The terms of payment of this customer, else those of the shop. */
    public String payment(Letter letter) {
        return payment.isEmpty() ? letter.terms().payment() : payment;
    }
}
