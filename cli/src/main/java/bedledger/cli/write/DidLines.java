package bedledger.cli.write;

import bedledger.cli.Exit;
import bedledger.cli.Failure;
import bedledger.cli.Surroundings;
import bedledger.domain.Written;
import bedledger.language.Refused;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** {@code bedledger did -}: one act a line from standard input, each acknowledged on its own before the next is read. */
final class DidLines {
    private final Surroundings around;
    private final WriteOptions options;

    DidLines(Surroundings around, WriteOptions options) {
        this.around = around;
        this.options = options;
    }

    int run() {
        int refused = 0;
        try (Writing writing = new Writing(around, options);
                BufferedReader lines = new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                refused += line.isBlank() || line.startsWith("#") ? 0 : write(writing, line);
            }
            writing.seal();
        } catch (IOException failed) {
            throw new UncheckedIOException("Standard input could not be read: " + failed.getMessage(), failed);
        }
        return refused == 0 ? Exit.OK : Exit.REFUSED;
    }

    private int write(Writing writing, String line) {
        try {
            List<String> words = act(SaidWords.of(line));
            String moment = WriteOptions.take(words, "--written");
            Did.Spoken spoken = Did.Spoken.of(words);
            if (moment != null) {
                writing.goOnTo(moment);
            }
            Written written = writing.write(spoken.drafts(writing));
            Echo.print(around, writing.told(written), writing.book().zone());
            around.out().flush();
            return 0;
        } catch (Refused refused) {
            around.err().println("Refused; this line was not written: " + line);
            refused.problems().forEach(problem -> around.err().println("  " + problem));
        } catch (Failure failure) {
            around.err().println("Refused; this line was not written: " + line + "\n  " + failure.getMessage());
        }
        return 1;
    }

    /** The words of the act; a whole command line, as the manual shows it, is as good. */
    private static List<String> act(List<String> words) {
        int from = words.indexOf("bedledger") == 0 ? 1 : 0;
        return words.subList(words.size() > from + 1 && words.get(from).equals("did") ? from + 1 : from, words.size());
    }
}
