/** The packet that a farm hands to its certifier, and the inspection that believes nothing in it but the lines and the signature. */
@NullMarked
package bedledger.cli.packet;

import org.jspecify.annotations.NullMarked;
