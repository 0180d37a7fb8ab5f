import { describe, expect, it } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { RESPONSES } from '../../src/lib/case/finding.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import {
  answered,
  isDone,
  lastState,
  linesFor,
  moved,
  nextOpen,
  placeAfter,
  placeAt,
  recordWithout,
  sheetServing,
  sideways,
  withOne,
  withStateFromHere,
} from '../../src/lib/drafts/recording.ts';
import { recordKey } from '../../src/lib/drafts/recordKeys.ts';
import { blankVisit } from '../../src/lib/drafts/visitEdits.ts';

const lines = linesFor(['moro', 'landau', 'rooting'], blankVisit('2026-06-08'), [], ATLAS.reflexes);
const [moro, landau, rooting] = lines as [never, never, never] as typeof lines & { length: 3 };
const blank = blankVisit('2026-06-08');
const give = (visit: typeof blank, line: (typeof lines)[number], ...sides: ('left' | 'right')[]) =>
  answered(visit, line, sides, 'elicited', 'quiet-alert');

describe('where one stands', () => {
  it('goes from left to right, then on to the next line', () => {
    const left = give(blank, moro!, 'left');
    expect(placeAfter(lines, moro!, 'left', blank, left)).toEqual({ id: 'moro', side: 'right' });
    const both = give(left, moro!, 'right');
    expect(placeAfter(lines, moro!, 'right', left, both)).toEqual({
      id: 'landau',
      side: 'midline',
    });
  });

  it('goes on after one touch that answers both sides', () => {
    const both = give(blank, moro!, 'left', 'right');
    expect(isDone(both, moro!)).toBe(true);
    expect(placeAfter(lines, moro!, 'right', blank, both).id).toBe('landau');
  });

  it('stays where a complete line is mended', () => {
    const both = give(blank, moro!, 'left', 'right');
    const mended = answered(both, moro!, ['left'], 'weak', 'quiet-alert');
    expect(placeAfter(lines, moro!, 'left', both, mended)).toEqual({ id: 'moro', side: 'left' });
  });

  it('waits for the reason when it is not assessable, and not after one is given', () => {
    const untold = answered(blank, landau!, ['midline'], 'not-assessable', 'crying');
    expect(placeAfter(lines, landau!, 'midline', blank, untold).id).toBe('landau');
    const told = withOne(untold, placeAt(landau!), { note: 'asleep' });
    expect(placeAfter(lines, landau!, 'midline', blank, told).id).toBe('rooting');
  });

  it('does not need the midline of a pair, and passes over what is done', () => {
    expect(rooting!.sides).toEqual(['left', 'right', 'midline']);
    const done = give(blank, rooting!, 'left', 'right');
    expect(isDone(done, rooting!)).toBe(true);
    expect(nextOpen(lines, done, 'landau')).toBeUndefined();
    expect(nextOpen(lines, done)?.id).toBe('moro');
  });

  it('moves by lines and sides and stays at the ends', () => {
    const at = placeAt(moro!);
    expect(moved(lines, at, -1)).toEqual(at);
    expect(moved(lines, at, 2).id).toBe('rooting');
    expect(moved(lines, at, 9).id).toBe('rooting');
    expect(sideways(moro!, at, 1).side).toBe('right');
    expect(sideways(moro!, at, -1)).toEqual(at);
  });
});

describe('the lines of a recording', () => {
  it('follow the sheet, then what was recorded or added beyond it', () => {
    const visit = give(blank, linesFor(['galant'], blank, [], ATLAS.reflexes)[0]!, 'left');
    const all = linesFor(['moro'], visit, ['atnr', 'moro'], ATLAS.reflexes);
    expect(all.map(({ id, onSheet }) => [id, onSheet])).toEqual([
      ['moro', true],
      ['galant', false],
      ['atnr', false],
    ]);
  });

  it('keep what is not in the atlas, and never stand on it', () => {
    const all = linesFor(['own-fencer', 'moro'], blank, [], ATLAS.reflexes);
    expect(all[0]).toMatchObject({ id: 'own-fencer', reflex: undefined });
    expect(nextOpen(all, blank)?.id).toBe('moro');
    expect(moved(all, placeAt(all[1]!), -1).id).toBe('moro');
  });

  it('take the sheet made for about that day', () => {
    const sheet = { on: '2026-06-10' as CivilDate, reflexes: ['moro'] };
    expect(sheetServing(sheet, '2026-06-10' as CivilDate)).toBe(sheet);
    expect(sheetServing(sheet, '2026-06-24' as CivilDate)).toBe(sheet);
    expect(sheetServing(sheet, '2026-06-25' as CivilDate)).toBeUndefined();
    expect(sheetServing(null, '2026-06-10' as CivilDate)).toBeUndefined();
  });

  it('are planned without the visit that is being recorded', () => {
    const record = demoCase(ATLAS);
    expect(recordWithout(record, record.visits[1]!.id).visits.map(({ on }) => on)).toEqual([
      '2026-01-12',
      '2026-05-11',
    ]);
    expect(recordWithout(record, undefined).visits).toHaveLength(3);
  });
});

describe('what goes with a response', () => {
  it('a state set from here on leaves what was recorded with another', () => {
    const first = answered(blank, moro!, ['left'], 'weak', 'not-recorded');
    const awake = withStateFromHere(first, 'quiet-alert');
    expect(awake.findings[0]!.state).toBe('quiet-alert');
    expect(withStateFromHere(awake, 'crying').findings[0]!.state).toBe('quiet-alert');
    expect(lastState(awake)).toBe('quiet-alert');
    expect(lastState(blank)).toBe('not-recorded');
  });

  it('a reason goes with the response it explained; a comment stays', () => {
    const untold = withOne(
      answered(blank, landau!, ['midline'], 'not-assessable', 'crying'),
      placeAt(landau!),
      { note: 'crying' },
    );
    expect(answered(untold, landau!, ['midline'], 'weak', 'crying').findings[0]).toMatchObject({
      response: 'weak',
      note: '',
    });
    const noted = withOne(give(blank, moro!, 'left'), placeAt(moro!), { note: 'slow' });
    expect(answered(noted, moro!, ['left'], 'brisk', 'crying').findings[0]!.note).toBe('slow');
  });
});

describe('keys while recording', () => {
  const press = (key: string, more = {}) =>
    recordKey({
      key,
      code: '',
      shiftKey: false,
      ctrlKey: false,
      metaKey: false,
      altKey: false,
      ...more,
    });

  it('1 to 5 are the responses in the order of their strength, 0 and n not assessable', () => {
    const given = ['1', '2', '3', '4', '5', '0', 'n'].map((key) => {
      const meant = press(key);
      return meant?.do === 'answer' ? meant.response : undefined;
    });
    expect(given).toEqual([...RESPONSES, 'not-assessable']);
  });

  it('Shift makes it both sides, whatever the digit becomes with it', () => {
    expect(press('"', { code: 'Digit2', shiftKey: true })).toEqual({
      do: 'answer',
      response: 'weak',
      both: true,
    });
  });

  it('leaves keys with Control, Alt or the command key, and those it does not know', () => {
    expect(press('u', { ctrlKey: true })).toBeUndefined();
    expect(press('1', { altKey: true })).toBeUndefined();
    expect(press('c', { metaKey: true })).toBeUndefined();
    expect(press('Tab')).toBeUndefined();
    expect(press('7')).toBeUndefined();
  });

  it('? lists the keys though Shift is held', () => {
    expect(press('?', { shiftKey: true, code: 'Slash' })).toEqual({ do: 'keys' });
  });
});
