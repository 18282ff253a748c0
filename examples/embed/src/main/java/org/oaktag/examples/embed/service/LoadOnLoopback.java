package org.oaktag.examples.embed.service;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Sends one order many times over, from several senders at once, and tells what came back and how soon.
 *
 * @param statuses how often each HTTP status came back
 * @param contents how many different contents came back with status 200: one, if requests share nothing
 * @param sortedMs how long each answer took, in ms, the quickest first
 * @param seconds how long it all took
 */
record LoadOnLoopback(SortedMap<Integer, Integer> statuses, int contents, List<Double> sortedMs, double seconds) {

    private static final double NANOS_IN_MS = 1e6;

    /** Sends the order to an address. */
    static LoadOnLoopback of(URI address, String order, int senders, int times) throws InterruptedException {
        HttpClient client =
                HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
        HttpRequest request = HttpRequest.newBuilder(address)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(order))
                .build();
        record Sent(int status, String content, double ms) {}
        ExecutorService pool = Executors.newFixedThreadPool(senders);
        SortedMap<Integer, Integer> statuses = new TreeMap<>();
        List<Double> ms = new ArrayList<>();
        SortedMap<String, Integer> contents = new TreeMap<>();
        long start = System.nanoTime();
        try {
            List<Future<Sent>> all = new ArrayList<>();
            for (int i = 0; i < times; i++) {
                all.add(pool.submit(() -> {
                    long sent = System.nanoTime();
                    HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
                    return new Sent(answer.statusCode(), answer.body(), (System.nanoTime() - sent) / NANOS_IN_MS);
                }));
            }
            for (Future<Sent> each : all) {
                Sent sent = each.get();
                statuses.merge(sent.status(), 1, Integer::sum);
                ms.add(sent.ms());
                if (sent.status() == 200) {
                    contents.merge(sent.content(), 1, Integer::sum);
                }
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("an order did not reach " + address, e.getCause());
        } finally {
            pool.shutdownNow();
        }
        Collections.sort(ms);
        return new LoadOnLoopback(statuses, contents.size(), ms, (System.nanoTime() - start) / (1000 * NANOS_IN_MS));
    }

    /** Returns the figures on one line. */
    String text() {
        return String.format(
                Locale.ROOT,
                "%d answers in %.2f s, %.0f a second; half within %.1f ms, 19 in 20 within %.1f ms; by status %s",
                sortedMs.size(),
                seconds,
                sortedMs.size() / seconds,
                sortedMs.get(sortedMs.size() / 2),
                sortedMs.get(sortedMs.size() * 19 / 20),
                statuses);
    }

    /** Measures a service of its own: {@code LoadOnLoopback ORDER.json [SENDERS [TIMES]]}. */
    public static void main(String[] args) throws IOException, InterruptedException {
        String order = Files.readString(Path.of(args[0]));
        int senders = args.length > 1 ? Integer.parseInt(args[1]) : 8;
        int times = args.length > 2 ? Integer.parseInt(args[2]) : 2000;
        try (PatternService service = PatternService.start(0, Limits.modest())) {
            for (Drawing drawing : Drawing.values()) {
                URI address = service.address().resolve(drawing.path());
                of(address, order, senders, times / 4);
                System.out.println(drawing.path() + ": "
                        + of(address, order, senders, times).text());
            }
        }
    }
}
