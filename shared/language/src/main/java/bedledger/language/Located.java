package bedledger.language;

/** Part of a fact that lies in a place. */
public interface Located {
    Place place();
}
