package bedledger.language;

/** Something that has a timeline of its own. */
public sealed interface Place extends Value
        permits BedId, FieldId, PileId, SeedLotId, TrayId, MaterialName, LotId, SampleId {
    String name();

    /** Tells places of different kinds with the same name apart, as in {@code bed:R1}; used as an index key. */
    default String key() {
        String kind = getClass().getSimpleName().replace("Id", "").replace("Name", "");
        return kind.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + kind.substring(1) + ":" + this;
    }
}
