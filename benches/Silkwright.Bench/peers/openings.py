"""Openings of one film's image by discs with OpenCV on two threads, by its fastest path for them.

usage: openings.py FILM DIAMETER...
Prints for each diameter: seconds and processor seconds of the opening alone, pixels it removed; at the end MiB the film and its openings took.
The disc is this project's (docs/engines/film.md, "Discs"); outside the film there is nothing, so that both answers must be equal.
"""
import os
import resource
import sys
import time

os.environ["OPENCV_IO_MAX_IMAGE_PIXELS"] = str(1 << 40)
import cv2
import numpy

cv2.setNumThreads(2)


def peak_mib():
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def disc(diameter):
    across = 2 * numpy.arange(diameter) - (diameter - 1)
    return (across[:, None] ** 2 + across[None, :] ** 2 <= diameter**2).astype(numpy.uint8)


before = peak_mib()
film = cv2.bitwise_not(cv2.imread(sys.argv[1], cv2.IMREAD_GRAYSCALE))
for diameter in map(int, sys.argv[2:]):
    started, worked = time.perf_counter(), time.process_time()
    # An even disc's anchor is mirrored between erosion and dilation; as OpenCV mirrors nothing, the two halves name their own.
    low, high = (diameter - 1) // 2, diameter // 2
    if low == high:
        opened = cv2.morphologyEx(film, cv2.MORPH_OPEN, disc(diameter), borderType=cv2.BORDER_CONSTANT, borderValue=0)
    else:
        fits = cv2.erode(film, disc(diameter), anchor=(low, low), borderType=cv2.BORDER_CONSTANT, borderValue=0)
        opened = cv2.dilate(fits, disc(diameter), anchor=(high, high), borderType=cv2.BORDER_CONSTANT, borderValue=0)
    seconds, work = time.perf_counter() - started, time.process_time() - worked
    print(f"{seconds:.3f} {work:.3f} {cv2.countNonZero(film) - cv2.countNonZero(opened)}", flush=True)
print(f"{peak_mib() - before:.0f}")
