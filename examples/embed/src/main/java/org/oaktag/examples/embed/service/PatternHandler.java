package org.oaktag.examples.embed.service;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.io.InputStream;
import java.lang.System.Logger.Level;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;

/** Takes an order, has it made, and sends back what was asked for or why not. */
final class PatternHandler extends Handler.Abstract {

    private static final System.Logger LOG = System.getLogger(PatternHandler.class.getName());

    private final Limits limits;
    private final ExecutorService makers;

    PatternHandler(Limits limits, ExecutorService makers) {
        this.limits = limits;
        this.makers = makers;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        Answer answer = answer(request);
        response.setStatus(answer.status());
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, answer.type());
        response.getHeaders().put(HttpHeader.CONTENT_LENGTH, answer.content().remaining());
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        // Names of bodies and cloths are drawn as text; should that ever fail, a browser still runs nothing.
        response.getHeaders().put("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; sandbox");
        if (answer.status() == 405) {
            response.getHeaders().put(HttpHeader.ALLOW, "POST");
        }
        if (answer.status() == 503) {
            response.getHeaders().put(HttpHeader.RETRY_AFTER, 1);
        }
        if (answer.status() == 413) {
            // What is left of the request is not read.
            response.getHeaders().put(HttpHeader.CONNECTION, "close");
        }
        response.write(true, answer.content(), callback);
        return true;
    }

    private Answer answer(Request request) {
        Optional<Drawing> drawing = Drawing.at(Request.getPathInContext(request));
        if (drawing.isEmpty()) {
            return Answer.refusal(
                    404,
                    "there is nothing here; send an order to one of "
                            + Arrays.stream(Drawing.values()).map(Drawing::path).toList());
        }
        if (!request.getMethod().equals("POST")) {
            return Answer.refusal(405, "send the order with POST");
        }
        String type = Optional.ofNullable(request.getHeaders().get(HttpHeader.CONTENT_TYPE))
                .orElse("");
        if (!type.split(";", 2)[0].trim().equalsIgnoreCase("application/json")) {
            return Answer.refusal(415, "send the order as application/json");
        }
        try {
            byte[] bytes = read(request);
            if (bytes.length > limits.bytes()) {
                return Answer.refusal(413, "an order must be at most " + limits.bytes() + " bytes long");
            }
            return made(
                    drawing.get(),
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(bytes))
                            .toString());
        } catch (CharacterCodingException e) {
            return Answer.refusal(400, "an order must be text in UTF-8");
        } catch (IOException e) {
            return Answer.refusal(400, "the order broke off");
        }
    }

    private byte[] read(Request request) throws IOException {
        if (request.getLength() > limits.bytes()) {
            return new byte[limits.bytes() + 1];
        }
        InputStream content = Content.Source.asInputStream(request);
        return content.readNBytes(limits.bytes() + 1);
    }

    private Answer made(Drawing drawing, String text) {
        Future<Answer> work;
        try {
            work = makers.submit(
                    () -> drawing.of(Order.parse(text, limits.steps()).made()));
        } catch (RejectedExecutionException e) {
            return Answer.refusal(503, "too many orders at once; come back in a second");
        }
        try {
            return work.get(limits.time().toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            work.cancel(true);
            return Answer.refusal(
                    503, "not made within " + limits.time().toMillis() + " ms; come back, or ask for less");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            work.cancel(true);
            return Answer.refusal(503, "the service is being stopped");
        } catch (ExecutionException e) {
            return refused(e.getCause());
        }
    }

    private static Answer refused(@Nullable Throwable cause) {
        if (cause instanceof PatternException refused) {
            return Answer.refusal(refused);
        }
        if (cause instanceof JsonProcessingException) {
            return Answer.refusal(400, "an order must be JSON, each field once");
        }
        LOG.log(Level.ERROR, "an order could not be made", cause);
        return Answer.refusal(500, "this should not have happened; it was logged");
    }
}
