package org.oaktag.examples.embed.service;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.blocks.KnitTop;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Garment;

class PatternServiceTest {
    private static final Limits LIMITS = new Limits(64 * 1024, 100, Duration.ofMinutes(10), 2, 64);
    private static final JsonMapper JSON = new JsonMapper();

    private static final PatternService SERVICE = PatternService.start(0, LIMITS);
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @BeforeAll
    static void isUp() {
        assertThat(SERVICE.address().getPort()).isPositive();
    }

    @AfterAll
    static void stop() {
        SERVICE.close();
    }

    @Test
    void the_sheet_is_what_the_library_draws_for_that_body() throws Exception {
        Garment top = ordered();
        HttpResponse<byte[]> answer = send("/pattern.svg", order());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("image/svg+xml");
        assertThat(new String(answer.body(), UTF_8))
                .isEqualTo(SvgSheet.pattern(top, KnitTop.allowances(top)).text());
        assertThat(new String(send("/flat.svg", order()).body(), UTF_8))
                .isEqualTo(SvgSheet.flat(top).text());
    }

    @Test
    void the_pages_are_a_pdf() throws Exception {
        HttpResponse<byte[]> answer = send("/pattern.pdf", order());
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(new String(answer.body(), ISO_8859_1)).startsWith("%PDF-").endsWith("%%EOF\n");
    }

    @Test
    void the_walk_gives_both_sides_of_every_seam() throws Exception {
        Garment top = ordered();
        JsonNode walk = JSON.readTree(send("/seams.json", order()).body());
        assertThat(walk.get("true").booleanValue()).isTrue();
        assertThat(walk.get("seams")).hasSize(top.seams().size());
        for (int i = 0; i < top.seams().size(); i++) {
            JsonNode seam = walk.get("seams").get(i);
            assertThat(seam.get("a_mm").doubleValue())
                    .isEqualTo(top.walkSeams().seams().get(i).lengthA().mm());
            assertThat(seam.get("b_mm").doubleValue())
                    .isEqualTo(top.walkSeams().seams().get(i).lengthB().mm());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "[]trailing", "{\"body\":1,\"body\":2}", "nul\u0000l"})
    void what_is_no_json_is_refused(String order) throws Exception {
        assertThat(refusal(send("/pattern.svg", order), 400)).isEqualTo("an order must be JSON, each field once");
    }

    @Test
    void bytes_that_are_no_utf_8_are_refused() throws Exception {
        assertThat(refusal(send("/pattern.svg", HttpRequest.BodyPublishers.ofByteArray(new byte[] {(byte) 0xff})), 400))
                .contains("UTF-8");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "{}", "null", "7", "{\"body\":{},\"recipe\":{},\"more\":{}}"})
    void json_that_is_no_order_is_refused_with_the_fields_it_must_have(String order) throws Exception {
        assertThat(refusal(send("/pattern.svg", order), 422)).contains("'body' and 'recipe'");
    }

    @Test
    void a_refusal_of_the_library_comes_with_its_four_parts() throws Exception {
        String order = order().replace("\"name\":\"Mira\"", "\"name\":\"Mira\",\"shoe_size\":39");
        HttpResponse<byte[]> answer = send("/pattern.svg", order);
        assertThat(refusal(answer, 422)).contains("shoe_size");
        assertThat(JSON.readTree(answer.body()).fieldNames())
                .toIterable()
                .containsExactly("error", "thing", "rule", "given", "remedy");
    }

    @Test
    void more_steps_than_allowed_are_refused() throws Exception {
        try (PatternService strict = PatternService.start(0, new Limits(64 * 1024, 3, Duration.ofMinutes(10), 1, 1))) {
            HttpResponse<byte[]> answer = CLIENT.send(
                    request(strict, "/pattern.svg", HttpRequest.BodyPublishers.ofString(order())),
                    HttpResponse.BodyHandlers.ofByteArray());
            assertThat(refusal(answer, 422)).contains("at most 3 steps");
        }
    }

    @Test
    void an_order_that_is_too_long_is_refused_whether_it_says_its_length_or_not() throws Exception {
        byte[] endless = " ".repeat(LIMITS.bytes() + 1).getBytes(UTF_8);
        assertThat(refusal(send("/pattern.svg", HttpRequest.BodyPublishers.ofByteArray(endless)), 413))
                .contains("65536 bytes");
        HttpRequest.BodyPublisher chunked = HttpRequest.BodyPublishers.fromPublisher(
                HttpRequest.BodyPublishers.ofByteArrays(List.of(endless, endless)));
        assertThat(refusal(send("/pattern.svg", chunked), 413)).contains("65536 bytes");
    }

    @Test
    void what_is_not_made_in_time_is_given_up() throws Exception {
        try (PatternService hasty = PatternService.start(0, new Limits(64 * 1024, 100, Duration.ofNanos(1), 1, 1))) {
            HttpResponse<byte[]> answer = CLIENT.send(
                    request(hasty, "/pattern.pdf", HttpRequest.BodyPublishers.ofString(order())),
                    HttpResponse.BodyHandlers.ofByteArray());
            assertThat(refusal(answer, 503)).contains("not made within 0 ms");
            assertThat(answer.headers().firstValue("Retry-After")).contains("1");
        }
    }

    @Test
    void other_paths_methods_and_types_are_refused_by_name() throws Exception {
        assertThat(refusal(send("/", order()), 404)).contains("/pattern.svg");
        HttpResponse<byte[]> got = CLIENT.send(
                HttpRequest.newBuilder(SERVICE.address().resolve("/flat.svg")).build(),
                HttpResponse.BodyHandlers.ofByteArray());
        assertThat(refusal(got, 405)).contains("POST");
        assertThat(got.headers().firstValue("Allow")).contains("POST");
        HttpResponse<byte[]> form = CLIENT.send(
                HttpRequest.newBuilder(SERVICE.address().resolve("/flat.svg"))
                        .header("Content-Type", "text/plain")
                        .POST(HttpRequest.BodyPublishers.ofString(order()))
                        .build(),
                HttpResponse.BodyHandlers.ofByteArray());
        assertThat(refusal(form, 415)).contains("application/json");
    }

    @Test
    void markup_in_a_name_comes_back_as_text() throws Exception {
        String order = order().replace("\"name\":\"Mira\"", "\"name\":\"<script>alert(1)</script>\"");
        HttpResponse<byte[]> answer = send("/pattern.svg", order);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(new String(answer.body(), UTF_8)).doesNotContain("<script");
        assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'none'");
    }

    @Test
    void a_sender_that_breaks_off_harms_nobody() throws Exception {
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), SERVICE.address().getPort())) {
            OutputStream out = socket.getOutputStream();
            out.write(("POST /pattern.svg HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
                            + "Content-Length: 100\r\n\r\n{")
                    .getBytes(ISO_8859_1));
            out.flush();
        }
        assertThat(send("/seams.json", order()).statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @EnumSource
    void many_senders_at_once_each_get_the_same_answer(Drawing drawing) throws Exception {
        LoadOnLoopback load = LoadOnLoopback.of(SERVICE.address().resolve(drawing.path()), order(), 8, 24);
        assertThat(load.statuses()).containsOnlyKeys(200).containsValue(24);
        assertThat(load.contents()).isEqualTo(1);
    }

    @Test
    void a_crowd_beyond_the_limit_is_asked_to_come_back_and_the_rest_is_served() throws Exception {
        try (PatternService small = PatternService.start(0, new Limits(64 * 1024, 100, Duration.ofMinutes(10), 1, 1))) {
            int crowd = 24;
            CountDownLatch together = new CountDownLatch(crowd);
            ExecutorService pool = Executors.newFixedThreadPool(crowd);
            List<Future<Integer>> statuses = new ArrayList<>();
            for (int i = 0; i < crowd; i++) {
                statuses.add(pool.submit(() -> {
                    together.countDown();
                    together.await();
                    return CLIENT.send(
                                    request(small, "/pattern.pdf", HttpRequest.BodyPublishers.ofString(order())),
                                    HttpResponse.BodyHandlers.ofByteArray())
                            .statusCode();
                }));
            }
            List<Integer> seen = new ArrayList<>();
            for (Future<Integer> each : statuses) {
                seen.add(each.get(10, TimeUnit.MINUTES));
            }
            pool.shutdownNow();
            assertThat(seen).contains(200, 503).containsOnly(200, 503);
        }
    }

    /** The order that the guide sends: a hooded top in twelve steps, for Mira. */
    private static String order() throws IOException {
        return JSON.readTree(Files.readString(Path.of("order.json"))).toString();
    }

    private static Garment ordered() throws IOException {
        return Order.parse(order(), LIMITS.steps()).made();
    }

    private static HttpResponse<byte[]> send(String path, String order) throws Exception {
        return send(path, HttpRequest.BodyPublishers.ofString(order));
    }

    private static HttpResponse<byte[]> send(String path, HttpRequest.BodyPublisher order) throws Exception {
        return CLIENT.send(request(SERVICE, path, order), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static HttpRequest request(PatternService service, String path, HttpRequest.BodyPublisher order) {
        return HttpRequest.newBuilder(service.address().resolve(path))
                .header("Content-Type", "application/json")
                .POST(order)
                .build();
    }

    private static String refusal(HttpResponse<byte[]> answer, int status) throws IOException {
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/json");
        String error = JSON.readTree(answer.body()).get("error").textValue();
        assertThat(error).doesNotContain("Exception", "org.oaktag", "\tat ");
        return error;
    }
}
