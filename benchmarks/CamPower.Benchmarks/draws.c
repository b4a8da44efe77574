/* A million draws of a site of 32 cameras: the bare kernel that ToleranceBenchmarks is held against.
   cc -O3 -march=native -fno-math-errno -ffp-contract=off draws.c -lm && ./a.out
   Philox4x32-10, uniform ranges, loop resistance, closed form with the compensated discriminant. */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <time.h>

enum { CAMERAS = 32, BOXES = 2, PARTS = 1 + BOXES + 1 + 2 * CAMERAS, DRAWS = 1000000 };

static void block(uint32_t c0, uint32_t c1, uint32_t c2, uint32_t c3, uint32_t k0, uint32_t k1, uint32_t out[4])
{
    for (int round = 0; round < 10; round++) {
        uint64_t a = (uint64_t)0xD2511F53u * c0, b = (uint64_t)0xCD9E8D57u * c2;
        uint32_t n0 = (uint32_t)(b >> 32) ^ c1 ^ k0, n2 = (uint32_t)(a >> 32) ^ c3 ^ k1;
        c0 = n0; c1 = (uint32_t)b; c2 = n2; c3 = (uint32_t)a;
        k0 += 0x9E3779B9u; k1 += 0xBB67AE85u;
    }
    out[0] = c0; out[1] = c1; out[2] = c2; out[3] = c3;
}

static double between(uint32_t high, uint32_t low)
{
    return (((((uint64_t)high << 32) | low) >> 11) + 0.5) * (1.0 / (1LL << 53));
}

static double difference_of_products(double a, double b, double c, double d)
{
    double cd = c * d, error = fma(-c, d, cd), difference = fma(a, b, -cd);
    return difference + error;
}

static double volts(double source, double ohms, double watts)
{
    double discriminant = difference_of_products(source, source, 4 * watts, ohms);
    return discriminant >= 0 ? (source + sqrt(discriminant)) / 2 : 0;
}

int main(void)
{
    double low[PARTS], span[PARTS], x[PARTS + 1], at20[CAMERAS], per_kelvin[CAMERAS];
    for (int i = 0; i < PARTS; i++) { low[i] = i == 0 ? -10 : i <= BOXES ? -0.01 : i == BOXES + 1 ? -0.02 : i % 2 ? -0.05 : -0.3; }
    for (int i = 0; i < PARTS; i++) { span[i] = i == 0 ? 20 : i <= BOXES ? 0.02 : i == BOXES + 1 ? 0.04 : i % 2 ? 0.10 : 0.35; }
    for (int i = 0; i < CAMERAS; i++) { at20[i] = 0.3 + 0.055 * i; per_kelvin[i] = at20[i] * 0.00393; }
    long hits = 0;
    struct timespec from, to;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &from);
    for (uint32_t draw = 0; draw < DRAWS; draw++) {
        for (uint32_t pair = 0; 2 * pair < PARTS; pair++) {
            uint32_t words[4];
            block(draw, 0, pair, 0, 1, 0, words);
            x[2 * pair] = low[2 * pair] + span[2 * pair] * between(words[0], words[1]);
            if (2 * pair + 1 < PARTS) x[2 * pair + 1] = low[2 * pair + 1] + span[2 * pair + 1] * between(words[2], words[3]);
        }
        for (int i = 0; i < CAMERAS; i++) {
            double source = 13 * (1 + x[1 + i / 16]);
            double ohms = (at20[i] + per_kelvin[i] * (30 + x[0] - 20)) * (1 + x[BOXES + 1]) * (1 + x[BOXES + 2 + 2 * i]);
            hits += volts(source, ohms * (1 + x[BOXES + 3 + 2 * i]), 8.4) < 10.8;
        }
    }
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &to);
    printf("%ld hits, %.3f s\n", hits, (to.tv_sec - from.tv_sec) + 1e-9 * (to.tv_nsec - from.tv_nsec));
    return 0;
}
