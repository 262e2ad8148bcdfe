/** A page as a document, before it is set: headings, paragraphs, tables, cautions, pictures; and its setting as text. */
@NullMarked
package bitterend.report.page;

import org.jspecify.annotations.NullMarked;
