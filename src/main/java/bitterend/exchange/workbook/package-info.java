/** Workbooks of spreadsheet programs (.xlsx) as sheets of rows of cells: nothing is unpacked to disk, and nothing in one is run. */
@NullMarked
package bitterend.exchange.workbook;

import org.jspecify.annotations.NullMarked;
