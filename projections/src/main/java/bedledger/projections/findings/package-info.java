/**
 * What the rule books say of a book: one small rule a class, each with its sentence, citation and examples in a text sheet beside it. A
 * burdening fact always counts; a relieving one only where it fits the timeline it stands in.
 */
@NullMarked
package bedledger.projections.findings;

import org.jspecify.annotations.NullMarked;
