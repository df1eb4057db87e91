#!/usr/bin/env bash
# Makes night.wav from night.txt. Needs the Debian packages flite and sox.
set -euo pipefail
cd "$(dirname "$0")"
parts=$(mktemp -d)
trap 'rm -r "$parts"' EXIT
i=0
grep -v '^#' night.txt | while read -r pause voice words; do
  i=$((i + 1))
  flite -voice "$voice" -t "$words" -o "$parts/said.wav"
  sox "$parts/said.wav" -r 16000 -c 1 -b 16 "$parts/$(printf %02d $i).wav" norm -3 pad "$pause" 0
done
# A little noise, as any microphone has; the same every time.
sox "$parts"/[0-9][0-9].wav "$parts/night.wav" pad 0 1
seconds=$(soxi -D "$parts/night.wav")
sox -R -n -r 16000 -c 1 -b 16 "$parts/noise.wav" synth "$seconds" pinknoise vol 0.002
sox -R -m -v 1 "$parts/night.wav" -v 1 "$parts/noise.wav" -r 16000 -b 16 night.wav
soxi -D night.wav
