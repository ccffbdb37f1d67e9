package bedledger.ledger.store;

import bedledger.language.Acts;
import bedledger.ledger.entry.Deed;
import bedledger.ledger.entry.DeedCodec;
import bedledger.ledger.json.CanonicalJson;
import org.axonframework.messaging.MetaData;
import org.axonframework.serialization.ChainingConverter;
import org.axonframework.serialization.Converter;
import org.axonframework.serialization.SerializedObject;
import org.axonframework.serialization.SerializedType;
import org.axonframework.serialization.Serializer;
import org.axonframework.serialization.SimpleSerializedObject;
import org.axonframework.serialization.SimpleSerializedType;
import org.axonframework.serialization.UnknownSerializedType;

/**
 * Axon's view of stored payloads: the stored name is an entry kind, never a class, and any other name is refused.
 *
 * <p>Entries are written by {@link EntryAppender}; Axon asks this serializer only to read them.
 */
final class DeedSerializer implements Serializer {
    private static final String META = MetaData.class.getName();
    private final Converter converter = new ChainingConverter();

    @Override
    public <T> SerializedObject<T> serialize(Object object, Class<T> expected) {
        byte[] bytes = object instanceof Deed deed ? CanonicalJson.write(DeedCodec.write(deed)) : new byte[] {'{', '}'};
        return converter.convert(new SimpleSerializedObject<>(bytes, byte[].class, typeOf(object)), expected);
    }

    private static SerializedType typeOf(Object object) {
        return object instanceof Deed deed
                ? new SimpleSerializedType(
                        Acts.of(deed.fact().getClass()).name(),
                        Integer.toString(Acts.of(deed.fact().getClass()).revision()))
                : SimpleSerializedType.emptyType();
    }

    @Override
    public <T> boolean canSerializeTo(Class<T> expected) {
        return converter.canConvert(byte[].class, expected);
    }

    @Override
    @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"}) // Axon's signature
    public <S, T> T deserialize(SerializedObject<S> stored) {
        SerializedType type = stored.getType();
        if (type.getName().equals(META)) {
            return (T) MetaData.emptyInstance();
        }
        byte[] bytes = converter.convert(stored, byte[].class).getData();
        return (T) DeedCodec.read(type.getName(), String.valueOf(type.getRevision()), bytes);
    }

    @Override
    @SuppressWarnings("rawtypes")
    public Class classForType(SerializedType type) {
        if (type.getName().equals(META)) {
            return MetaData.class;
        }
        return Acts.byName(type.getName()).isPresent() ? Deed.class : UnknownSerializedType.class;
    }

    @Override
    @SuppressWarnings("rawtypes")
    public SerializedType typeForClass(Class type) {
        return new SimpleSerializedType(type == Deed.class ? "deed" : "meta", null);
    }

    @Override
    public Converter getConverter() {
        return converter;
    }
}
