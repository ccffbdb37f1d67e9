package bedledger.cli.exchange;

import java.util.List;

/**
 * What is handed out.
 *
 * @param remarks what whoever takes it should know: what is not in it, and why
 */
record Written(String text, List<String> remarks) {}
