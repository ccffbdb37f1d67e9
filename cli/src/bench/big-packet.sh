#!/usr/bin/env bash
# Measures the seal check of a packet of very many entries (bedledger inspect --seal-only) against sha256sum of the same
# lines, in one run, and its peak memory. Needs GNU time, unzip and a built tree with test classes: mvn -DskipTests package
#   ENTRIES=1000000 cli/src/bench/big-packet.sh [FOLDER]
set -euo pipefail
cli=$(cd "$(dirname "$0")/../.." && pwd)
work=${1:-$(mktemp -d)}
[ $# -gt 0 ] || trap 'rm -rf "$work"' EXIT
path=$cli/target/test-classes:$cli/target/classes:$(ls "$cli"/target/lib/*.jar | tr '\n' ':')
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
mkdir -p "$work"
install -m 600 "$cli/src/test/resources/bedledger/cli/packet/sample.key" "$work/sample.key"
"$java" -cp "$path" bedledger.cli.bench.BigBook "$work/book" "${ENTRIES:-1000000}" "$work/sample.key"
packet=$work/book/seal.zip
echo "$(wc -l <"$work/book/journal.jsonl") entries, $(stat -c %s "$work/book/journal.jsonl") bytes of lines, $(stat -c %s "$packet") of packet"
timed() { # name, command …
  local name=$1
  shift
  command time -f '%e %U %M' -o "$work/time" "$@" >"$work/out"
  read -r seconds user kilobytes < <(tail -1 "$work/time")
  printf '%-34s %8.2f s  %8.2f s of processor  %6d MB peak\n' "$name" "$seconds" "$user" $((kilobytes / 1024))
}
timed "sha256sum of the lines" sha256sum "$work/book/journal.jsonl"
timed "unzip -p packet | sha256sum" sh -c "unzip -p '$packet' lines.jsonl | sha256sum"
timed "inspect --seal-only" "$java" -XX:+UseSerialGC -Xmx64m -cp "$path" bedledger.cli.Main inspect --seal-only "$packet"
grep -E 'agrees|lines are whole' "$work/out"
