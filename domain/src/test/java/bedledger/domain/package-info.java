/** What may be written, and what may not: real books in temporary folders. */
@NullMarked
package bedledger.domain;

import org.jspecify.annotations.NullMarked;
