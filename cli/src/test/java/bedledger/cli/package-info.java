/** The program as people use it: commands in, what is said and what is in the book out. */
@NullMarked
package bedledger.cli;

import org.jspecify.annotations.NullMarked;
