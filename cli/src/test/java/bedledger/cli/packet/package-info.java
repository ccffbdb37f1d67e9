@NullMarked
package bedledger.cli.packet;

import org.jspecify.annotations.NullMarked;
