package bedledger.language;

/**
 * Why an entry cannot be, given what stands before it in one place.
 *
 * @param place the place whose timeline it does not fit
 * @param why what it conflicts with
 * @param wayOut what to write instead
 */
public record Misfit(Place place, String why, String wayOut) {
    public Problem as(String what) {
        return new Problem(what, place.toString(), why, wayOut);
    }
}
