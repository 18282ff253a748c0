package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * Chromium without a window, driven over the Chrome DevTools Protocol: it loads pages, presses keys, evaluates
 * expressions, prints, and tells of every error. Used by one thread.
 */
final class Browser implements AutoCloseable {

    private static final String LISTENING = "DevTools listening on ";
    private static final long PATIENCE_SECONDS = 60;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Process process;
    private final WebSocket socket;
    private final BlockingQueue<JsonNode> received;
    private final List<String> complaints = new ArrayList<>();
    private String session = "";
    private int sent;

    private Browser(Process process, WebSocket socket, BlockingQueue<JsonNode> received) {
        this.process = process;
        this.socket = socket;
        this.received = received;
    }

    /** Starts Chromium; the test is skipped, and says so, where it is not installed. */
    static Browser start() throws IOException {
        Reader.CHROMIUM.mustBeInstalled();
        List<String> command = new ArrayList<>(List.of(Reader.CHROMIUM.program()));
        command.addAll(Reader.chromiumOptions());
        command.addAll(List.of("--remote-debugging-port=0", "--hide-scrollbars", "about:blank"));
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader errors =
                new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
        String line = errors.readLine();
        while (line != null && !line.startsWith(LISTENING)) {
            line = errors.readLine();
        }
        assertThat(line).as("Chromium must say where it listens").isNotNull();
        Thread drain = new Thread(() -> errors.lines().forEach(each -> {}), "chromium-errors");
        drain.setDaemon(true);
        drain.start();
        BlockingQueue<JsonNode> received = new LinkedBlockingQueue<>();
        WebSocket socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create(line.substring(LISTENING.length())), new Listener(received))
                .join();
        Browser browser = new Browser(process, socket, received);
        JsonNode targets = browser.call("Target.getTargets", JSON.createObjectNode());
        ObjectNode attach = JSON.createObjectNode();
        for (JsonNode target : targets.get("targetInfos")) {
            if (target.get("type").asText().equals("page")) {
                attach.put("targetId", target.get("targetId").asText());
            }
        }
        browser.session = browser.call("Target.attachToTarget", attach.put("flatten", true))
                .get("sessionId")
                .asText();
        for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
            browser.call(domain + ".enable", JSON.createObjectNode());
        }
        return browser;
    }

    /** Loads a page and waits until it is there. */
    void open(Path page) {
        JsonNode loaded = call(
                "Page.navigate", JSON.createObjectNode().put("url", page.toUri().toString()));
        assertThat(loaded.path("errorText").asText()).as("%s", page).isEmpty();
        evaluate("new Promise(done => document.readyState === 'complete' ? done() : addEventListener('load', done))");
    }

    /** Sets the size of the window in CSS px. */
    void resize(int width, int height) {
        call(
                "Emulation.setDeviceMetricsOverride",
                JSON.createObjectNode()
                        .put("width", width)
                        .put("height", height)
                        .put("deviceScaleFactor", 1)
                        .put("mobile", width < 600));
    }

    /** Prefers a colour scheme, {@code light} or {@code dark}. */
    void prefer(String scheme) {
        ObjectNode media = JSON.createObjectNode();
        media.putArray("features")
                .addObject()
                .put("name", "prefers-color-scheme")
                .put("value", scheme);
        call("Emulation.setEmulatedMedia", media);
    }

    /** Presses a key that has no character, such as {@code ArrowRight}, on what has the focus. */
    void press(String key, int code) {
        for (String type : List.of("rawKeyDown", "keyUp")) {
            call(
                    "Input.dispatchKeyEvent",
                    JSON.createObjectNode()
                            .put("type", type)
                            .put("key", key)
                            .put("code", key)
                            .put("windowsVirtualKeyCode", code));
        }
    }

    /** Evaluates an expression in the page and returns its value; a promise is waited for. */
    JsonNode evaluate(String expression) {
        JsonNode answer = call(
                "Runtime.evaluate",
                JSON.createObjectNode()
                        .put("expression", expression)
                        .put("awaitPromise", true)
                        .put("returnByValue", true));
        assertThat(answer.path("exceptionDetails").toString()).as(expression).isEmpty();
        return answer.path("result").path("value");
    }

    /** Returns what axe-core finds wrong with the page: a line for each rule that is broken, with what breaks it. */
    String violations() throws IOException {
        if (!evaluate("'axe' in window").asBoolean()) {
            try (InputStream axe = Objects.requireNonNull(getClass().getResourceAsStream("/axe.min.js"))) {
                evaluate(new String(axe.readAllBytes(), StandardCharsets.UTF_8) + "; 0");
            }
        }
        return evaluate("axe.run({resultTypes: ['violations'], preload: false}).then(found => found.violations.map("
                        + "each => each.id + ': ' + each.nodes.map(node => node.html.slice(0, 120) + ' '"
                        + " + node.failureSummary).join(' | ')).join('\\n'))")
                .asText();
    }

    /** Prints the page as a PDF on the paper that it asks for. */
    byte[] print() {
        JsonNode printed = call(
                "Page.printToPDF",
                JSON.createObjectNode().put("preferCSSPageSize", true).put("printBackground", true));
        return Base64.getDecoder().decode(printed.get("data").asText());
    }

    /** Returns a picture of the whole page as a PNG. */
    byte[] picture() {
        JsonNode taken = call(
                "Page.captureScreenshot",
                JSON.createObjectNode().put("format", "png").put("captureBeyondViewport", true));
        return Base64.getDecoder().decode(taken.get("data").asText());
    }

    /** Returns the errors and warnings of the console, uncaught exceptions, and requests for anything but files. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    private JsonNode call(String method, ObjectNode parameters) {
        ObjectNode message = JSON.createObjectNode().put("id", ++sent).put("method", method);
        if (!session.isEmpty()) {
            message.put("sessionId", session);
        }
        message.set("params", parameters);
        socket.sendText(message.toString(), true).join();
        while (true) {
            JsonNode answer = next(method);
            if (answer.path("id").asInt() == sent) {
                assertThat(answer.path("error").toString()).as(method).isEmpty();
                return answer.get("result");
            }
            listen(answer);
        }
    }

    private JsonNode next(String method) {
        try {
            JsonNode answer = received.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
            assertThat(answer).as("Chromium must answer " + method).isNotNull();
            return answer;
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private void listen(JsonNode event) {
        JsonNode parameters = event.path("params");
        switch (event.path("method").asText()) {
            case "Runtime.exceptionThrown" ->
                complaints.add(parameters.path("exceptionDetails").toString());
            case "Log.entryAdded" -> complaints.add(parameters.path("entry").toString());
            case "Runtime.consoleAPICalled" ->
                complaints.add(parameters.path("args").toString());
            case "Network.requestWillBeSent" -> {
                String url = parameters.path("request").path("url").asText();
                if (!url.startsWith("file:") && !url.startsWith("data:") && !url.equals("about:blank")) {
                    complaints.add("asked for " + url);
                }
            }
            default -> {}
        }
    }

    @Override
    public void close() {
        process.destroy();
        try {
            process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** Puts the parts of each message together and hands it on. */
    private static final class Listener implements WebSocket.Listener {
        private final BlockingQueue<JsonNode> received;
        private final StringBuilder parts = new StringBuilder();

        Listener(BlockingQueue<JsonNode> received) {
            this.received = received;
        }

        @Override
        public CompletionStage<?> onText(WebSocket webSocket, CharSequence data, boolean last) {
            parts.append(data);
            if (last) {
                try {
                    received.add(JSON.readTree(parts.toString()));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
                parts.setLength(0);
            }
            webSocket.request(1);
            return CompletableFuture.completedFuture(null);
        }
    }
}
