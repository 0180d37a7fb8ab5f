/** Compares pictures by their pixels. */
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';

/**
 * The share of pixels, 0 to 1, in which two PNGs differ over the part that both have. A pixel counts
 * where its colour differs by more than a tenth of the way from black to white as seen (pixelmatch's
 * usual threshold), smoothed edges left aside: two passes of text over an edge are smoothed unlike.
 */
export function difference(one: Buffer, other: Buffer): number {
  const [a, b] = [PNG.sync.read(one), PNG.sync.read(other)];
  const width = Math.min(a.width, b.width);
  const height = Math.min(a.height, b.height);
  const cut = (from: PNG): Buffer => {
    const to = new PNG({ width, height });
    PNG.bitblt(from, to, 0, 0, width, height, 0, 0);
    return to.data;
  };
  const differing = pixelmatch(cut(a), cut(b), null, width, height, { threshold: 0.1 });
  return differing / (width * height);
}

/** How many pixels across and down, and how opaque the upper left one is (0 to 255). */
export function pixelsOf(file: Buffer): { width: number; height: number; corner: number } {
  const { width, height, data } = PNG.sync.read(file);
  return { width, height, corner: data[3]! };
}
