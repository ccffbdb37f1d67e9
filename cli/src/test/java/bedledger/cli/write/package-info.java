@NullMarked
package bedledger.cli.write;

import org.jspecify.annotations.NullMarked;
