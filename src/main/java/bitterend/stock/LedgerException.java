package bitterend.stock;

/** The ledger cannot be used as asked. The message is a sentence for the user; nothing was written. */
public class LedgerException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String sentence;

    public LedgerException(String sentence) {
        super(sentence);
        this.sentence = sentence;
    }

    public LedgerException(String sentence, Throwable cause) {
        super(sentence, cause);
        this.sentence = sentence;
    }

    /** What is wrong, for the user. */
    public String sentence() {
        return sentence;
    }

    /** The file is not a ledger, is damaged, or was made by a newer version of the program. */
    public static final class Unreadable extends LedgerException {
        private static final long serialVersionUID = 1;

        public Unreadable(String message, Throwable cause) {
            super(message, cause);
        }

        public Unreadable(String message) {
            super(message);
        }
    }

    /** The file cannot be written: no room, no right, or others keep it busy. */
    public static final class Unwritable extends LedgerException {
        private static final long serialVersionUID = 1;

        public Unwritable(String message, Throwable cause) {
            super(message, cause);
        }
    }

    /** What is asked for does not go with the stock as it is. */
    public static final class Refused extends LedgerException {
        private static final long serialVersionUID = 1;

        public Refused(String message) {
            super(message);
        }
    }

    /** What was asked for contradicts itself, or needs a word more. */
    public static final class Contradictory extends LedgerException {
        private static final long serialVersionUID = 1;

        public Contradictory(String message) {
            super(message);
        }
    }

    /** Reels have changed since a plan saw them. */
    public static final class StockChanged extends LedgerException {
        private static final long serialVersionUID = 1;

        public StockChanged(String message) {
            super(message);
        }
    }
}
