package bitterend.demand.calibration;

import bitterend.demand.Assembly;
import bitterend.measure.Written;

/**
 * One finished assembly as the shop measured it.
 *
 * @param id name of it, for people
 * @param assembly its rope, ends and finished length, and how that length was measured
 * @param cut the length it was cut to, as it was typed
 * @param beddedIn whether it had been loaded before it was measured
 * @param splicer who made it; empty when not noted
 * @param minutes how long that took; 0 when not noted
 */
public record MeasuredAssembly(
        String id, Assembly assembly, Written cut, boolean beddedIn, String splicer, int minutes) {}
