package org.oaktag.examples.embed.service;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.oaktag.PatternException;

/** What goes back to the sender: an HTTP status, a media type and the content. */
final class Answer {

    static final JsonMapper JSON = JsonMapper.builder().build();

    private final int status;
    private final String type;
    private final byte[] bytes;

    Answer(int status, String type, byte[] bytes) {
        this.status = status;
        this.type = type;
        this.bytes = bytes.clone();
    }

    int status() {
        return status;
    }

    String type() {
        return type;
    }

    /** Returns the content; not to be written into. */
    ByteBuffer content() {
        return ByteBuffer.wrap(bytes).asReadOnlyBuffer();
    }

    static Answer text(String type, String text) {
        return new Answer(200, type, text.getBytes(StandardCharsets.UTF_8));
    }

    static Answer json(int status, ObjectNode content) {
        return new Answer(status, "application/json", content.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** A refusal in one sentence. It says what the sender did, never what went on inside. */
    static Answer refusal(int status, String message) {
        return json(status, JSON.createObjectNode().put("error", message));
    }

    /** A refusal of the library, its four parts apart so that a form can show each beside its field. */
    static Answer refusal(PatternException refused) {
        ObjectNode content = JSON.createObjectNode().put("error", refused.getMessage());
        content.put("thing", refused.thing());
        content.put("rule", refused.rule());
        content.put("given", refused.given());
        content.put("remedy", refused.remedy());
        return json(422, content);
    }
}
