@NullMarked
package bedledger.projections.findings;

import org.jspecify.annotations.NullMarked;
