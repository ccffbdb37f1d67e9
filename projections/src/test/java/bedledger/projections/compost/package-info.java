@NullMarked
package bedledger.projections.compost;

import org.jspecify.annotations.NullMarked;
