@NullMarked
package bedledger.cli.report;

import org.jspecify.annotations.NullMarked;
