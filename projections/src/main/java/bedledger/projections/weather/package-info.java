/**
 * A farm's daily weather: what the book notes, what files beside it hold, and what stands in where neither does.
 *
 * <p>For each day the first that knows it is taken: the book's own notes, CSV files, GHCN-Daily files, monthly normals, the
 * mean of the same days in the years known. Minimum and maximum come from one place; rain may come from another. Nothing
 * here reads a folder: files are handed in as text.
 */
@NullMarked
package bedledger.projections.weather;

import org.jspecify.annotations.NullMarked;
