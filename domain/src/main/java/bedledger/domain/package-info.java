@NullMarked
package bedledger.domain;

import org.jspecify.annotations.NullMarked;
