package bitterend.day;

import bitterend.measure.Length;
import bitterend.stock.Ordered;
import bitterend.stock.Reel;

/**
 * A good cut piece that no order wants any more.
 *
 * @param piece the id it was cut under
 * @param length how long it is
 * @param reel the reel it was cut off, as it was then: its rope, lot and papers are those of the piece
 * @param ordered what it was cut for
 * @param declared whether a person made it spare; else the order book does not ask for it any more
 */
public record SparePiece(String piece, Length length, Reel reel, Ordered ordered, boolean declared) {}
