/** Invented claims read as windows: what a source that states only part is taken to say. Form only. */
import { describe, expect, test } from 'vitest';
import { fromMonths, TERM } from '../../src/lib/age/axis.ts';
import type { SourcedClaim } from '../../src/lib/atlas/atlas.ts';
import type { Printed } from '../../src/lib/atlas/types.ts';
import { readAt } from '../../src/lib/judge/expectation.ts';
import { agreementOn } from '../../src/lib/judge/hangs.ts';
import { compile } from '../../src/lib/judge/expectation.ts';
import { verdictOf, voicesOf } from '../../src/lib/judge/verdict.ts';
import { windowsOf, type Window } from '../../src/lib/judge/window.ts';

const months = (low: number, high: number | null = low): Printed => ({
  asPrinted: 'x',
  unit: 'mo',
  low,
  high,
});

/** A claim on one reflex by a source of its own. */
const claim = (id: string, change: Partial<SourcedClaim>): SourcedClaim =>
  ({
    reflex: 'stnr',
    role: 'window',
    basis: 'read',
    appearsStatus: 'not-stated',
    integratesStatus: 'not-stated',
    source: { id },
    family: id,
    ...change,
  }) as SourcedClaim;

const dated = claim('dated', {
  appearsStatus: 'given',
  appears: months(4, 6),
  integratesStatus: 'given',
  integrates: months(9, 12),
});

/** The window of the last claim, beside the others. */
const last = (...claims: SourcedClaim[]): Window => windowsOf(claims).at(-1)!;

describe('a source that states only part', () => {
  test('its start alone: established from it, silent once any source lets the response go', () => {
    const start = claim('start', { appearsStatus: 'given', appears: months(2, 3) });
    expect(last(dated, start)).toMatchObject({
      speaksFrom: -Infinity,
      appearsFrom: fromMonths(2),
      appearsTo: fromMonths(3),
      integratesFrom: Infinity,
      speaksTo: fromMonths(9),
    });
  });

  test('it is not silent before it has the response there, however early another lets it go', () => {
    const late = claim('late', { appearsStatus: 'given', appears: months(10, 11) });
    expect(last(dated, late).speaksTo).toBe(fromMonths(11));
  });

  test('where no source dates an end it never falls silent', () => {
    const start = claim('start', { appearsStatus: 'given', appears: months(2, 3) });
    expect(last(start)).toMatchObject({ speaksTo: Infinity, integratesTo: Infinity });
  });

  test('its end alone: silent until every source that dates the start has it there', () => {
    const end = claim('end', { integratesStatus: 'given', integrates: months(10, 11) });
    const other = claim('other', { appearsStatus: 'given', appears: months(7, 8) });
    expect(last(dated, other, end)).toMatchObject({
      speaksFrom: fromMonths(8),
      appearsTo: fromMonths(8),
      integratesFrom: fromMonths(10),
      integratesTo: fromMonths(11),
      speaksTo: Infinity,
    });
  });

  test('its end alone, and no source dates a start: it speaks from term', () => {
    const end = claim('end', { integratesStatus: 'given', integrates: months(10, 11) });
    expect(last(end)).toMatchObject({ speaksFrom: TERM, appearsTo: TERM, byTerm: false });
  });

  test('another that says only "later than" lets nothing go, and is silent from there itself', () => {
    const later = claim('later', { integratesStatus: 'later-than', integrates: months(3, null) });
    const start = claim('start', { appearsStatus: 'given', appears: months(2, 2) });
    const [own, beside] = windowsOf([later, start]);
    expect(own).toMatchObject({ integratesFrom: Infinity, speaksTo: fromMonths(3) });
    expect(beside!.speaksTo).toBe(Infinity);
  });

  test('there by term is silent before it, and counts as there at term for the others', () => {
    const byTerm = claim('by-term', { appearsStatus: 'implied' });
    expect(last(dated, byTerm)).toMatchObject({ byTerm: true, speaksFrom: TERM, appearsTo: TERM });
    const end = claim('end', { integratesStatus: 'given', integrates: months(10, 11) });
    expect(last(byTerm, end).speaksFrom).toBe(TERM);
  });

  test('a claim of context is no window, and dates nothing for the others', () => {
    const context = claim('context', {
      role: 'context',
      integratesStatus: 'given',
      integrates: months(1, 2),
    });
    const start = claim('start', { appearsStatus: 'given', appears: months(2, 3) });
    const windows = windowsOf([context, start]);
    expect(windows.map(({ claim: { source } }) => source.id)).toEqual(['start']);
    expect(windows[0]!.speaksTo).toBe(Infinity);
  });
});

describe('several sources on one answer', () => {
  const gone = claim('gone', {
    appearsStatus: 'implied',
    integratesStatus: 'given',
    integrates: months(2, 4),
  });
  const stays = claim('stays', {
    appearsStatus: 'implied',
    integratesStatus: 'given',
    integrates: months(10, 12),
  });
  const again = claim('stays', {
    appearsStatus: 'implied',
    integratesStatus: 'given',
    integrates: months(11, 12),
  });
  const finding = (response: 'elicited' | 'not-elicited') => ({
    reflex: 'stnr',
    side: 'midline' as const,
    response,
    state: 'quiet-alert' as const,
    note: '',
  });
  const at = (claims: SourcedClaim[], age: number) =>
    readAt(compile(windowsOf(claims)), fromMonths(age), 0);

  /** So many of so many sources, none of which copies another: as many voices. */
  const of = (agree: number, all: number) => ({ agree, of: all, voices: { agree, of: all } });

  test('an even tie goes to what asks for more', () => {
    const reading = at([gone, stays], 6);
    expect(verdictOf(finding('elicited'), reading)).toMatchObject({
      verdict: 'persisting',
      share: 0.5,
      firm: false,
    });
    expect(verdictOf(finding('not-elicited'), reading)).toMatchObject({
      verdict: 'missing',
      share: 0.5,
      firm: false,
    });
  });

  test('a source with two claims has one voice beside one with one', () => {
    const reading = at([gone, stays, again], 6);
    expect(verdictOf(finding('elicited'), reading)).toMatchObject({ share: 0.5 });
    expect(agreementOn(finding('elicited'), 'fits', reading)).toEqual(of(1, 2));
    expect(agreementOn(finding('elicited'), 'persisting', reading)).toEqual(of(1, 2));
    expect(agreementOn(finding('elicited'), 'closing', reading)).toEqual(of(0, 2));
  });

  test('two sources of one family have one voice beside a third', () => {
    const copy = {
      ...claim('copy', stays),
      source: { id: 'copy' } as SourcedClaim['source'],
      family: 'stays',
    };
    const reading = at([gone, stays, copy], 6);
    expect(verdictOf(finding('elicited'), reading)).toMatchObject({ share: 0.5 });
    expect(agreementOn(finding('elicited'), 'fits', reading)).toEqual({
      agree: 2,
      of: 3,
      voices: { agree: 1, of: 2 },
    });
  });

  test('each says its own, in words that fit the answer', () => {
    const said = (response: 'elicited' | 'not-elicited', age: number) =>
      voicesOf(response, at([gone, stays], age)).map(({ source, verdict, probability, speaks }) => [
        source,
        verdict,
        probability,
        speaks,
      ]);
    expect(said('elicited', 6)).toEqual([
      ['gone', 'persisting', 1, 1],
      ['stays', 'fits', 1, 1],
    ]);
    expect(said('elicited', 3)).toEqual([
      ['gone', 'closing', 1, 1],
      ['stays', 'fits', 1, 1],
    ]);
    expect(said('not-elicited', 6)).toEqual([
      ['gone', 'fits', 1, 1],
      ['stays', 'missing', 1, 1],
    ]);
  });

  test('one that is silent has no word, and is not counted among those that speak', () => {
    const reading = at([gone, stays], -1); // before term, where "by term" says nothing
    expect(voicesOf('elicited', reading).map(({ verdict, speaks }) => [verdict, speaks])).toEqual([
      [undefined, 0],
      [undefined, 0],
    ]);
    expect(agreementOn(finding('elicited'), 'fits', reading)).toEqual(of(0, 0));
    expect(verdictOf(finding('elicited'), reading)).toMatchObject({ why: { code: 'silent' } });
  });

  test('at a doubtful age a source says what it holds likeliest, and how likely', () => {
    // one standard deviation past the day on which it is gone: 0.841 of the normal distribution lies below
    const age = fromMonths(4) + 8;
    const [voice] = voicesOf('elicited', readAt(compile(windowsOf([gone])), age, 8));
    expect(voice!.verdict).toBe('persisting');
    expect(voice!.probability).toBeCloseTo(0.8413, 4);
    expect(voice!.speaks).toBeCloseTo(1, 9);
  });
});
