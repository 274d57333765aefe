package org.stillrail.sweepfile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Bytes to text with line feeds only. The encoding is taken from a byte order mark, from the zero bytes that UTF-16 leaves
 * in plain text, or by trying UTF-8; what is none of these is read as Latin-1, which is enough to pass over comments.
 */
final class TextDecoder {

    private static final int LOOK = 4096;

    private TextDecoder() {
    }

    static String decode(byte[] bytes) {
        Limits.checkSize(bytes);
        String text = characters(bytes);
        int nul = text.indexOf('\0');
        if (nul >= 0) {
            throw new SweepFileException(lineAt(text, nul), "a zero byte; this is not a text file");
        }
        if (text.indexOf('\r') >= 0) {
            text = text.replace("\r\n", "\n").replace('\r', '\n');
        }
        Limits.checkLines(text);
        // Old programs close a text with this character.
        return text.endsWith("\u001a") ? text.substring(0, text.length() - 1) : text;
    }

    private static String characters(byte[] bytes) {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return utf8OrLatin1(bytes, 3);
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE);
        }
        Charset wide = utf16WithoutMark(bytes);
        return wide != null ? new String(bytes, wide) : utf8OrLatin1(bytes, 0);
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** Digits and line ends have a zero high byte: nearly all of one half of the bytes, none of the other. */
    private static Charset utf16WithoutMark(byte[] bytes) {
        int pairs = Math.min(bytes.length, LOOK) / 2;
        int zeroFirst = 0;
        int zeroSecond = 0;
        for (int i = 0; i < pairs; i++) {
            zeroFirst += bytes[2 * i] == 0 ? 1 : 0;
            zeroSecond += bytes[2 * i + 1] == 0 ? 1 : 0;
        }
        int nearlyAll = pairs * 9 / 10;
        if (pairs < 4 || zeroFirst > 0 && zeroSecond > 0) {
            return null;
        }
        if (zeroSecond > nearlyAll) {
            return StandardCharsets.UTF_16LE;
        }
        return zeroFirst > nearlyAll ? StandardCharsets.UTF_16BE : null;
    }

    private static String utf8OrLatin1(byte[] bytes, int from) {
        try {
            return StandardCharsets.UTF_8.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, from, bytes.length - from, StandardCharsets.ISO_8859_1);
        }
    }

    private static int lineAt(String text, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' && text.charAt(i + 1) != '\n') {
                line++;
            }
        }
        return line;
    }
}
