package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Ratio;
import bitterend.packing.ShopCalendar;
import java.time.Duration;

/**
 * What an advice rests on beside orders, rack and offers.
 *
 * @param time it was searched no longer than this
 * @param spending how far the shop may go
 * @param interest of a year on rope that lies on the rack
 * @param room what the place of one coil costs a week
 * @param lateness how much later than their suppliers say reels usually come
 */
public record Assumed(Duration time, Spending spending, Ratio interest, Cost room, ShopCalendar.Ahead lateness) {}
