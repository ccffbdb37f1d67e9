/**
 * Hours of work as far as they were recorded, and what residue left in place saved against hauling it off.
 *
 * <p>Work on several beds is shared by area. A step whose people and minutes are not both on record is counted, never guessed.
 */
@NullMarked
package bedledger.projections.hours;

import org.jspecify.annotations.NullMarked;
