/* Runs of constant power: the bare kernel that RunBatch is held against, with the compensated discriminant of the package.
   cc -O3 -march=native -fno-math-errno -ffp-contract=off -shared -fPIC batch.c -o libbatch.so -lm
   gcc 12 leaves the loop scalar, for a comparison might trap; with -fno-trapping-math it makes vectors of it, with the same bits. */
#include <math.h>
#include <stddef.h>

void feed(const double *restrict source, const double *restrict ohms, const double *restrict watts,
    double *restrict volts, double *restrict amperes, ptrdiff_t count)
{
    for (ptrdiff_t i = 0; i < count; i++) {
        double square = source[i] * source[i], power = 4 * watts[i], product = power * ohms[i];
        double discriminant = (square - product) + (fma(source[i], source[i], -square) - fma(power, ohms[i], -product));
        double root = (source[i] + sqrt(discriminant)) * 0.5, quotient = watts[i] / root;
        volts[i] = discriminant >= 0 ? root : 0;
        amperes[i] = discriminant >= 0 ? quotient : 0;
    }
}
