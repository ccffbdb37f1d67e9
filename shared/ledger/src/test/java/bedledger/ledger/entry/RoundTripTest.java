package bedledger.ledger.entry;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import bedledger.language.ActId;
import bedledger.language.ActKind;
import bedledger.language.Acts;
import bedledger.language.Ask;
import bedledger.language.BookKeeping;
import bedledger.language.Entry;
import bedledger.language.Fact;
import bedledger.language.Head;
import bedledger.language.PersonId;
import bedledger.ledger.json.CanonicalJson;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written is read again as it was, in every kind there is. */
class RoundTripTest {
    static Stream<String> kinds() {
        return Acts.all().stream().map(ActKind::name);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void readsEveryKindAsItWasWritten(String name) {
        ActKind kind = Acts.byName(name).orElseThrow();
        for (Head head : List.of(Filled.plainHead(), Filled.fullHead())) {
            Entry entry = entry(head, Filled.fact(kind));
            byte[] line = Line.write(entry);
            assertThat(CanonicalJson.isCanonical(line)).isTrue();
            assertThat(Line.read(line)).isEqualTo(entry);
            assertThat(Line.write(Line.read(line))).isEqualTo(line);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void writesEveryFieldAndNothingForWhatWasNotRecorded(String name) {
        ActKind kind = Acts.byName(name).orElseThrow();
        Fact full = Filled.fact(kind);
        ObjectNode payload = DeedCodec.write(new Deed(Filled.plainHead(), full));
        for (Ask ask : kind.asks()) {
            assertThat(payload.has(ask.name())).as(ask.name()).isTrue();
        }
        Map<String, Object> required = kind.asks().stream()
                .filter(Ask::required)
                .collect(Collectors.toMap(Ask::name, ask -> Objects.requireNonNull(ask.in(full))));
        Deed bare = new Deed(Filled.plainHead(), kind.make(required));
        ObjectNode barePayload = DeedCodec.write(bare);
        assertThat(names(barePayload))
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(Stream.of("doneOn", "placeInDay"), required.keySet().stream())
                                .toList());
        assertThat(DeedCodec.read(name, kind.revision(), barePayload)).isEqualTo(bare);
    }

    /** Head and fact share one object, so a fact with a field of the head's name would overwrite it unseen. */
    @Test
    void givesNoFactAFieldThatTheHeadHas() {
        List<String> head = names(HeadCodec.write(Filled.fullHead()));
        assertThat(head)
                .as("what the head is stored as")
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(Head.class.getRecordComponents())
                        .map(RecordComponent::getName)
                        .toList());
        for (ActKind kind : Acts.all()) {
            assertThat(kind.asks()).extracting(Ask::name).as(kind.name()).doesNotContainAnyElementsOf(head);
        }
        assertThat(Acts.all()).hasSizeGreaterThan(50);
    }

    @Test
    void spellsALineOutInFull() {
        Entry entry = new Entry(
                12,
                new ActId("01900000-0000-7000-8000-00000000000c"),
                1,
                Instant.parse("2025-07-08T18:04:05.600Z"),
                new PersonId("kim"),
                Filled.plainHead(),
                new BookKeeping.Struck());
        assertThat(new String(Line.write(entry), UTF_8))
                .isEqualTo("{\"act\":\"01900000-0000-7000-8000-00000000000c\",\"name\":\"record.struck\",\"number\":12,"
                        + "\"payload\":{\"doneOn\":\"2025-07-08\",\"placeInDay\":3},\"revision\":1,\"sequence\":1,"
                        + "\"writtenAt\":\"2025-07-08T18:04:05.600Z\",\"writtenBy\":\"kim\"}");
    }

    private static Entry entry(Head head, Fact fact) {
        return new Entry(
                9_007_199_254_740_991L,
                new ActId("01900000-0000-7000-8000-00000000000c"),
                2,
                Instant.parse("2025-07-08T18:04:05.006Z"),
                new PersonId("kim"),
                head,
                fact);
    }

    private static List<String> names(ObjectNode payload) {
        List<String> names = new ArrayList<>();
        payload.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
