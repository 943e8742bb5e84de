/* 8-connected components of a film's image and gap with their places, by leptonica on packed bits.
   Prints: seconds and processor seconds of both (reading not counted), MiB at most, components of image and of gap. */
#include <leptonica/allheaders.h>
#include <stdio.h>
#include <sys/resource.h>
#include <time.h>

static double now(void)
{
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

int main(int argc, char **argv)
{
    if (argc != 2)
        return 2;
    PIX *film = pixRead(argv[1]);
    if (!film)
        return 1;
    double started = now();
    clock_t worked = clock();
    BOXA *image = pixConnCompBB(film, 8);
    pixInvert(film, film);
    BOXA *gap = pixConnCompBB(film, 8);
    double seconds = now() - started;
    double work = (double)(clock() - worked) / CLOCKS_PER_SEC;
    struct rusage used;
    getrusage(RUSAGE_SELF, &used);
    printf("%.3f %.3f %.0f %d %d\n", seconds, work, (double)used.ru_maxrss / 1024, boxaGetCount(image), boxaGetCount(gap));
    return 0;
}
