/** What is not in the book, in the order an inspector reads, each with the command that would answer it. */
@NullMarked
package bedledger.projections.gaps;

import org.jspecify.annotations.NullMarked;
