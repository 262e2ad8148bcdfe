package bitterend.catalogue;

import java.util.List;
import java.util.Locale;

/**
 * Where an end is dangerous: refused for lifting, warned of otherwise.
 *
 * @param suits the ropes on which it is
 * @param cores words for their core, one of which it has; empty for any core
 * @param coresOtherThan words for cores on which it is none; it is on any other, a core that is not stated too; empty to ask
 *     nothing
 * @param when under which conditions
 * @param because the reason, to follow a colon
 * @param instead which end does, or that none does
 * @param provenance where that comes from
 */
public record Danger(
        Suits suits,
        List<String> cores,
        List<String> coresOtherThan,
        When when,
        String because,
        String instead,
        Provenance provenance) {
    public Danger {
        cores = lower(cores);
        coresOtherThan = lower(coresOtherThan);
    }

    /** Under which conditions an end is dangerous. */
    public enum When {
        /** For lifting refused, otherwise warned of. */
        LIFTING("lifting"),
        /** Refused for every use. */
        ALWAYS("always"),
        /** On rope that has been used, such as a customer's own: for lifting refused, otherwise warned of. */
        USED_ROPE("used rope"),
        /** Where the load can turn; refused there. */
        TURNING_LOAD("turning load");

        private final String word;

        When(String word) {
            this.word = word;
        }

        /** The word used in files. */
        public String word() {
            return word;
        }
    }

    /** Whether it holds on a rope, used or new, under a load that can turn or not. */
    public boolean holds(Rope rope, boolean used, boolean turning) {
        return suits.concerns(rope)
                && (when != When.USED_ROPE || used)
                && (when != When.TURNING_LOAD || turning)
                && (cores.isEmpty() || isOneOf(cores, rope.identity().core()))
                && (coresOtherThan.isEmpty()
                        || !isOneOf(coresOtherThan, rope.identity().core()));
    }

    private static List<String> lower(List<String> words) {
        return words.stream().map(word -> word.toLowerCase(Locale.ROOT)).toList();
    }

    private static boolean isOneOf(List<String> words, String core) {
        return List.of(core.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")).stream()
                .anyMatch(words::contains);
    }

    /** What would do, why, and where that is from. */
    public String words() {
        String source = provenance.source().isEmpty() ? provenance.grade().words() : provenance.source();
        return instead + ": " + because + " (" + source + ")";
    }
}
