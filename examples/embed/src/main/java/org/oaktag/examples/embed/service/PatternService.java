package org.oaktag.examples.embed.service;

import java.net.URI;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/**
 * Makes patterns over HTTP: a body and a recipe come in as JSON, a sheet or the walk of the seams goes out.
 *
 * <p>Garments are values, so requests share nothing and need no locks. What has to be looked after is how much may be
 * asked at once; {@link Limits} says that. It listens on the loopback address alone: put it behind a server that knows
 * who may ask.
 */
public final class PatternService implements AutoCloseable {

    private static final int SLOWEST_SENDER_MS = 10_000;
    private static final int SENDERS = 64;
    private static final String LOOPBACK = "127.0.0.1";

    private final Server server;
    private final ServerConnector connector;
    private final ThreadPoolExecutor makers;

    private PatternService(int port, Limits limits) {
        makers = new ThreadPoolExecutor(
                limits.atWork(), limits.atWork(), 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(limits.waiting()));
        server = new Server(new QueuedThreadPool(SENDERS));
        HttpConfiguration http = new HttpConfiguration();
        http.setSendServerVersion(false);
        connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setHost(LOOPBACK);
        connector.setPort(port);
        connector.setIdleTimeout(SLOWEST_SENDER_MS);
        server.addConnector(connector);
        server.setHandler(new PatternHandler(limits, makers));
    }

    /**
     * Starts the service.
     *
     * @param port the port, or 0 for any that is free
     * @throws IllegalStateException if it cannot be started there
     */
    public static PatternService start(int port, Limits limits) {
        PatternService service = new PatternService(port, limits);
        try {
            service.server.start();
        } catch (Exception e) {
            service.close();
            throw new IllegalStateException("cannot listen on port " + port, e);
        }
        return service;
    }

    /** Returns where it listens. */
    public URI address() {
        return URI.create("http://" + LOOPBACK + ":" + connector.getLocalPort());
    }

    @Override
    public void close() {
        makers.shutdownNow();
        try {
            server.stop();
        } catch (Exception e) {
            throw new IllegalStateException("the service did not stop", e);
        }
    }

    /** Serves until it is interrupted. The one argument is the port; 8017 if left out. */
    public static void main(String[] args) throws InterruptedException {
        int port = args.length == 0 ? 8017 : Integer.parseInt(args[0]);
        try (PatternService service = start(port, Limits.modest())) {
            System.out.println(
                    "send orders to " + service.address() + "/pattern.svg, for example with examples/embed/order.sh");
            service.server.join();
        }
    }
}
