@NullMarked
package bedledger.cli.start;

import org.jspecify.annotations.NullMarked;
