package bitterend.buying;

import bitterend.quoting.Quote;

/** A breach that the test of the architecture must find: buying knows no quotes. */
public record PlantedLookAtQuotes(Quote quote) {}
