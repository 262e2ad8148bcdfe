package bitterend.stock;

import java.util.List;
import java.util.function.Function;

/** The other lofts whose ledgers are kept on the same server. Asked inside of a reading or a change of the own ledger. */
public interface Neighbours {
    /** A ledger that has none: a file. */
    Neighbours NONE = new Neighbours() {
        @Override
        public String own() {
            return "";
        }

        @Override
        public List<String> names() {
            return List.of();
        }

        @Override
        public <T> T read(String loft, Function<Ledger.Stock, T> question) {
            throw new IllegalArgumentException("no loft " + loft);
        }
    };

    /** The name of the own loft among them; empty where the ledger is a file. */
    String own();

    /** The names of the others, sorted. */
    List<String> names();

    /** Asks another loft something. */
    <T> T read(String loft, Function<Ledger.Stock, T> question);
}
