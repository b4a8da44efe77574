#!/bin/sh
# Builds the C kernel and runs the comparison. Needs gcc and ngspice.
set -e
cd "$(dirname "$0")"
dotnet build -c Release --nologo -v q
gcc -O3 -march=native -shared -fPIC -o bin/Release/net10.0/libladder.so ladder.c -lm
exec dotnet bin/Release/net10.0/CamPower.Networks.Benchmarks.dll "$@"
