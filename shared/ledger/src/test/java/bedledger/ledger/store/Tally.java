package bedledger.ledger.store;

import java.util.List;

/** What came out of a number of kills. */
final class Tally {
    int kills;
    int verified;
    long acknowledged;
    long lost;
    long changed;
    long halfWritten;
    /** Openings that found the database behind, incomplete or unreadable, and brought it up from the journal. */
    int healed;
    /** Clean closes of a database that reuses its space, after which H2 came back without its last rows. */
    int lostOnClosing;
    /** Openings that found the end of the journal unfinished. */
    int cutShort;

    void heal(List<String> reports) {
        healed += (int) reports.stream().filter(Tally::isOfTheDatabase).count();
        cutShort += (int)
                reports.stream().filter(report -> !isOfTheDatabase(report)).count();
    }

    static boolean isOfTheDatabase(String report) {
        return report.startsWith("The database");
    }

    @Override
    public String toString() {
        return kills + " kills, " + acknowledged + " entries acknowledged, " + lost + " lost, " + changed
                + " changed, " + halfWritten + " acts half-written, " + verified + " times verified, " + healed
                + " times healed from the journal, " + lostOnClosing + " times again after a clean close, " + cutShort
                + " times an unfinished end set aside";
    }
}
