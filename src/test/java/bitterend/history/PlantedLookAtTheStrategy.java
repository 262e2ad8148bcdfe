package bitterend.history;

import bitterend.packing.strategy.FullStrategy;

/** A breach that the test of the architecture must find: history knows no engine. */
public record PlantedLookAtTheStrategy(FullStrategy strategy) {}
