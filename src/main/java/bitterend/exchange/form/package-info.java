/** Forms of files: fields of JSON and CSV read with located findings, and written; nothing of what they mean. */
@NullMarked
package bitterend.exchange.form;

import org.jspecify.annotations.NullMarked;
