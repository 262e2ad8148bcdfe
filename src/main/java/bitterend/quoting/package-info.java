/** What an assembly costs with the waste it causes, and the price the shop asks for it. */
@NullMarked
package bitterend.quoting;

import org.jspecify.annotations.NullMarked;
