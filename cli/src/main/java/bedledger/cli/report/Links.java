package bedledger.cli.report;

import bedledger.language.BedId;
import bedledger.language.LotId;
import bedledger.language.PileId;
import bedledger.language.Place;
import bedledger.language.SeedLotId;
import bedledger.language.TrayId;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Anchors of the report, and links to them.
 *
 * @param last the number of the last entry in the register
 * @param shown the places that have a heading or a row of their own
 */
record Links(long last, Set<Place> shown) {
    private static final Pattern ENTRY = Pattern.compile("#([1-9][0-9]{0,17})(?![0-9])");

    Links {
        shown = Set.copyOf(shown);
    }

    static String anchor(long entry) {
        return "entry-" + entry;
    }

    static String anchor(Place place) {
        if (place instanceof BedId) {
            return "bed-" + place.name();
        }
        if (place instanceof PileId) {
            return "pile-" + place.name();
        }
        if (place instanceof LotId lot) {
            return "lot-" + lot.year() + "-" + lot.name();
        }
        if (place instanceof SeedLotId) {
            return "seed-" + place.name();
        }
        if (place instanceof TrayId) {
            return "trays-" + place.name();
        }
        throw new IllegalArgumentException(place.key() + " has no anchor");
    }

    Phrase entry(long number) {
        return number >= 1 && number <= last
                ? Phrase.link("#" + number, anchor(number))
                : Phrase.of("#" + number + " (written later)");
    }

    Phrase entries(Collection<Long> numbers) {
        return Phrase.joined(numbers.stream().map(this::entry).toList(), " ");
    }

    Phrase place(Place place) {
        return shown.contains(place) ? Phrase.link(place.toString(), anchor(place)) : Phrase.of(place.toString());
    }

    Phrase places(Collection<? extends Place> places) {
        return Phrase.joined(places.stream().map(this::place).toList(), " ");
    }

    /** A sentence of the program's, its entry numbers made into links. */
    Phrase linked(String sentence) {
        Phrase linked = Phrase.NONE;
        Matcher numbers = ENTRY.matcher(sentence);
        int done = 0;
        while (numbers.find()) {
            linked = linked.plus(sentence.substring(done, numbers.start()))
                    .plus(entry(Long.parseLong(numbers.group(1))));
            done = numbers.end();
        }
        return linked.plus(sentence.substring(done));
    }

    List<Phrase> linked(Collection<String> sentences) {
        return sentences.stream().map(this::linked).toList();
    }
}
