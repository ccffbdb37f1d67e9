/** What the program hands out, held against the standards it is said to keep, each named beside its test. */
@NullMarked
package bedledger.cli.outside;

import org.jspecify.annotations.NullMarked;
