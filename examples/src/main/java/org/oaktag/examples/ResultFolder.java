package org.oaktag.examples;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.oaktag.PatternException;

/**
 * Where the results go, whole or not at all.
 *
 * <p>Everything is written into a new folder beside the one asked for, which then takes its place by renaming. What was
 * there before is removed only after that, and only if every file in it has a name that this program gives: a folder
 * that holds anything else is refused.
 */
final class ResultFolder {

    /** What is of one of several sizes alone lies in a folder of its own: its number, and its name. */
    private static final String SIZE = "[1-6](-[a-z0-9-]+)?";

    private static final Pattern OURS = Pattern.compile("pattern\\.svg|pattern-(a4|copy-shop)\\.pdf|pattern-a4\\.html"
            + "|(" + SIZE + "/)?(flat\\.svg|lay-[^/]+\\.svg|(seams|changes|finished|cut-list|assembly)\\.csv"
            + "|steps(/\\d\\d-[^/]*\\.svg)?)|" + SIZE + "(/account\\.txt)?");

    private static final Pattern FOLDERS = Pattern.compile("(" + SIZE + "/)?steps|" + SIZE);

    private final Path folder;

    private ResultFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Returns the folder, as yet untouched.
     *
     * @throws PatternException if it is a file, or holds anything that this program did not write
     */
    static ResultFolder at(Path asked) {
        return at(asked, OURS);
    }

    /**
     * Returns the folder, as yet untouched.
     *
     * @param ours what the files are called that this program writes, their folders parted by {@code /}
     * @throws PatternException if it is a file, or holds anything that this program did not write
     */
    static ResultFolder at(Path asked, Pattern ours) {
        Path folder = asked.toAbsolutePath().normalize();
        try {
            // Behind a link, the folder itself is replaced and not the link.
            folder = Files.exists(folder) ? folder.toRealPath() : folder;
            if (Files.exists(folder) && !Files.isDirectory(folder)) {
                throw PatternException.of(thing(asked), "must be a folder", "a file", "choose another name");
            }
            if (folder.getParent() == null) {
                throw PatternException.of(thing(asked), "must not be the root", "'" + folder + "'", "");
            }
            checkOurs(folder, ours);
        } catch (IOException e) {
            throw refused(folder, e);
        }
        return new ResultFolder(folder);
    }

    private static void checkOurs(Path folder, Pattern ours) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.filter(each -> !each.equals(folder)).sorted().toList()) {
                String name = folder.relativize(path).toString().replace('\\', '/');
                boolean directory = Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
                if (!ours.matcher(name).matches()
                        || directory != FOLDERS.matcher(name).matches()) {
                    throw PatternException.of(
                            thing(folder),
                            "must be new, empty, or hold nothing but earlier results, which are replaced",
                            "a folder with '" + name + "' in it",
                            "choose another folder");
                }
            }
        }
    }

    Path path() {
        return folder;
    }

    /**
     * Writes all files, in the place of what was there.
     *
     * @param files the content of each by its path below the folder, with {@code /} between names
     * @throws PatternException if something cannot be written; then everything is as it was before
     */
    void write(Map<String, byte[]> files) {
        List<Path> made = new ArrayList<>();
        Path parent = folder.resolveSibling("");
        String own = "." + folder.getFileName() + "." + ProcessHandle.current().pid();
        Path fresh = folder.resolveSibling(own + ".new");
        Path old = folder.resolveSibling(own + ".old");
        try {
            makeParents(parent, made);
            Files.createDirectory(fresh);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path path = fresh.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.write(path, file.getValue());
            }
            swap(fresh, old);
        } catch (IOException e) {
            removeQuietly(fresh);
            made.sort(Comparator.reverseOrder());
            made.forEach(ResultFolder::removeQuietly);
            throw refused(folder, e);
        }
        removeQuietly(old);
    }

    private void swap(Path fresh, Path old) throws IOException {
        boolean replacing = Files.exists(folder);
        if (replacing) {
            Files.move(folder, old, StandardCopyOption.ATOMIC_MOVE);
        }
        try {
            Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            if (replacing) {
                Files.move(old, folder, StandardCopyOption.ATOMIC_MOVE);
            }
            throw e;
        }
    }

    private static void makeParents(Path parent, List<Path> made) throws IOException {
        List<Path> missing = new ArrayList<>();
        for (Path each = parent; each != null && !Files.exists(each); each = each.getParent()) {
            missing.add(0, each);
        }
        for (Path each : missing) {
            Files.createDirectory(each);
            made.add(each);
        }
    }

    /** What this leaves behind is no reason to fail: the results are written, or the first failure is being told. */
    private static void removeQuietly(Path path) {
        try (Stream<Path> all = Files.walk(path)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        } catch (NoSuchFileException e) {
            return;
        } catch (IOException e) {
            System.err.println("could not remove " + path + ": " + reason(e));
        }
    }

    private static PatternException refused(Path folder, IOException e) {
        return PatternException.of(
                thing(folder), "must be a place that can be written to", reason(e), "choose another folder with --out");
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "no permission for '" + e.getMessage() + "'";
        }
        if (e instanceof FileSystemException fileSystem && fileSystem.getFile() != null) {
            String why = fileSystem.getReason();
            return "'" + fileSystem.getFile() + "': "
                    + (why != null ? why : fileSystem.getClass().getSimpleName());
        }
        return String.valueOf(e.getMessage());
    }

    private static String thing(Path folder) {
        return "output folder '" + folder + "'";
    }
}
