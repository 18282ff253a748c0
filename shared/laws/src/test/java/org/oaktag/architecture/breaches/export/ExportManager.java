package org.oaktag.architecture.breaches.export;

import java.util.HashMap;
import java.util.Map;
import org.oaktag.architecture.breaches.examples.Example;

/** Also open to extension, named for nothing, stateful, a getter's home, and dependent on the clock. */
public class ExportManager {
    static final HashMap<String, String> CACHE = new HashMap<>();

    private final Example above;

    public ExportManager(Example above) {
        this.above = above;
    }

    public Map<String, String> getCache() {
        return Map.of(above.toString(), Long.toString(System.nanoTime()));
    }
}
