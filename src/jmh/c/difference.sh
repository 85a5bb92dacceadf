#!/bin/sh
# Times CIEDE2000 by Little CMS in C, as a rival of DifferenceBenchmark. Needs a C compiler and liblcms2-dev.
set -eu
here=$(dirname "$0")
out=${1:-target}/difference-lcms
mkdir -p "$(dirname "$out")"
cc -O3 -march=native -o "$out" "$here/difference.c" -llcms2
"$out"
