package bedledger.ledger.tree;

/** Gives the leaf hash at an index counted from 0, the entry number less one. */
@FunctionalInterface
public interface LeafSource {

    /** The leaf hash at this index; called at most once for each index in one proof, in no promised order. */
    Hash leaf(long index);
}
