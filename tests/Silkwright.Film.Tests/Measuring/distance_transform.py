"""Prints what opening by discs of odd diameter removes from noise, by OpenCV's exact distance transform; components beside it.

    /usr/bin/python3 tests/Silkwright.Film.Tests/Measuring/distance_transform.py

A disc of diameter w about a pixel fits where the nearest pixel that is not image is farther than w/2; opening leaves what lies within w/2 of
such a pixel. Outside the picture there is no image. The noise is made alike in DistanceTransformTests.cs. Made with OpenCV 4.6.0 (Debian 12).
"""
import cv2
import numpy

WIDTH, HEIGHT, DIAMETERS = 300, 200, (3, 5, 7, 9, 15, 21, 33)


def noise(seed, block, percent):
    state, picture = seed, numpy.zeros((HEIGHT, WIDTH), numpy.uint8)
    for y in range(0, HEIGHT, block):
        for x in range(0, WIDTH, block):
            state = (1103515245 * state + 12345) & 0x7FFFFFFF
            picture[y : y + block, x : x + block] = (state >> 16) % 100 < percent
    for _ in range(300):
        state = (1103515245 * state + 12345) & 0x7FFFFFFF
        picture[(state >> 8) % HEIGHT, (state >> 8) % WIDTH] ^= 1
    return picture


def removed(picture, diameter):
    pad = diameter + 1
    inside = cv2.distanceTransform(cv2.copyMakeBorder(picture, pad, pad, pad, pad, cv2.BORDER_CONSTANT, value=0), cv2.DIST_L2, cv2.DIST_MASK_PRECISE)
    fits = (inside > diameter / 2).astype(numpy.uint8)
    left = cv2.distanceTransform(1 - fits, cv2.DIST_L2, cv2.DIST_MASK_PRECISE) <= diameter / 2 if fits.any() else fits
    return int(picture.sum() - left.sum())


for seed, block, percent in ((1, 1, 60), (2, 3, 70), (3, 7, 85), (4, 12, 90), (5, 20, 70)):
    picture = noise(seed, block, percent)
    image, gap = (cv2.connectedComponents(p, connectivity=8)[0] - 1 for p in (picture, 1 - picture))
    print(f"[InlineData({seed}, {block}, {percent}, {image}, {gap}, new[] {{ {', '.join(str(removed(picture, w)) for w in DIAMETERS)} }})]")
