/* Runs of constant power: the bare kernel that RunBatch is held against, with the compensated discriminant of the package.
   cc -O3 -march=native -fno-math-errno -ffp-contract=off -shared -fPIC batch.c -o libbatch.so -lm */
#include <math.h>
#include <stddef.h>

void feed(const double *restrict source, const double *restrict ohms, const double *restrict watts,
    double *restrict volts, double *restrict amperes, ptrdiff_t count)
{
    for (ptrdiff_t i = 0; i < count; i++) {
        double square = source[i] * source[i], power = 4 * watts[i], product = power * ohms[i];
        double discriminant = (square - product) + (fma(source[i], source[i], -square) - fma(power, ohms[i], -product));
        double v = discriminant >= 0 ? (source[i] + sqrt(discriminant)) * 0.5 : 0;
        volts[i] = v;
        amperes[i] = v > 0 ? watts[i] / v : 0;
    }
}
