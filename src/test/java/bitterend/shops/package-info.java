/** Random shops with everything a bench can throw at a packer, and plain ways to plan them that share nothing with the engines. */
@NullMarked
package bitterend.shops;

import org.jspecify.annotations.NullMarked;
