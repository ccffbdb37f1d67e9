/** What is due or not to be done yet, as a tired person needs it. */
@NullMarked
package bedledger.cli.due;

import org.jspecify.annotations.NullMarked;
