package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** Many threads ask a path that nobody has asked yet: each hears what a single thread hears, to the last bit. */
class PathRaceTest {
    private static final int THREADS = 8;
    private static final int ROUNDS = 300;

    private static Path fresh() {
        PathBuilder path = Path.from(Point.of(0.1, 0.2));
        for (int i = 1; i <= 12; i++) {
            path.curveTo(Point.of(30 * i - 20, 17 * i % 40), Point.of(30 * i - 10, -13 * i % 50), Point.of(30 * i, i));
        }
        return path.lineTo(Point.of(400, 400)).build();
    }

    /** The answers, each starting with another question, so that the first use is now this and now that. */
    private static List<Object> answers(Path path, int first) {
        Object[] answers = new Object[14];
        for (int k = 0; k < answers.length; k++) {
            int question = (first + k) % answers.length;
            answers[question] = answer(path, question);
        }
        return List.of(answers);
    }

    private static Object answer(Path path, int question) {
        double distance = 40 + 17.3 * question;
        return switch (question % 7) {
            case 0 -> path.length();
            case 1 -> path.pointAt(distance);
            case 2 -> path.locate(distance);
            case 3 -> path.splitAt(distance);
            case 4 -> path.nearest(Point.of(distance, 3));
            case 5 -> Crossings.between(path, Path.polyline(Point.of(distance, -90), Point.of(distance + 5, 90)));
            default -> path.sub(distance, 2 * distance).length();
        };
    }

    @Test
    void racing_threads_hear_what_a_single_one_hears() throws Exception {
        List<Object> alone = answers(fresh(), 0);
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        CyclicBarrier start = new CyclicBarrier(THREADS);
        try {
            for (int round = 0; round < ROUNDS; round++) {
                Path shared = fresh();
                List<Callable<List<Object>>> racing = new ArrayList<>();
                for (int thread = 0; thread < THREADS; thread++) {
                    int first = thread;
                    racing.add(() -> {
                        start.await();
                        return answers(shared, first);
                    });
                }
                for (Future<List<Object>> heard : pool.invokeAll(racing)) {
                    assertThat(heard.get()).isEqualTo(alone);
                }
            }
        } finally {
            pool.shutdownNow();
        }
    }
}
