package bedledger.language;

/**
 * The usual cautions where work can hurt someone; shown as the act is recorded or planned.
 *
 * <p>They stand beside, never above, the maker's manual, the label, local rules and the certifier. Sources: 29 CFR 1928.57(a)(6)
 * (guards, engine off and coasting parts, bystanders); Ohio State University Extension AEX-591.2.11 (thrown objects); the rest is
 * common practice, no source.
 */
public enum Caution {
    NONE(""),
    FLAIL(
            "Clear drip lines, staples, twine and stones first. Keep people and animals well away. Engine off and everything"
                    + " stopped before you clear a jam. Take care on wet slopes and in reverse. The machine's manual comes first."),
    TILL(
            "Feet clear of the tines, slowly in reverse, never tie down the hold-to-run control. Engine off and everything stopped"
                    + " before you clear a jam. The machine's manual comes first."),
    TARP(
            "Wind takes a tarp: lift and weight it together. Wet film is slippery, black film is hot, and folded film with water on"
                    + " it is heavy."),
    MANURE(
            "Gloves, and a mask against dust. Change boots and clean tools before you harvest. Manure, hay and straw can carry"
                    + " herbicide: ask, or grow a test pot first. Ask your certifier where in doubt."),
    COMPOST(
            "Steam and hot cores burn, dust and moulds harm lungs: gloves, and a mask when turning. Boots and tools clean before"
                    + " you harvest. Lift with someone."),
    SPRAY(
            "The label is the law: protection, wind, re-entry and pre-harvest intervals. Licensed people only where the law asks"
                    + " for it."),
    FLAME(
            "Dry residue, tarps and mulch catch fire: water at hand, no wind, nobody alone. Local fire rules come first."),
    SANITIZER(
            "Follow the label: never mix sanitizers, never chlorine with acid. Gloves, eye protection and fresh air; read the"
                    + " strength before the produce goes in. Ask your certifier which product and strength."),
    DRYING(
            "Do not leave an oven or microwave with a sample unattended: dry leaves catch fire. Use dishes that never go back to"
                    + " the kitchen.");

    private final String words;

    Caution(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
