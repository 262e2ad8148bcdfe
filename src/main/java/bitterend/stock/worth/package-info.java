/** What a coil on the rack is worth: what it saves later, less interest and room until then. */
@NullMarked
package bitterend.stock.worth;

import org.jspecify.annotations.NullMarked;
