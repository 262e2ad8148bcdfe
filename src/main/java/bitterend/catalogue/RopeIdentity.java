package bitterend.catalogue;

import bitterend.measure.Diameter;

/**
 * What makes two ropes the same rope. Empty text where the maker states nothing.
 *
 * @param construction how the strands are put together
 * @param fibre what carries the load
 * @param core core material or kind
 * @param grade strength grade
 * @param diameter nominal diameter
 * @param lay direction of lay
 * @param finish coating, galvanising, heat setting
 * @param colour colour of the rope
 * @param tracer coloured marker yarn
 */
public record RopeIdentity(
        Construction construction,
        Fibre fibre,
        String core,
        String grade,
        Diameter diameter,
        Lay lay,
        String finish,
        String colour,
        String tracer) {}
