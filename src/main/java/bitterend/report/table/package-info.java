/** Tables for spreadsheets: values that can be added up and sorted, written as workbooks and CSV files. */
@NullMarked
package bitterend.report.table;

import org.jspecify.annotations.NullMarked;
