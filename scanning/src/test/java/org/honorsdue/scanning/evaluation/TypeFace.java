package org.honorsdue.scanning.evaluation;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * A typewriter face.
 *
 * @param unseen kept for testing only: nothing in the reader may be tuned on its pages
 */
record TypeFace(String name, Font font, boolean unseen) {
    /** What is really to be seen of a text: some machines had no parentheses, and this face draws slashes for them. */
    String drawn(String text) {
        return name.equals("gnu-typewriter") ? text.replace('(', '/').replace(')', '/') : text;
    }

    static TypeFace committed(String name, boolean unseen) {
        try (var stream = TypeFace.class.getResourceAsStream(name + ".woff")) {
            if (stream == null) {
                throw new IllegalStateException("The face " + name + " is not among the test resources.");
            }
            return new TypeFace(name, font(stream.readAllBytes()), unseen);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The faces in a folder made by {@code fetch-evaluation-faces}: in {@code tuning} and in {@code unseen}. */
    static List<TypeFace> in(Path folder) {
        var faces = new ArrayList<TypeFace>();
        for (boolean unseen : new boolean[] {false, true}) {
            try (var files = Files.list(folder.resolve(unseen ? "unseen" : "tuning"))) {
                for (var file : files.sorted().toList()) {
                    faces.add(of(file, unseen));
                }
            } catch (IOException e) {
                throw new UncheckedIOException("Run scanning/fetch-evaluation-faces first.", e);
            }
        }
        return faces;
    }

    static TypeFace of(Path file, boolean unseen) throws IOException {
        var name = file.getFileName().toString().replaceAll("\\.[a-z0-9]+$", "");
        return new TypeFace(name, font(Files.readAllBytes(file)), unseen);
    }

    private static Font font(byte[] file) throws IOException {
        byte[] plain = file[0] == 'w' && file[1] == 'O' ? unwrapped(file) : file;
        try (InputStream stream = new ByteArrayInputStream(plain)) {
            return Font.createFont(Font.TRUETYPE_FONT, stream);
        } catch (FontFormatException e) {
            throw new IOException(e);
        }
    }

    /** WOFF 1.0 (a W3C recommendation) is an OpenType file with each table deflated by itself. */
    private static byte[] unwrapped(byte[] woff) throws IOException {
        var in = new DataInputStream(new ByteArrayInputStream(woff));
        in.readInt(); // signature
        int flavor = in.readInt();
        in.readInt(); // length
        int tables = in.readUnsignedShort();
        in.skipBytes(44 - 14);
        var head = new ByteArrayOutputStream();
        var body = new ByteArrayOutputStream();
        var headOut = new DataOutputStream(head);
        headOut.writeInt(flavor);
        headOut.writeShort(tables);
        int power = Integer.highestOneBit(tables);
        headOut.writeShort(power * 16);
        headOut.writeShort(Integer.numberOfTrailingZeros(power));
        headOut.writeShort(tables * 16 - power * 16);
        for (int i = 0; i < tables; i++) {
            int tag = in.readInt();
            int offset = in.readInt();
            int packed = in.readInt();
            int length = in.readInt();
            int checksum = in.readInt();
            byte[] table = new byte[length];
            if (packed == length) {
                System.arraycopy(woff, offset, table, 0, length);
            } else {
                var inflater = new Inflater();
                inflater.setInput(woff, offset, packed);
                try {
                    int done = 0;
                    while (done < length && !inflater.finished()) {
                        done += inflater.inflate(table, done, length - done);
                    }
                } catch (DataFormatException e) {
                    throw new IOException(e);
                } finally {
                    inflater.end();
                }
            }
            headOut.writeInt(tag);
            headOut.writeInt(checksum);
            headOut.writeInt(12 + 16 * tables + body.size());
            headOut.writeInt(length);
            body.write(table);
            while (body.size() % 4 != 0) {
                body.write(0);
            }
        }
        head.write(body.toByteArray());
        return head.toByteArray();
    }
}
