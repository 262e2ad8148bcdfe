/** What people read: pages of text, later sheets to print. Knows no file and no stream. */
@NullMarked
package bitterend.report;

import org.jspecify.annotations.NullMarked;
