/**
 * Reports on paper: a page of the report, well-formed XHTML, as a tagged PDF with its font in it (PDF/A and PDF/UA-1).
 *
 * <p>Nothing here is loaded by any other command. A report hands in its page, its drawings by their ids, and a style sheet of CSS 2.1.
 */
@NullMarked
package bedledger.cli.paper;

import org.jspecify.annotations.NullMarked;
