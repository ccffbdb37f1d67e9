#!/usr/bin/env bash
# Measures reading commands on a book of many years against reading the same entries raw (every line of the journal
# made an entry, and nothing asked), in one run. Prints wall seconds, ratios and peak memory.
# Needs python3, GNU time and a built tree: mvn -DskipTests package
#   YEARS=20 BEDS=200 cli/src/bench/long-book.sh [FOLDER]     with FOLDER, the book is kept there and used again
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
timed() { # name, command …
  local name=$1
  shift
  command time -f '%e %M' -o "$work/time" "$@" >"$work/out-$name" 2>"$work/err-$name" || true
  read -r seconds kilobytes < <(tail -1 "$work/time")
  [ "$name" = raw ] && raw=$seconds
  printf '%-28s %7.2f s  %5.2f x raw  %6d MB peak\n' "$name" "$seconds" \
    "$(python3 -c "print($seconds / $raw)")" $((kilobytes / 1024))
}
raw=1
timed warm-up "$java" -cp "$path" bedledger.cli.bench.ReadRaw "$book"
timed raw "$java" -cp "$path" bedledger.cli.bench.ReadRaw "$book"
for question in ${ASK:-beds returned returned,--by,season ready nitrogen soil hours check}; do
  timed "${question//,/ }" "$cli/bedledger" ${question//,/ } --book "$book" --json
done
