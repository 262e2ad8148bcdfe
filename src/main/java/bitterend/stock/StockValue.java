package bitterend.stock;

import bitterend.measure.Cost;
import bitterend.measure.Length;

/** What a length of rope on the rack is worth. Never falls with length; cutting a length up never creates value. */
@FunctionalInterface
public interface StockValue {
    /** The customer's own rope: worth nothing to the shop. */
    StockValue NOTHING = length -> Cost.ZERO;

    /** The worth of one run of this length; zero for what is scrap. */
    Cost of(Length length);
}
