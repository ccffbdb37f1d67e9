/**
 * The audit report: one HTML file without scripts or requests, well-formed as XML, written as it is worked out.
 *
 * <p>Whatever it says links to the entries it rests on, in a register at its end. Text goes through the templates' escaping, always.
 */
@NullMarked
package bedledger.cli.report;

import org.jspecify.annotations.NullMarked;
