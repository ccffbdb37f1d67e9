@NullMarked
package bedledger.language;

import org.jspecify.annotations.NullMarked;
