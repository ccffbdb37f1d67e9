package bedledger.projections.returned;

/** What kind of matter went back. */
public enum SourceKind {
    CROP_SHOOTS("crop shoots"),
    CROP_ROOTS("crop roots"),
    COVER_SHOOTS("cover-crop shoots"),
    COVER_ROOTS("cover-crop roots"),
    COMPOST("compost"),
    MANURE("manure"),
    MATERIAL("listed material"),
    MULCH("mulch");

    private final String words;

    SourceKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public boolean isShoots() {
        return this == CROP_SHOOTS || this == COVER_SHOOTS;
    }

    public boolean isRoots() {
        return this == CROP_ROOTS || this == COVER_ROOTS;
    }
}
