/** Quotes that are kept: files by number and revision, written once, and what happened to them. */
@NullMarked
package bitterend.exchange.quotes;

import org.jspecify.annotations.NullMarked;
