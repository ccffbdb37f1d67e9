package bedledger.cli.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.COSWriter;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Writes a document with nothing in it deflated and objects numbered as they are met (ISO 32000-1, 7.5), so that its bytes do not hang on the
 * zlib of the Java that made it.
 *
 * <p>The library's own writer of such files looks for each object among all that wait, which is squared in their number.
 */
final class PlainFile {
    /** Kinds that may stand in the object that names them, where no other does. */
    private static final Set<String> MAY_STAND_WITHIN = Set.of("MCR", "OBJR", "Action");

    private final IdentityHashMap<COSBase, Integer> named = new IdentityHashMap<>();
    private final IdentityHashMap<COSBase, Integer> numbers = new IdentityHashMap<>();
    private final List<COSDictionary> objects = new ArrayList<>();
    private final List<Long> places = new ArrayList<>();
    private final OutputStream out;
    private long written;

    private PlainFile(OutputStream out) {
        this.out = out;
    }

    static void write(PDDocument document, OutputStream out) throws IOException {
        // Fonts are cut down to the letters in use while a document is saved, and only then.
        document.save(OutputStream.nullOutputStream());
        new PlainFile(out).write(document.getDocument().getTrailer());
    }

    private void write(COSDictionary saved) throws IOException {
        COSDictionary trailer = new COSDictionary();
        for (COSName name : List.of(COSName.ROOT, COSName.INFO, COSName.ID)) {
            trailer.setItem(name, saved.getDictionaryObject(name));
        }
        count(trailer);
        number(trailer);
        write("%PDF-1.7\n%âãÏÓ\n");
        for (COSDictionary object : objects) {
            places.add(written);
            write(places.size() + " 0 obj\n");
            body(object);
            write("\nendobj\n");
        }
        trailer.setInt(COSName.SIZE, objects.size() + 1);
        long table = written;
        write("xref\n0 " + (objects.size() + 1) + "\n0000000000 65535 f\r\n");
        for (long place : places) {
            String digits = Long.toString(place);
            write("0".repeat(10 - digits.length()) + digits + " 00000 n\r\n");
        }
        write("trailer\n");
        dictionary(trailer);
        write("\nstartxref\n" + table + "\n%%EOF\n");
    }

    /** Counts how often each dictionary is named. */
    private void count(COSDictionary trailer) {
        Deque<COSBase> open = new ArrayDeque<>(List.of(trailer));
        for (COSBase next = open.poll(); next != null; next = open.poll()) {
            for (COSBase part : parts(next)) {
                if (part instanceof COSArray || named.merge(part, 1, Integer::sum) == 1) {
                    open.push(part);
                }
            }
        }
    }

    /** Numbers what is to be an object of its own, in the order in which it is named. */
    private void number(COSDictionary trailer) {
        Deque<COSBase> open = new ArrayDeque<>(List.of(trailer));
        for (COSBase next = open.poll(); next != null; next = open.poll()) {
            for (COSBase part : parts(next)) {
                if (part instanceof COSDictionary dictionary && !standsWithin(dictionary)) {
                    if (numbers.putIfAbsent(dictionary, objects.size() + 1) == null) {
                        objects.add(dictionary);
                        open.add(dictionary);
                    }
                } else {
                    open.add(part);
                }
            }
        }
    }

    private boolean standsWithin(COSDictionary dictionary) {
        String type = dictionary.getNameAsString(COSName.TYPE);
        return !(dictionary instanceof COSStream)
                && named.getOrDefault(dictionary, 0) == 1
                && (type == null
                        ? dictionary.getItem(COSName.K) == null && dictionary.getItem(COSName.PARENT) == null
                        : MAY_STAND_WITHIN.contains(type));
    }

    private static List<COSBase> parts(COSBase whole) {
        List<COSBase> parts = new ArrayList<>();
        if (whole instanceof COSDictionary dictionary) {
            dictionary.getValues().forEach(value -> add(value, parts));
        } else if (whole instanceof COSArray array) {
            array.forEach(value -> add(value, parts));
        }
        return parts;
    }

    private static void add(COSBase value, List<COSBase> parts) {
        COSBase plain = plain(value);
        if (plain instanceof COSDictionary || plain instanceof COSArray) {
            parts.add(plain);
        }
    }

    private static COSBase plain(COSBase value) {
        COSBase meant = value instanceof COSObject reference ? reference.getObject() : value;
        return meant == null ? COSNull.NULL : meant;
    }

    private void body(COSDictionary object) throws IOException {
        if (!(object instanceof COSStream stream)) {
            dictionary(object);
            return;
        }
        byte[] bytes;
        try (InputStream in = stream.createInputStream()) {
            bytes = in.readAllBytes();
        }
        COSDictionary head = new COSDictionary(stream);
        head.removeItem(COSName.FILTER);
        head.removeItem(COSName.DECODE_PARMS);
        head.setInt(COSName.LENGTH, bytes.length);
        dictionary(head);
        write("\nstream\n");
        write(bytes);
        write("\nendstream");
    }

    private void dictionary(COSDictionary dictionary) throws IOException {
        write("<<");
        for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
            value(entry.getKey());
            write(" ");
            value(plain(entry.getValue()));
        }
        write(">>");
    }

    private void value(COSBase value) throws IOException {
        Integer number = numbers.get(value);
        if (number != null) {
            write(number + " 0 R");
        } else if (value instanceof COSDictionary dictionary) {
            dictionary(dictionary);
        } else if (value instanceof COSArray array) {
            write("[");
            for (COSBase each : array) {
                value(plain(each));
                write(" ");
            }
            write("]");
        } else {
            write(scalar(value));
        }
    }

    private static byte[] scalar(COSBase value) throws IOException {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        if (value instanceof COSName name) {
            name.writePDF(text);
        } else if (value instanceof COSString string) {
            COSWriter.writeString(string, text);
        } else if (value instanceof COSFloat real) {
            real.writePDF(text);
        } else if (value instanceof COSInteger whole) {
            whole.writePDF(text);
        } else if (value instanceof COSBoolean truth) {
            truth.writePDF(text);
        } else {
            COSNull.NULL.writePDF(text);
        }
        return text.toByteArray();
    }

    private void write(String latin) throws IOException {
        write(latin.getBytes(StandardCharsets.ISO_8859_1));
    }

    private void write(byte[] bytes) throws IOException {
        out.write(bytes);
        written += bytes.length;
    }
}
