import { levelAt, type Body } from './body.ts';
import { onPage, type Page, type Spot } from './page.ts';
import { TRUNK } from './skeleton.ts';
import { at, cosDeg, dot, length, sinDeg, type Vec } from './space.ts';

/** Half width, belly and back depth at any height of the trunk, in head heights. */
export function girth(along: number): { half: number; belly: number; back: number } {
  const last = TRUNK.length - 1;
  let i = 0;
  while (i < last - 1 && (TRUNK[i + 1]?.along ?? Infinity) < along) i++;
  const [a, b] = [TRUNK[i], TRUNK[i + 1]];
  if (!a || !b) throw new RangeError(`no girth of the trunk at ${along}`);
  const t = Math.min(1, Math.max(0, (along - a.along) / (b.along - a.along)));
  const soft = t * t * (3 - 2 * t);
  const blend = (from: number, to: number): number =>
    from + (to - from) * (i === 0 || i === last - 1 ? t : (soft + t) / 2);
  return {
    half: blend(a.half, b.half),
    belly: blend(a.belly, b.belly),
    back: blend(a.back, b.back),
  };
}

/** The two edges of the trunk as seen, from the lowest to the highest of the heights given. */
function edges(
  page: Page,
  body: Body,
  heights: readonly number[],
): { left: Spot[]; right: Spot[] } {
  const left: Spot[] = [];
  const right: Spot[] = [];
  for (const along of heights) {
    const { centre, frame } = levelAt(body.levels, along);
    const { half, belly, back } = girth(along);
    // Across the page, square to the trunk's own line as it is seen.
    const flat: Vec = [frame.y[1], -frame.y[0], 0];
    const size = length(flat) || 1;
    for (const sign of [1, -1]) {
      const n: Vec = [(sign * flat[0]) / size, (sign * flat[1]) / size, 0];
      const wide = dot(frame.x, n) * half;
      const deep = dot(frame.z, n);
      const reach = Math.hypot(wide, deep * (deep > 0 ? belly : back));
      const edge = onPage(page, [centre[0] + n[0] * reach, centre[1] + n[1] * reach, centre[2]]);
      (sign > 0 ? left : right).push(edge);
    }
  }
  return { left, right };
}

const span = (from: number, to: number, steps: number): number[] =>
  Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);

/** The outline of the trunk from the crotch to the root of the neck. */
export function trunkOutline(page: Page, body: Body): Spot[] {
  const { left, right } = edges(page, body, span(-0.19, 1.02, 13));
  return [...left, ...right.reverse()];
}

/** The edge of something worn round the trunk at a height, where it faces the viewer. */
export function girdle(page: Page, body: Body, along: number, sag = 0): Spot[] {
  const { centre, frame } = levelAt(body.levels, along);
  const { half, belly, back } = girth(along);
  const points: { spot: Spot; across: number }[] = [];
  for (let a = 0; a < 360; a += 20) {
    const z = sinDeg(a);
    const p: Vec = [cosDeg(a) * half, -sag * Math.abs(z), z * (z > 0 ? belly : back)];
    const facing = frame.x[2] * cosDeg(a) + frame.z[2] * z;
    if (facing < -0.02) continue;
    const place = at(centre, frame, p);
    points.push({
      spot: onPage(page, place),
      across: place[0] * frame.y[1] - place[1] * frame.y[0],
    });
  }
  return points.sort((a, b) => b.across - a.across).map((p) => p.spot);
}

/** The outline of what covers the pelvis, from the crotch up to the waist. */
export function pelvisOutline(page: Page, body: Body, waist: number): Spot[] {
  const { left, right } = edges(page, body, span(-0.2, waist, 6));
  const band = girdle(page, body, waist, 0.02).slice(1, -1);
  return [
    ...left.slice(0, -1),
    ...tight(left, band),
    ...band,
    ...tight([...right], [...band].reverse()).reverse(),
    ...right.reverse().slice(1),
  ];
}

/** The corner between the end of one line and the start of the next, with a neighbour close on each side so that it stays a corner. */
function tight(line: readonly Spot[], next: readonly Spot[]): Spot[] {
  const [before, corner, after] = [line.at(-2), line.at(-1), next[0]];
  if (!before || !corner || !after) return corner ? [corner] : [];
  const near = (to: Spot): Spot => [
    corner[0] + (to[0] - corner[0]) * 0.14,
    corner[1] + (to[1] - corner[1]) * 0.14,
  ];
  return [near(before), corner, near(after)];
}
