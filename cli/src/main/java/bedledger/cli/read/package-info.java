@NullMarked
package bedledger.cli.read;

import org.jspecify.annotations.NullMarked;
