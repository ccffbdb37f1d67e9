/** What the record gives to other programs, in open standards. */
@NullMarked
package bedledger.cli.exchange;

import org.jspecify.annotations.NullMarked;
