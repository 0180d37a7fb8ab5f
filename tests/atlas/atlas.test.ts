import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromGestationWeeks, fromMonths } from '../../src/lib/age/axis.ts';
import { setsApart } from '../../src/lib/atlas/apart.ts';
import { ATLAS, ATLAS_PARTS, buildAtlas, CORE_PARTS, sidesOf } from '../../src/lib/atlas/atlas.ts';
import { checkAtlas, claimFaults, faultless } from '../../src/lib/atlas/check.ts';
import { CITATIONS } from '../../src/lib/atlas/citations.ts';
import { isByTerm, printedSpan } from '../../src/lib/atlas/printed.ts';
import { PROSE } from '../../src/lib/atlas/prose.ts';
import type { Claim, Printed, SourceData } from '../../src/lib/atlas/types.ts';

const claims = ATLAS_PARTS.sources.flatMap((s) => s.claims);
const counts = ATLAS_PARTS.sources.flatMap((s) => s.counts);

describe('the atlas as it stands', () => {
  test('has no fault', () => {
    expect(checkAtlas(ATLAS_PARTS)).toEqual([]);
  });

  test('holds every reflex, source, claim and count of the reference', () => {
    expect(ATLAS.reflexes.size).toBe(44);
    expect(claims).toHaveLength(233);
    expect(claims.filter((c) => c.basis === 'read')).toHaveLength(176);
    expect(claims.filter((c) => c.basis === 'memory')).toHaveLength(57);
    expect(counts).toHaveLength(117);
    expect(counts.filter((c) => c.percent !== null)).toHaveLength(112);
  });

  test('cites every source in full, and every note names sources that exist', () => {
    for (const source of ATLAS.sources.values())
      expect(CITATIONS[source.id]?.citation, source.id).toBeTruthy();
    for (const [id, { reported }] of Object.entries(PROSE)) {
      expect(ATLAS.reflexes.has(id)).toBe(true);
      for (const note of Object.values(reported))
        for (const source of note.sources) expect(ATLAS.sources.has(source), source).toBe(true);
    }
    expect(Object.keys(PROSE)).toHaveLength(ATLAS.reflexes.size);
  });

  test('no claim places an appearance before 8 weeks, or a primitive reflex after 12 months', () => {
    for (const claim of claims) {
      const span = claim.appears && printedSpan(claim.appears);
      if (!span) continue;
      expect(span.from).toBeGreaterThanOrEqual(fromGestationWeeks(8));
      if (ATLAS.reflexes.get(claim.reflex)?.kind === 'primitive-reflex')
        expect(span.to).toBeLessThanOrEqual(fromMonths(12));
    }
  });

  test('every correction of a printed figure says why', () => {
    const corrected = claims.filter((c) => c.correction);
    for (const claim of corrected) expect(claim.correction!.length).toBeGreaterThan(20);
    const read = claims.filter((c) => c.appears?.notYetAll || c.integrates?.atLatest);
    expect(read.filter((c) => !c.correction)).toEqual([]);
  });

  test('every reflex has a side to record and a handling caution', () => {
    for (const reflex of ATLAS.reflexes.values()) {
      expect(sidesOf(reflex).length).toBeGreaterThan(0);
      expect(reflex.cautions.length, reflex.id).toBeGreaterThan(0);
    }
  });
});

describe('what limbs a response sets apart', () => {
  const apart = (id: string) => setsApart(ATLAS.reflexes.get(id)!);

  test('asymmetrical tonic neck: arm against arm; symmetrical: arms against legs', () => {
    expect(apart('atnr')).toBe('arms-from-each-other');
    expect(apart('stnr')).toBe('arms-from-legs');
  });

  test.each(['moro', 'acoustic-startle', 'tlr', 'crawling', 'swimming', 'palmar-grasp'])(
    '%s sets nothing apart',
    (id) => {
      expect(apart(id)).toBeUndefined();
    },
  );

  test('a reflex someone adds joins by its pattern alone', () => {
    const atnr = ATLAS.reflexes.get('atnr')!;
    const added = { ...atnr, id: 'added', name: 'Added response', short: 'Added' };
    const atlas = buildAtlas({ ...ATLAS_PARTS, reflexes: [...ATLAS_PARTS.reflexes, added] });
    expect(setsApart(atlas.reflexes.get('added')!)).toBe('arms-from-each-other');
  });
});

describe('printed ages', () => {
  const printed = (low: number, high: number | null, unit: Printed['unit']): Printed => ({
    asPrinted: 'x',
    unit,
    low,
    high,
  });

  test.each([
    ['2 months', printed(2, 2, 'mo'), 280 + 1.5 * 30.4375, 280 + 2.5 * 30.4375],
    ['28 weeks', printed(28, 28, 'wkPMA'), 27.5 * 7, 28.5 * 7],
    ['25-30 weeks', printed(25, 30, 'wkPMA'), 175, 210],
    ['3 weeks after birth', printed(3, 3, 'wk'), 280 + 17.5, 280 + 24.5],
    ['5 years', printed(5, 5, 'y'), 280 + 4.5 * 365.25, 280 + 5.5 * 365.25],
    ['2.5 months', printed(2.5, 2.5, 'mo'), 280 + 2.45 * 30.4375, 280 + 2.55 * 30.4375],
  ])('%s', (_, age, from, to) => {
    const span = printedSpan(age)!;
    expect(span.from).toBeCloseTo(from, 9);
    expect(span.to).toBeCloseTo(to, 9);
  });

  test('birth and days after it mean there by term; weeks do not', () => {
    expect(isByTerm(printed(0, 0, 'mo'))).toBe(true);
    expect(isByTerm(printed(2, 2, 'd'))).toBe(true);
    expect(isByTerm(printed(1, 1, 'wk'))).toBe(false);
    expect(isByTerm(printed(0, 2, 'mo'))).toBe(false);
    expect(printedSpan(printed(12, null, 'mo'))).toBeUndefined();
  });
});

describe('the check bites', () => {
  const good: Claim = {
    reflex: 'moro',
    role: 'window',
    basis: 'read',
    appearsStatus: 'given',
    appears: { asPrinted: '28 weeks', unit: 'wkPMA', low: 28, high: 28 },
    integratesStatus: 'given',
    integrates: { asPrinted: '6 months', unit: 'mo', low: 6, high: 6 },
  };

  test('on claims', () => {
    expect(claimFaults(good, 'primitive-reflex')).toEqual([]);
    const bad = (
      change: Partial<Claim>,
      kind: 'primitive-reflex' | undefined = 'primitive-reflex',
    ) => claimFaults({ ...good, ...change }, kind);
    const age = (low: number, high: number | null, unit: Printed['unit'] = 'mo') => ({
      asPrinted: 'x',
      unit,
      low,
      high,
    });
    expect(bad({ appears: age(30, 28, 'wkPMA') })[0]).toMatch(/low to high/);
    expect(bad({ appears: age(5, 5, 'wkPMA') })[0]).toMatch(/weeks of gestation/);
    expect(bad({ appears: age(8, 9), integrates: age(2, 3) })).toContain(
      'integrates before it appears',
    );
    expect(bad({ appears: age(14, 15), integrates: age(20, 21) })).toContain(
      'a primitive reflex appears after 12 months',
    );
    expect(bad({ integratesStatus: 'persists' })[0]).toMatch(/dated exactly/);
    expect(bad({ integrates: age(12, null) })[0]).toMatch(/open end/);
    expect(claimFaults(good, undefined)).toContain('names no reflex of the atlas');
  });

  test('on ids that stand twice, uncited sequences, and loading', () => {
    const twice: SourceData[] = [...ATLAS_PARTS.sources, ATLAS_PARTS.sources[0]!];
    expect(checkAtlas({ ...ATLAS_PARTS, sources: twice })[0]).toMatch(/stands twice/);
    expect(() => faultless({ ...ATLAS_PARTS, sources: [] })).toThrow(/no source/);
    expect(checkAtlas(CORE_PARTS)).toEqual([]);
  });

  test('any claim with its ends swapped is refused', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (low, gap) => {
          const faults = claimFaults(
            { ...good, integrates: { asPrinted: 'x', unit: 'mo', low: low + gap, high: low } },
            'primitive-reflex',
          );
          expect(faults.length).toBeGreaterThan(0);
        },
      ),
    );
  });
});
