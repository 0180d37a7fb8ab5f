import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromGestationWeeks } from '../../src/lib/age/axis.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { bandCorners, bandPath, holdersAt, phaseIn } from '../../src/lib/chart/bands.ts';
import { heightAt, halfHeights, ridgeOf, ridgePaths } from '../../src/lib/chart/ridge.ts';
import { LIMITS } from '../../src/lib/chart/viewport.ts';
import { readAt, totalsOf } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { phaseAt } from '../../src/lib/judge/phases.ts';
import { dataOf } from './kestrel.ts';

const sheet = sheetOf(ATLAS);
const ids = [...ATLAS.reflexes.keys()];
const compiled = (id: string) => {
  const found = sheet.get(id);
  if (!found) throw new Error(`no windows of ${id}`);
  return found;
};
const ALL = dataOf(undefined, {});

const day = fc.double({ min: LIMITS.from, max: LIMITS.to, noNaN: true });

describe('a ridge', () => {
  it('is as high as the mean expectation of the sources that speak, at any age', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ids), day, (id, age) => {
        const { meanExpectation } = totalsOf(readAt(compiled(id), age, 0));
        const expected = Number.isNaN(meanExpectation) ? 0 : meanExpectation;
        expect(heightAt(ridgeOf(compiled(id)), age)).toBeCloseTo(expected, 8);
      }),
      { numRuns: 500 },
    );
  });

  it.each(ids)('of %s is exact at every corner of every source', (id) => {
    const ridge = ridgeOf(compiled(id));
    for (const edge of compiled(id).edges) {
      if (!Number.isFinite(edge)) continue;
      const { meanExpectation } = totalsOf(readAt(compiled(id), edge, 0));
      expect(heightAt(ridge, edge)).toBeCloseTo(meanExpectation || 0, 8);
    }
  });

  it('is deeper where every speaking source says established, and only there', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ids), day, (id, age) => {
        const { phases, speaking } = totalsOf(readAt(compiled(id), age, 0));
        const piece = ridgeOf(compiled(id)).find((p) => age >= p.from && age < p.to);
        const all = speaking > 0 && (phases[3] ?? 0) > speaking - 1e-9;
        expect(piece?.agreed ?? false).toBe(all);
      }),
    );
  });

  it('runs off the right edge when a source has it for life', () => {
    const lifelong = ALL.lanes.filter((lane) => lane.figures.lifelong);
    expect(lifelong.length).toBeGreaterThan(5);
    for (const lane of lifelong) expect(lane.ridge.at(-1)?.to).toBeGreaterThan(LIMITS.to);
  });

  it('is drawn without a gap where it is not interrupted', () => {
    const { area, line } = ridgePaths(ridgeOf(compiled('moro')));
    expect(line.match(/M/g)).toHaveLength(1);
    expect(area.endsWith('Z')).toBe(true);
  });

  it('passes one half once up and once down', () => {
    const { first, last } = halfHeights(ridgeOf(compiled('moro')));
    const ridge = ridgeOf(compiled('moro'));
    expect(heightAt(ridge, first + 0.01)).toBeGreaterThanOrEqual(0.5);
    expect(heightAt(ridge, last + 0.01)).toBeLessThanOrEqual(0.5);
  });
});

describe('a source', () => {
  it('has an age in the phase in which the judgement reads it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ALL.lanes), day, (lane, age) => {
        const { windows } = compiled(lane.id);
        const reading = readAt(compiled(lane.id), age, 0);
        for (const band of lane.bands) {
          const index = windows.findIndex((window) => window.claim === band.claim);
          const row = reading.phases.subarray(index * 6, index * 6 + 6);
          expect(phaseIn(band, age)).toBe(phaseAt(row.indexOf(1)));
        }
      }),
    );
  });

  it('is drawn as a closed shape without an infinite corner', () => {
    for (const lane of ALL.lanes)
      for (const band of lane.bands) expect(bandPath(band)).toMatch(/^M[\d.,L-]+Z$/);
  });

  it('is drawn only where it speaks, in order of age, and as high as its phase there', () => {
    for (const lane of ALL.lanes)
      for (const band of lane.bands) {
        const corners = bandCorners(band);
        expect(corners[0]?.[1]).toBe(0);
        expect(corners.at(-1)?.[1]).toBe(0);
        corners.forEach(([day, height], index) => {
          expect(day).toBeGreaterThanOrEqual(corners[index - 1]?.[0] ?? -Infinity);
          expect(day).toBeGreaterThanOrEqual(band.speaksFrom);
          expect(day).toBeLessThanOrEqual(band.speaksTo);
          const isWhole = day >= band.appearsTo && day <= band.integratesFrom;
          const isEnd = index === 0 || index === corners.length - 1;
          if (!isEnd) expect(height === 1).toBe(isWhole);
        });
      }
  });

  // Allen & Capute 1986, abstract: some from 25 weeks, the majority by 30, and no later age printed
  it('that says "majority by 30 weeks" and no more is drawn up to a half, and cut off at 30 weeks', () => {
    const moro = ALL.lanes.find((lane) => lane.id === 'moro');
    const band = moro?.bands.find(({ source }) => source === 'allen-capute-1986');
    const [first, top, last] = bandCorners(band!);
    expect(first).toEqual([fromGestationWeeks(25), 0]);
    expect(top![1]).toBeCloseTo(0.5, 1);
    // the day of 30w0d is the last on which it speaks
    expect(top![0]).toBe(fromGestationWeeks(30) + 1);
    expect(last).toEqual([top![0], 0]);
  });

  it('is counted where it holds the age, unless it is hidden', () => {
    const moro = ALL.lanes.find((lane) => lane.id === 'moro');
    const bands = moro?.bands ?? [];
    const all = holdersAt(bands, 300);
    expect(all).toBeGreaterThan(10);
    const one = bands.find((band) => phaseIn(band, 300) === 'established');
    expect(holdersAt(bands, 300, new Set([one?.source ?? '']))).toBeLessThan(all);
    expect(holdersAt(bands, 1500)).toBe(0);
  });
});
