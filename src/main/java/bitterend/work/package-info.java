/**
 * What the program does, for any front end: one class for each verb, a record in, a sealed result out. It knows no command
 * line, no page and no shape of a file.
 */
@NullMarked
package bitterend.work;

import org.jspecify.annotations.NullMarked;
