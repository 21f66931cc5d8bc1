package stokewell.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The letters of a file: which encoding, and its first lines. */
final class ReadingsText {

    private static final int HEAD = 1 << 20;
    private static final int LINES = 400;

    private final Path path;
    private final String name;
    private final Charset charset;
    private final int mark;
    private ReadingsElapsed elapsed;

    private ReadingsText(Path path, String name, Charset charset, int mark) {
        this.path = path;
        this.name = name;
        this.charset = charset;
        this.mark = mark;
    }

    static ReadingsText of(Path path, String name) throws IOException {
        if (Files.isDirectory(path)) {
            throw new ReadingsFault(name, 0, "it is a folder", "Name a file in it");
        }
        byte[] head;
        try (InputStream in = Files.newInputStream(path)) {
            head = in.readNBytes(1 << 16);
        }
        if (head.length == 0) throw new ReadingsFault(name, 0, "the file is empty", "Save it again from the logger");
        if (starts(head, 0xEF, 0xBB, 0xBF)) return new ReadingsText(path, name, StandardCharsets.UTF_8, 3);
        if (starts(head, 0xFF, 0xFE)) return new ReadingsText(path, name, StandardCharsets.UTF_16LE, 2);
        if (starts(head, 0xFE, 0xFF)) return new ReadingsText(path, name, StandardCharsets.UTF_16BE, 2);
        refuseOthers(name, head);
        int even = 0;
        int odd = 0;
        for (int i = 0; i < head.length; i++) {
            if (head[i] == 0 && i % 2 == 0) even++;
            if (head[i] == 0 && i % 2 == 1) odd++;
        }
        int most = head.length / 4;
        if (odd > most && even < most / 8) return new ReadingsText(path, name, StandardCharsets.UTF_16LE, 0);
        if (even > most && odd < most / 8) return new ReadingsText(path, name, StandardCharsets.UTF_16BE, 0);
        if (even + odd > 0) throw new ReadingsFault(name, 0, "it is not a text", "Save it as CSV");
        return new ReadingsText(path, name, utf8(path) ? StandardCharsets.UTF_8 : Charset.forName("windows-1252"), 0);
    }

    private static void refuseOthers(String name, byte[] head) {
        boolean zip = starts(head, 'P', 'K', 3, 4);
        boolean office = starts(head, 0xD0, 0xCF, 0x11, 0xE0);
        if (zip || office) {
            throw new ReadingsFault(name, 0, "it is a spreadsheet or an archive, not a text", "Save its table as CSV");
        }
        if (starts(head, 0x1F, 0x8B)) throw new ReadingsFault(name, 0, "it is compressed", "Unpack it first");
    }

    private static boolean starts(byte[] head, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (i >= head.length || (head[i] & 0xff) != bytes[i]) return false;
        }
        return true;
    }

    /** Whether all of the file is UTF-8. */
    private static boolean utf8(Path path) throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        try (var channel = Files.newByteChannel(path)) {
            ByteBuffer in = ByteBuffer.allocate(1 << 16);
            CharBuffer out = CharBuffer.allocate(1 << 16);
            while (true) {
                boolean end = channel.read(in) < 0;
                in.flip();
                if (decoder.decode(in, out, end).isError()) return false;
                out.clear();
                in.compact();
                if (end) return true;
            }
        }
    }

    /** Reads counts from a start as moments from now on. */
    void from(ReadingsElapsed counts) {
        elapsed = counts;
    }

    /** In words, where it is not the usual one. */
    String encoding() {
        return charset.equals(StandardCharsets.UTF_8) ? "" : charset.name();
    }

    /** From the first letter of a line counted from 0. */
    BufferedReader from(int line) throws IOException {
        InputStream in = Files.newInputStream(path);
        try {
            in.skipNBytes(mark);
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, charset), 1 << 16);
            if (elapsed != null) {
                try (BufferedReader counts = reader) {
                    reader = elapsed.dated(counts);
                }
            }
            for (int i = 0; i < line; i++) reader.readLine();
            return reader;
        } catch (IOException | RuntimeException e) {
            in.close();
            throw e;
        }
    }

    /** The first lines. */
    List<String> head() throws IOException {
        char[] head = new char[1 << 13];
        int n = 0;
        try (BufferedReader reader = from(0)) {
            while (n < HEAD) {
                if (n == head.length) head = java.util.Arrays.copyOf(head, 2 * n);
                int more = reader.read(head, n, head.length - n);
                if (more < 0) break;
                n += more;
            }
        }
        for (int i = 0; i < n; i++) {
            if (head[i] == 0) throw new ReadingsFault(name, 0, "it is not a text", "Save it as CSV");
        }
        List<String> lines = new ArrayList<>();
        BufferedReader text = new BufferedReader(new java.io.CharArrayReader(head, 0, n));
        String line = text.readLine();
        while (line != null && lines.size() < LINES) {
            lines.add(line);
            line = text.readLine();
        }
        // the last may be cut off
        if (line == null && n == HEAD && lines.size() > 1) lines.remove(lines.size() - 1);
        return lines;
    }
}
