package bitterend.catalogue;

import bitterend.measure.FineLength;

/**
 * The full tubular fid of a rope. A wire fid is half of it.
 *
 * @param length the whole fid
 * @param shortSection its short section
 * @param provenance where these lengths come from
 */
public record Fid(FineLength length, FineLength shortSection, Provenance provenance) {}
