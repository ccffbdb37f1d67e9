/**
 * Charts: drawn by JFreeChart, told apart by letters and hatching before colour, and written as SVG with their words as words.
 *
 * <p>The same drawing goes on the page and on paper. Nothing random and no date goes into one, and its letters are measured in the
 * font that comes with the program, so the same figures give the same bytes.
 */
@NullMarked
package bedledger.cli.chart;

import org.jspecify.annotations.NullMarked;
