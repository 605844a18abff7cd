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

# The frames are rendered once, and again when what renders them has changed.
frames=$root/.linn/frames
made_of=$(cat tests/scenes/*.py | cksum)
if [ "$(cat "$frames/made-of" 2>/dev/null)" != "$made_of" ]; then
    echo "Rendering the frames of the walk (once; half a minute) ..." >&2
    mkdir -p "$frames"
    "$python" -m tests.scenes "$frames" >&2
    echo "$made_of" >"$frames/made-of"
fi
exec "$python" -m bot try --demo --frames "$frames" "$@"
