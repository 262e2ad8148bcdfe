package bitterend.exchange.mapping;

import bitterend.catalogue.Catalogue;
import bitterend.exchange.form.LocalForm;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;

/**
 * What the shop knows already, for a sheet to be read by.
 *
 * @param catalogue its ropes and ends
 * @param units what it measures in
 * @param money its currency
 * @param form how it types days and figures, where that is stated
 */
public record Known(Catalogue catalogue, Units units, MoneyText money, LocalForm form) {}
