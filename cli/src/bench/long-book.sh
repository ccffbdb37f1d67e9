#!/usr/bin/env bash
# Measures reading commands on a book of many years against reading the same entries raw (every line of the journal
# made an entry, and nothing asked), in one run. Prints wall seconds, their ratio, seconds of processor, their ratio (the
# one to trust on a busy machine) and peak memory. Every one of them runs with MEMORY of heap, so one that needs more fails.
# Needs python3, GNU time and a built tree: mvn -DskipTests package
#   YEARS=20 BEDS=200 MEMORY=1g cli/src/bench/long-book.sh [FOLDER]     with FOLDER, the book is kept there and used again
set -euo pipefail
cli=$(cd "$(dirname "$0")/../.." && pwd)
years=${YEARS:-20} beds=${BEDS:-200}
work=${1:-$(mktemp -d)}
[ $# -gt 0 ] || trap 'rm -rf "$work"' EXIT
mkdir -p "$work"
export XDG_CONFIG_HOME=$work/config XDG_CACHE_HOME=$work/cache
book=$work/book

if [ ! -d "$book" ]; then
  "$cli/bedledger" new "$book" --farm Bench --practice >/dev/null
  python3 "$cli/src/bench/long_book.py" "$years" "$beds" "$work"
  for sheet in "$work"/beds.csv "$work"/year-*.csv; do
    "$cli/bedledger" import "$sheet" --book "$book" 2>/dev/null | head -1
  done
  mkdir -p "$book/weather"
  mv "$work/weather.csv" "$book/weather/"
fi
echo "$(wc -l <"$book/journal.jsonl") entries, $(stat -c %s "$book/journal.jsonl") bytes of journal"

path=$cli/target/test-classes:$cli/target/classes:$(ls "$cli"/target/lib/*.jar | tr '\n' ':')
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
quick="-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:-UsePerfData"
export JAVA_TOOL_OPTIONS=-Xmx${MEMORY:-1g}
timed() { # name, command …
  local name=$1 failed=
  shift
  command time -f '%e %U %M' -o "$work/time" "$@" >"$work/out-$name" 2>"$work/err-$name" || failed=", FAILED"
  read -r seconds user kilobytes < <(tail -1 "$work/time")
  [ "$name" = raw ] && raw=$seconds rawuser=$user
  awk -v name="$name" -v s="$seconds" -v u="$user" -v k="$kilobytes" -v raw="$raw" -v rawuser="$rawuser" -v failed="$failed" \
    'BEGIN { printf "%-20s %7.2f s %6.2f x raw  %7.2f s of processor %6.2f x raw  %5d MB peak%s\n",
      name, s, s / raw, u, u / rawuser, k / 1024, failed }'
}
raw=1 rawuser=1
# With the launcher's own flags: what is compared is the work, not the compiler.
timed warm-up "$java" $quick -cp "$path" bedledger.cli.bench.ReadRaw "$book"
timed raw "$java" $quick -cp "$path" bedledger.cli.bench.ReadRaw "$book"
for question in ${ASK:-beds returned returned,--by,season ready nitrogen soil hours check due gaps}; do
  timed "${question//,/ }" "$cli/bedledger" ${question//,/ } --book "$book" --json
done
