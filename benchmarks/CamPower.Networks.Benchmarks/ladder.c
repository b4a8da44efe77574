/* The ladder reduction of RadialKernel.cs in C: the same sums in the same order, the same end. */
#include <math.h>

struct tangent { double amperes, siemens; };
struct rung { int parent; double ohms; };
struct load { double watts, amperes, siemens, watts_per_scale; };

int ladder(int count, const struct rung *rungs, const struct load *loads, double source, double *volts, struct tangent *behind)
{
    double last = INFINITY;
    for (int i = 0; i < count; i++) volts[i] = source, behind[i] = (struct tangent){0, 0};
    for (int iteration = 1; iteration <= 200; iteration++)
    {
        double largest = 0;
        for (int i = count - 1; i >= 0; i--)
        {
            double v = volts[i], r = rungs[i].ohms, square = v * v, load = loads[i].siemens * square - loads[i].watts;
            double divisor = square + r * load + r * square * behind[i].siemens;
            if (!(divisor > 0)) return -iteration;
            double share = 1 / divisor;
            double a = (behind[i].amperes * v + (loads[i].amperes * v + 2 * loads[i].watts)) * v * share;
            double b = (behind[i].siemens * square + load) * share;
            behind[i].amperes = a;
            behind[i].siemens = b;
            if (rungs[i].parent < 0) continue;
            behind[rungs[i].parent].amperes += a;
            behind[rungs[i].parent].siemens += b;
        }
        for (int i = 0; i < count; i++)
        {
            double feeding = rungs[i].parent < 0 ? source : volts[rungs[i].parent];
            double now = feeding - rungs[i].ohms * (behind[i].amperes + behind[i].siemens * feeding);
            behind[i] = (struct tangent){0, 0};
            if (!(now > 0)) return -iteration;
            double step = fabs(volts[i] - now);
            if (step > largest) largest = step;
            volts[i] = now;
        }
        double step = largest / source, shrink = isinf(last) ? 1 : step / last;
        if (step <= 1e-14 || (step >= last && step <= 1e-7) || step * shrink * shrink <= 1e-16) return iteration;
        last = step;
    }
    return -200;
}
