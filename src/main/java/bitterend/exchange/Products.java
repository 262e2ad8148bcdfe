package bitterend.exchange;

import java.util.List;
import java.util.Optional;

/**
 * The standard products of a shop.
 *
 * @param all every product once
 * @param known whether there is a file of them; without one a product is only a name for people
 */
record Products(List<Product> all, boolean known) {
    static final Products NONE = new Products(List.of(), false);

    Products {
        all = List.copyOf(all);
    }

    Optional<Product> find(String id) {
        return all.stream().filter(product -> product.id().equals(id)).findFirst();
    }
}
