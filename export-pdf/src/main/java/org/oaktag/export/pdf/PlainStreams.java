package org.oaktag.export.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Takes the compression off every stream of a document. */
final class PlainStreams {

    private PlainStreams() {}

    static void in(PDDocument document) throws IOException {
        Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<COSBase> open = new ArrayDeque<>();
        open.push(document.getDocument().getTrailer());
        while (!open.isEmpty()) {
            COSBase base = open.pop();
            if (!seen.add(base)) {
                continue;
            }
            if (base instanceof COSObject object && object.getObject() != null) {
                open.push(object.getObject());
            } else if (base instanceof COSDictionary dictionary) {
                if (base instanceof COSStream stream && stream.containsKey(COSName.FILTER)) {
                    inflate(stream);
                }
                dictionary.getValues().forEach(open::push);
            } else if (base instanceof COSArray array) {
                array.forEach(each -> {
                    if (each != null) {
                        open.push(each);
                    }
                });
            }
        }
    }

    private static void inflate(COSStream stream) throws IOException {
        byte[] plain;
        try (var in = stream.createInputStream()) {
            plain = in.readAllBytes();
        }
        stream.removeItem(COSName.FILTER);
        try (OutputStream out = stream.createOutputStream()) {
            out.write(plain);
        }
    }
}
