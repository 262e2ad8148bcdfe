package bitterend.day;

import bitterend.measure.Length;
import bitterend.stock.Ordered;
import bitterend.stock.Reel;

/**
 * A good cut piece that no order wants any more.
 *
 * @param piece its name: one of its own, or the id it was cut under while no person made it spare
 * @param cutAs the id it was wanted under last
 * @param length how long it is
 * @param reel the reel it was cut off, with the lot, papers and custody that it has today: they are those of the piece
 * @param ordered what it was cut for
 * @param declared whether a person made it spare; else the order book does not ask for it any more
 */
public record SparePiece(String piece, String cutAs, Length length, Reel reel, Ordered ordered, boolean declared) {}
