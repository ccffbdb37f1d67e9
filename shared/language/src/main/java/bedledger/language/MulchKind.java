package bedledger.language;

/** What a mulch is made of. */
public enum MulchKind {
    STRAW(false),
    HAY(false),
    LEAVES(false),
    WOOD_CHIP(false),
    GRASS(false),
    COMPOST(false),
    PAPER(false),
    POLYETHYLENE(true),
    LANDSCAPE_FABRIC(true),
    PVC(true),
    BIODEGRADABLE_FILM(true);

    private final boolean synthetic;

    MulchKind(boolean synthetic) {
        this.synthetic = synthetic;
    }

    /** Whether it is a synthetic mulch in the sense of 7 CFR 205.206(c)(6); paper is judged by 205.601(b)(2)(i) instead. */
    public boolean synthetic() {
        return synthetic;
    }
}
