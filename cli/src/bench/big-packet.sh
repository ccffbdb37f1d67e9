#!/usr/bin/env bash
# Measures the seal check of a packet of very many entries (bedledger inspect --seal-only) against sha256sum of the same
# lines, in one run, and its peak memory. Needs GNU time, unzip and a built tree with test classes: mvn -DskipTests package
#   ENTRIES=1000000 cli/src/bench/big-packet.sh [FOLDER]
# With FULL=yes also the whole packet and its whole inspection; that takes minutes and a gigabyte from 100,000 entries on.
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
[ -n "${FULL:-}" ] || exit 0
install -D -m 600 "$work/sample.key" "$work/settings/bedledger/keys/hollow-lane-farm_sample.key"
export XDG_CONFIG_HOME=$work/settings
rm -f "$work/full.zip"
timed "packet" "$java" -XX:+UseSerialGC -cp "$path" bedledger.cli.Main packet --book "$work/book" --out "$work/full.zip"
unzip -Zt "$work/full.zip"
timed "unzip -p full.zip | sha256sum" sh -c "unzip -p '$work/full.zip' | sha256sum"
timed "inspect" "$java" -XX:+UseSerialGC -cp "$path" bedledger.cli.Main inspect "$work/full.zip"
grep -E 'agrees|byte for byte' "$work/out"
