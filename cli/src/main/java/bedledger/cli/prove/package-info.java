@NullMarked
package bedledger.cli.prove;

import org.jspecify.annotations.NullMarked;
