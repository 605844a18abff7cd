#!/bin/sh
# Makes the environment and starts Linn beside a homeserver of its own, on this machine only.
# At a terminal you talk to it; with --demo, or without a terminal, it plays one whole walk.
set -eu
# shellcheck source=deploy/environment.sh
. "$(dirname "$0")/environment.sh"

demo=no
[ -t 0 ] || demo=yes
for argument in "$@"; do
    case $argument in
    --demo) demo=yes ;;
    -h | --help) demo=no; break ;;
    esac
done
if [ "$demo" = no ]; then exec "$python" -m bot try "$@"; fi

frames=$root/.linn/frames
mkdir -p "$frames"
echo "Rendering the frames of the walk ..." >&2
"$python" -m tests.scenes "$frames" >&2
exec "$python" -m bot try --demo --frames "$frames" "$@"
