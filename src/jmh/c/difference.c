/* CIEDE2000 by Little CMS on twenty thousand random pairs: the fastest of many rounds, in nanoseconds for one pair. */
#include <lcms2.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define PAIRS 20000
#define ROUNDS 1000

static cmsCIELab first[PAIRS], second[PAIRS];
static double out[PAIRS];

static double upTo(double most) { return most * rand() / RAND_MAX; }

static cmsCIELab random_lab(void) {
    cmsCIELab lab = {upTo(100), upTo(256) - 128, upTo(256) - 128};
    return lab;
}

int main(void) {
    double best = 1e300, sum = 0;
    srand(2000);
    for (int i = 0; i < PAIRS; i++) {
        first[i] = random_lab();
        second[i] = random_lab();
    }
    for (int round = 0; round < ROUNDS; round++) {
        struct timespec start, end;
        clock_gettime(CLOCK_MONOTONIC, &start);
        for (int i = 0; i < PAIRS; i++) {
            out[i] = cmsCIE2000DeltaE(&first[i], &second[i], 1, 1, 1);
        }
        clock_gettime(CLOCK_MONOTONIC, &end);
        double ns = ((end.tv_sec - start.tv_sec) * 1e9 + (end.tv_nsec - start.tv_nsec)) / PAIRS;
        if (ns < best) best = ns;
        sum += out[round % PAIRS];
    }
    printf("Little CMS %d, C: %.1f ns a pair, fastest of %d rounds (check %.3f)\n", LCMS_VERSION, best, ROUNDS, sum);
    return 0;
}
