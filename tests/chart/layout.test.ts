import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromGestationWeeks, fromMonths, toAxisDay } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { JOINT } from '../../src/lib/chart/ageline.ts';
import { bandCorners } from '../../src/lib/chart/bands.ts';
import { roughMeasure } from '../../src/lib/chart/labels.ts';
import { orderOf } from '../../src/lib/chart/lanes.ts';
import { holdersIn, layout, readLane } from '../../src/lib/chart/layout.ts';
import { SIDE_PX } from '../../src/lib/chart/marks.ts';
import { LANE_ORDERS, type ChartView } from '../../src/lib/chart/model.ts';
import { placeNote } from '../../src/lib/chart/note.ts';
import { heightAt } from '../../src/lib/chart/ridge.ts';
import { openedRows } from '../../src/lib/chart/rows.ts';
import { tableOf } from '../../src/lib/chart/table.ts';
import { LIMITS, WHOLE } from '../../src/lib/chart/viewport.ts';
import { english } from './english.ts';
import { BIRTH, CROSSED, dataOf, KESTREL } from './kestrel.ts';

const words = english(ATLAS, BIRTH.due, BIRTH.born);
const CHILD = dataOf(KESTREL);
const ALL = dataOf(undefined, {});
const VIEW: ChartView = { range: WHOLE, age: fromMonths(5), order: 'group', opened: new Set() };

const place = (
  width: number,
  view: Partial<ChartView> = {},
  text = 1,
  data = CHILD,
  heightPx?: number,
) =>
  layout(
    data,
    { ...VIEW, ...view },
    { widthPx: width, ...(heightPx === undefined ? {} : { heightPx }) },
    text,
    words,
    roughMeasure,
  );

describe('lanes', () => {
  it.each(LANE_ORDERS)('by %s are all there, each once', (order) => {
    const ids = orderOf(ALL.lanes, order);
    expect([...ids].sort()).toEqual(ALL.lanes.map((lane) => lane.id).sort());
  });

  it('follow a list of ids, and those it leaves out come after', () => {
    const ids = orderOf(ALL.lanes, ['moro', 'atnr', 'moro', 'nothing']);
    expect(ids.slice(0, 2)).toEqual(['moro', 'atnr']);
    expect(ids).toHaveLength(ALL.lanes.length);
  });

  it('by integrating end with those that stay for life', () => {
    const last = orderOf(ALL.lanes, 'integrating').at(-1);
    expect(ALL.lanes.find((lane) => lane.id === last)?.integratesBy).toBe(Infinity);
  });

  it('never overlap, in any order, opened or not, at any width', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 390, max: 1920 }),
        fc.constantFrom(...LANE_ORDERS),
        fc.subarray(CHILD.lanes.map((lane) => lane.id)),
        fc.constantFrom(1, 1.25, 2),
        (width, order, opened, text) => {
          const { lanes, sizes } = place(width, { order, opened: new Set(opened) }, text);
          const tops = lanes.order.flatMap((id) => lanes.lanes.get(id) ?? []);
          tops.forEach((lane, index) => {
            const next = tops[index + 1];
            expect(lane.base - lane.ridgePx).toBeGreaterThanOrEqual(lane.top - 1e-6);
            expect(lane.rows.every((y) => y < lane.top + lane.height)).toBe(true);
            if (next) expect(lane.top + lane.height).toBeLessThanOrEqual(next.top + 1e-6);
          });
          expect(sizes.ridge).toBeGreaterThanOrEqual(14);
          expect(lanes.height).toBeGreaterThanOrEqual((tops.at(-1)?.base ?? 0) - 1e-6);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('share the height they are given', () => {
    const few = dataOf(KESTREL, { reflexes: ['moro', 'atnr', 'landau', 'palmar-grasp'] });
    const { sizes, lanes, strip } = place(1280, {}, 1, few, 560);
    expect(strip.height + sizes.axis + lanes.height + sizes.foot).toBeLessThanOrEqual(560);
  });

  it('put names above their ridges on a narrow screen only', () => {
    expect(place(390).sizes.nameAbove).toBeGreaterThan(0);
    expect(place(1280).sizes.nameAbove).toBe(0);
  });

  it('leave room for every name beside them', () => {
    const { sizes } = place(1280);
    for (const lane of CHILD.lanes)
      expect(roughMeasure(words.reflex(lane.id), { sizePx: sizes.name })).toBeLessThan(sizes.left);
  });
});

describe('findings', () => {
  it('lie at the age seen, left of right', () => {
    const { marks, frame } = place(1280);
    const [, late] = CHILD.child?.visits ?? [];
    const atnr = marks.find((lane) => lane.id === 'atnr');
    const days = atnr?.sides.map((side) =>
      [...side.paper.matchAll(/M([\d.]+)/g)].map((m) => Number(m[1])),
    );
    expect(days?.[0]).toEqual(days?.[1]);
    expect(days?.[0]?.[1]).toBeCloseTo(late?.day ?? 0, 1);
    expect(atnr?.sides.map((side) => side.side)).toEqual(['left', 'right']);
    expect(SIDE_PX.left).toBeLessThan(SIDE_PX.midline);
    expect(SIDE_PX.midline).toBeLessThan(SIDE_PX.right);
    expect(frame.scale.x(late?.day ?? 0)).toBeGreaterThan(frame.scale.leftPx);
  });

  it('are told apart by their strokes alone', () => {
    const { marks } = place(1280);
    const strokes = (id: string, side: string) =>
      marks
        .find((l) => l.id === id)
        ?.sides.find((s) => s.side === side)
        ?.strokes.map((s) => s.name);
    // those of visits at which nothing is asked in ink, then the same of one that asks in the accent
    expect(strokes('moro', 'left')).toEqual(['dot', 'dot']);
    const weak = ['dot', 'hollow', 'half'];
    expect(strokes('moro', 'right')).toEqual([...weak, ...weak]);
    expect(strokes('atnr', 'left')).toEqual(['dot', 'ring', 'space', 'core']);
    expect(strokes('plantar-grasp', 'left')).toEqual(['dot', 'plate', 'dot', 'half']);
  });

  it('have an interval where a response went between two visits', () => {
    const { courses } = place(1280);
    expect(courses.map((course) => course.id).sort()).toEqual(['galant', 'rooting', 'stepping']);
  });
});

describe('what the height means', () => {
  const noteIn = (width: number, view: Partial<ChartView> = {}) => {
    const { lanes, frame, sizes } = place(width, { order: 'integrating', ...view });
    const note = placeNote(CHILD, lanes, frame.scale, sizes, words.height, roughMeasure);
    return { note, lanes, frame };
  };

  it('is written beside a ridge that leaves the room, on one of the first lanes', () => {
    const { note, lanes, frame } = noteIn(1280);
    const at = lanes.order.findIndex((id) => lanes.lanes.get(id)?.base === note?.base);
    expect(at).toBeGreaterThanOrEqual(0);
    expect(at).toBeLessThan(4);
    const lane = CHILD.lanes.find(({ id }) => id === lanes.order[at])!;
    for (let day: number = frame.scale.day(note!.x); day < frame.scale.day(1260); day += 10)
      expect(heightAt(lane.ridge, day)).toBeLessThan(0.11);
  });

  it('is not written where it would cover ridges, or has no room', () => {
    expect(noteIn(1280, { range: { from: WHOLE.from, to: fromMonths(0) } }).note).toBeUndefined();
    expect(noteIn(200).note).toBeUndefined();
  });
});

describe('the age line', () => {
  it('keeps its label on the chart at any age, width and size of text', () => {
    let wide = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 390, max: 1920 }),
        fc.double({ min: LIMITS.from, max: LIMITS.to, noNaN: true }),
        fc.constantFrom(1, 2),
        (width, day, text) => {
          const { age } = place(width, { age: toAxisDay(day) }, text);
          const { label } = age;
          if (label.width > width) {
            wide += 1; // it has one line, and no shorter one
            return;
          }
          expect(label.x - label.width / 2).toBeGreaterThanOrEqual(0);
          expect(label.x + label.width / 2).toBeLessThanOrEqual(width);
        },
      ),
    );
    expect(wide).toBeLessThan(20); // of 100
  });

  it('says every clock, on more lines where one has no room', () => {
    const wide = place(1280).age;
    expect(wide.rest).toHaveLength(1);
    expect([wide.label.text, ...wide.rest[0]!.split(JOINT)]).toEqual(wide.clocks);
    const { rest } = place(390, {}, 2).age;
    expect(rest.length).toBeGreaterThan(1);
    expect(rest.join(' ')).toContain('postmenstrual');
  });

  it('carries the spread of the age while the corrected age counts', () => {
    expect(place(1280).age.band?.width).toBeGreaterThan(5);
    expect(
      place(1280, {
        age: fromMonths(23),
        range: { from: fromGestationWeeks(30), to: fromMonths(40) },
      }).age.band,
    ).toBeNull();
  });
});

describe('the sequences', () => {
  it('run right and down over the windows of the sources', () => {
    const { sequences } = place(1280).strip;
    expect(sequences.flatMap(({ stations }) => stations.slice(1)).length).toBeGreaterThan(2);
    for (const { stations } of sequences)
      stations.slice(1).forEach((station, index) => {
        const before = stations[index];
        const middle = (of: typeof before) => ((of?.usual?.[0] ?? 0) + (of?.usual?.[1] ?? 0)) / 2;
        expect(station.y).toBeGreaterThan(before?.y ?? Infinity);
        expect(middle(station)).toBeGreaterThan(middle(before));
      });
  });

  it('show an order that is broken by running back', () => {
    const crossed = place(1280, {}, 1, dataOf(CROSSED)).strip.sequences.find(
      ({ data }) => data.id === 'protective-directions',
    );
    const starts = crossed?.stations.map((station) => station.bracket?.x0 ?? NaN) ?? [];
    expect(crossed?.data.said?.order).toBe('reversed');
    expect(starts[2]).toBeLessThan(starts[1] ?? NaN);
  });

  it('keep every label on the chart', () => {
    for (const width of [390, 820, 1280, 1920])
      for (const { stations } of place(width).strip.sequences)
        for (const { label } of stations) {
          if (!label) continue;
          const size = roughMeasure(label.text, { sizePx: place(width).sizes.name });
          const from = label.anchor === 'start' ? label.x : label.x - size;
          expect(from).toBeGreaterThanOrEqual(0);
          expect(from + size).toBeLessThanOrEqual(width);
        }
  });
});

describe('the rows of an opened lane', () => {
  it('have their text beside the window, or upon it with the window made pale', () => {
    let upon = 0;
    for (const width of [390, 820, 1280])
      for (const { id } of ALL.lanes) {
        const chart = place(width, { opened: new Set([id]) }, 1, ALL);
        const { scale } = chart.frame;
        const rows = openedRows(chart.drawn, chart.lanes, scale, chart.sizes, words, roughMeasure);
        const { bands } = ALL.lanes.find((lane) => lane.id === id)!;
        rows.get(id)!.forEach(({ figures }, index) => {
          if (!figures) return;
          const days = bandCorners(bands[index]!).map(([day]) => scale.x(day));
          const from = figures.anchor === 'start' ? figures.x : figures.x - figures.width;
          expect(from).toBeGreaterThanOrEqual(scale.leftPx);
          expect(from + figures.width).toBeLessThanOrEqual(scale.rightPx);
          const isClear = from >= Math.max(...days) || from + figures.width <= Math.min(...days);
          if (!figures.over) expect(isClear, `${id} at ${width}`).toBe(true);
          else upon += 1;
        });
      }
    expect(upon).toBeGreaterThan(0);
  });
});

describe('the table', () => {
  it('has the lanes of the chart in its order, with what was found', () => {
    const table = tableOf(CHILD, { age: fromMonths(5), order: 'appearing' });
    expect(table.rows.map((row) => row.id)).toEqual(orderOf(CHILD.lanes, 'appearing'));
    const found = table.rows.flatMap((row) => row.visits.flat());
    expect(found).toHaveLength(CHILD.child?.marks.length ?? -1);
    const moro = table.rows.find((row) => row.id === 'moro');
    expect(moro?.visits[1]?.map(({ side, response }) => [side, response])).toEqual([
      ['left', 'elicited'],
      ['right', 'weak'],
    ]);
  });

  it('counts the sources of each lane, and the voices they are', () => {
    const table = tableOf(ALL, { age: fromMonths(4), order: 'group' });
    for (const { id, sources } of table.rows) {
      const claims = ATLAS.claims.get(id)!.filter(({ role }) => role === 'window');
      expect(sources).toEqual({
        sources: new Set(claims.map(({ source }) => source.id)).size,
        voices: new Set(claims.map(({ family }) => family)).size,
      });
    }
    const moro = table.rows.find(({ id }) => id === 'moro');
    expect(moro!.sources.voices).toBeLessThan(moro!.sources.sources);
  });

  it('expects what the ridge shows', () => {
    const table = tableOf(ALL, { age: fromMonths(4), order: 'group' });
    table.rows.forEach((row, index) => {
      const lane = ALL.lanes[index];
      expect(lane && readLane(lane, fromMonths(4)).expected).toBe(row.expected);
    });
  });
});

describe('the count of sources at an age', () => {
  it('is one number for each lane', () => {
    expect(holdersIn(ALL.lanes, fromMonths(2))).toHaveLength(ALL.lanes.length);
    expect(Math.max(...holdersIn(ALL.lanes, fromMonths(2)))).toBeGreaterThan(8);
  });
});
