/** The command line: reads the request, wires the rooms, prints the answer, sets the exit code. */
@NullMarked
package bitterend.cli;

import org.jspecify.annotations.NullMarked;
