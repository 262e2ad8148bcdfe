package bitterend.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * What a shop knows about making ends.
 *
 * @param thimbles linings for eyes
 * @param fittings metal ends
 */
public record SpliceBook(List<Thimble> thimbles, List<Fitting> fittings) {
    public SpliceBook {
        thimbles = List.copyOf(thimbles);
        fittings = List.copyOf(fittings);
    }

    public Optional<Thimble> findThimble(String id) {
        return thimbles.stream().filter(thimble -> thimble.id().equals(id)).findFirst();
    }

    public Optional<Fitting> findFitting(String id) {
        return fittings.stream().filter(fitting -> fitting.id().equals(id)).findFirst();
    }
}
