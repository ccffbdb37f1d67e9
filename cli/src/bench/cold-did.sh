#!/usr/bin/env bash
# Measures a cold `did` against its floor (Picocli and one raw H2 insert, the same JVM flags, each with
# its own class archive) and against a bare JVM start, in one run of hyperfine. Prints medians and ratios.
# Needs hyperfine and a built tree: mvn -DskipTests package
set -euo pipefail
cli=$(cd "$(dirname "$0")/../.." && pwd)
runs=${RUNS:-15}
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
try=$(mktemp -d)
trap 'rm -rf "$try"' EXIT
export HOME=$try/home XDG_CONFIG_HOME=$try/config XDG_CACHE_HOME=$try/cache
mkdir -p "$HOME"
quick="-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:-UsePerfData"

"$cli/bedledger" new "$try/book" --farm Bench --practice >/dev/null 2>&1
"$cli/bedledger" did register-field North --gross 0.05ha --book "$try/book" >/dev/null
"$cli/bedledger" did lay-out N1..N4 --field North --length 20m --width 0.75m --book "$try/book" >/dev/null
"$cli/bedledger" did tarp N1 --book "$try/book" >/dev/null 2>&1

mkdir "$try/floor"
(cd "$cli/target/test-classes" && jar cf "$try/floor/floor.jar" bedledger/cli/bench)
path=$try/floor/floor.jar:$(ls "$cli"/target/lib/picocli-*.jar):$(ls "$cli"/target/lib/h2-*.jar)
"$java" $quick -Xshare:off -XX:DumpLoadedClassList="$try/floor/list" -cp "$path" bedledger.cli.bench.RawInsert "$try/floor/db"
"$java" $quick -Xshare:dump -Xlog:disable -Xlog:all=off -XX:SharedClassListFile="$try/floor/list" \
  -XX:SharedArchiveFile="$try/floor/archive" -cp "$path" >/dev/null 2>&1
floor="$java $quick -XX:SharedArchiveFile=$try/floor/archive -cp $path bedledger.cli.bench.RawInsert $try/floor/db --payload {}"

hyperfine --style basic --warmup 2 --runs "$runs" --export-json "$try/result.json" \
  --command-name "did" "$cli/bedledger did check-tarp N1 --leaves gone --book $try/book" \
  --command-name "floor" "$floor" \
  --command-name "version" "$cli/bedledger --version" \
  --command-name "jvm" "$java $quick -version" >/dev/null
python3 - "$try/result.json" <<'P'
import json, sys
medians = {r["command"]: r["median"] * 1000 for r in json.load(open(sys.argv[1]))["results"]}
floor = medians["floor"]
for name, ms in medians.items():
    print(f"{name:10} median {ms:6.0f} ms   {ms / floor:5.2f} x floor")
P
