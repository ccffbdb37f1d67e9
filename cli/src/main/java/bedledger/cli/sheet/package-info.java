/** Reads a grower's spreadsheet, one row per act, as CSV (RFC 4180). */
@NullMarked
package bedledger.cli.sheet;

import org.jspecify.annotations.NullMarked;
