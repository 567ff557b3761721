#!/usr/bin/env bash
# scripts/deploy/checks/container.sh [IMAGE]: builds the image and runs it locked down: an ordinary user, read-only root, no
# capabilities, 512 MiB, no network but loopback. Needs docker or podman that works here; says so and ends with 0 where none does.
# With IMAGE that image is run instead of a fresh build.
set -euo pipefail
cd "$(dirname "$0")/../../.."
for engine in docker podman; do
  if command -v "$engine" >/dev/null && "$engine" info >/dev/null 2>&1; then break; fi
  engine=
done
if [ -z "$engine" ]; then echo "SKIP  no container engine that works here"; exit 0; fi

image=${1:-cabinbass-check}
base=$(sed -n 's/^FROM \([^ ]*\)$/\1/p' Dockerfile | tail -1)
if [ $# -eq 0 ] && ! "$engine" image inspect "$base" >/dev/null 2>&1 && ! "$engine" pull -q "$base" >/dev/null 2>&1; then
  echo "SKIP  $base cannot be had here"; exit 0
fi
if [ $# -eq 0 ] && ! "$engine" build -q -t "$image" . ; then echo "FAIL  the image does not build"; exit 1; fi
passed=0; failed=0
must() { if eval "$2"; then passed=$((passed + 1)); echo "PASS  $1"; else failed=$((failed + 1)); echo "FAIL  $1"; fi; }
name=cabinbass-check-$$
trap '"$engine" rm -f "$name" >/dev/null 2>&1 || true' EXIT

"$engine" run -d --name "$name" --network none --read-only --cap-drop all --security-opt no-new-privileges --memory 512m \
  --pids-limit 128 -e WORKERS=1 -e WORKER_HEAP_MB=160 -e NODE_OPTIONS=--max-old-space-size=192 "$image" >/dev/null
inside() { "$engine" exec "$name" node -e "$1"; }
ready='fetch("http://127.0.0.1:3000/health/ready").then(r => process.exit(r.ok ? 0 : 1), () => process.exit(1))'
for _ in $(seq 60); do if inside "$ready"; then break; fi; sleep 1; done
must 'gets ready' 'inside "$ready"'
must 'runs as an ordinary user' 'inside "process.exit(process.getuid() === 1000 ? 0 : 1)"'
must 'cannot write where it lives' '! inside "require(\"fs\").writeFileSync(\"/app/x\", \"\")" 2>/dev/null'
must 'carries no development packages' '! inside "require.resolve(\"vitest\")" 2>/dev/null'
call='fetch("http://127.0.0.1:3000/v1/coils/wiring", { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify({ driverCount: 2, coilsPerDriver: 1, coilOhm: 4 }) }).then(r => process.exit(r.ok ? 0 : 1))'
must 'answers a calculation' 'inside "$call"'
"$engine" stop -t 40 "$name" >/dev/null
must 'stops with 0 when asked' '[ "$("$engine" inspect --format "{{.State.ExitCode}}" "$name")" = 0 ]'
"$engine" image inspect --format 'size {{.Size}} bytes' "$image"
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
