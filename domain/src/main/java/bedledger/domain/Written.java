package bedledger.domain;

import bedledger.language.Entry;
import java.util.List;

/**
 * What a commit wrote, and what follows from it.
 *
 * @param entries the entries, as they stand in the book
 * @param says sentences for the writer: crops that the work ended, earlier-written entries that no longer fit
 */
public record Written(List<Entry> entries, List<String> says) {}
