/** Take-up learned from assemblies that the shop has cut, made and measured. */
@NullMarked
package bitterend.demand.calibration;

import org.jspecify.annotations.NullMarked;
