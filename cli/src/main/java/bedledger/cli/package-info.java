@NullMarked
package bedledger.cli;

import org.jspecify.annotations.NullMarked;
