/**
 * The reference tables, each at an edition, each value with its range, status and source.
 * Numbers live in the CSV resources of this package; a source sheet beside each says where they were read.
 */
@NullMarked
package bedledger.projections.tables;

import org.jspecify.annotations.NullMarked;
