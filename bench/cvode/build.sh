#!/bin/sh
# Builds the SUNDIALS bridge. Needs gcc, libsundials-dev, libsuitesparse-dev and a JDK.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
java=${JAVA_HOME:-$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")}
out=${1:-$here/../target}
mkdir -p "$out"
gcc -O3 -march=native -Wall -Wextra -Werror -shared -fPIC -o "$out/libsundialsbridge.so" "$here/bridge.c" \
    -I"$java/include" -I"$java/include/linux" -I/usr/include/suitesparse \
    -lsundials_cvode -lsundials_ida -lsundials_nvecserial -lsundials_sunlinsolklu -lsundials_sunmatrixsparse -lklu
