import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { isAnswer, RESPONSES, STATES } from '../../src/lib/case/finding.ts';
import { changesAt, moveOf } from '../../src/lib/judge/changes.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { childCase, type ShortVisit } from '../support/kestrel.ts';

const SHEET = sheetOf(ATLAS);

function changes(visits: ShortVisit[], gestation = '40w0d') {
  const record = childCase({ born: '2026-01-01', gestation }, visits);
  const judged = judgeCase(record, { atlas: ATLAS, sheet: SHEET });
  return changesAt(judged.at(-1)!, judged.slice(0, -1));
}
const told = (all: ReturnType<typeof changes>) =>
  all.changed.map(({ reflex, side, move }) => `${reflex.id} ${side} ${move}`);

describe('the move from one answer to the next', () => {
  test.each([
    [undefined, 'elicited', false, 'first'],
    ['not-elicited', 'weak', false, 'came'],
    ['not-elicited', 'elicited', true, 'came-back'],
    ['elicited', 'not-elicited', true, 'went'],
    ['weak', 'brisk', true, 'stronger'],
    ['obligatory', 'elicited', true, 'weaker'],
    ['not-elicited', 'not-elicited', true, 'same'],
    ['brisk', 'brisk', true, 'same'],
  ] as const)('%s then %s: %s, %s', (before, now, wasThere, move) => {
    expect(moveOf(before, now, wasThere)).toBe(move);
  });
});

describe('at a visit', () => {
  test('each side stands against its own last answer, over a visit that gave none', () => {
    const all = changes([
      {
        on: '2026-02-01',
        findings: [
          ['moro', 'left', 'elicited'],
          ['moro', 'right', 'elicited'],
        ],
      },
      { on: '2026-03-01', findings: [['moro', 'left', 'not-elicited', 'drowsy']] },
      {
        on: '2026-04-01',
        findings: [
          ['moro', 'left', 'not-elicited'],
          ['moro', 'right', 'weak'],
        ],
      },
    ]);
    expect(told(all)).toEqual(['moro left went', 'moro right weaker']);
    expect(all.changed.map(({ since }) => since)).toEqual(['2026-02-01', '2026-02-01']);
  });

  test('gone and there again is coming back', () => {
    const all = changes([
      { on: '2026-02-01', findings: [['moro', 'left', 'elicited']] },
      { on: '2026-06-01', findings: [['moro', 'left', 'not-elicited']] },
      { on: '2026-08-01', findings: [['moro', 'left', 'elicited']] },
    ]);
    expect(told(all)).toEqual(['moro left came-back']);
  });

  test('the same response at an age at which it means something else has changed', () => {
    // crossed extension: gone by 4 months in every source held, there at one month in most
    const all = changes([
      { on: '2026-01-20', findings: [['crossed-extension', 'left', 'elicited']] },
      { on: '2026-09-01', findings: [['crossed-extension', 'left', 'elicited']] },
    ]);
    expect(all.changed).toMatchObject([
      { move: 'same', meansOtherwise: true, now: { judged: { verdict: 'persisting' } } },
    ]);
    expect(all.changed[0]?.before?.judged.verdict).not.toBe('persisting');
  });

  test('what asked and was not looked at again is said', () => {
    const all = changes([
      {
        on: '2026-09-01',
        findings: [
          ['crossed-extension', 'left', 'elicited'],
          ['landau', 'midline', 'elicited'],
        ],
      },
      { on: '2026-10-01', findings: [['landau', 'midline', 'elicited']] },
    ]);
    expect(all.leftOpen.map(({ reflex, side, since }) => [reflex.id, side, since])).toEqual([
      ['crossed-extension', 'left', '2026-09-01'],
    ]);
  });

  test('another examiner on the same date is no earlier visit', () => {
    const all = changes([
      { on: '2026-04-01', examiner: 'Alder', findings: [['moro', 'left', 'elicited']] },
      { on: '2026-04-01', examiner: 'Rowan', findings: [['moro', 'left', 'not-elicited']] },
    ]);
    expect(told(all)).toEqual(['moro left first']);
  });
});

const visit = (on: string) =>
  fc
    .uniqueArray(
      fc.record({
        side: fc.constantFrom('left', 'right'),
        reflex: fc.constantFrom('moro', 'palmar-grasp', 'atnr'),
        response: fc.constantFrom(...RESPONSES),
        state: fc.constantFrom(...STATES),
      }),
      { selector: (f) => `${f.reflex} ${f.side}`, maxLength: 6 },
    )
    .map((all) => ({
      on,
      findings: all.map(
        (f) => [f.reflex, f.side, f.response, f.state] as ShortVisit['findings'][0],
      ),
    }));

test('every answer of a visit is told once, changed or the same, and nothing else is', () => {
  fc.assert(
    fc.property(visit('2026-02-01'), visit('2026-04-01'), visit('2026-08-01'), (...visits) => {
      const all = changes(visits, '31w2d');
      const answers = visits[2].findings.filter(([, , response, state = 'not-recorded']) =>
        isAnswer({ response, state }),
      );
      expect(all.changed.length + all.same.length).toBe(answers.length);
      for (const { move, before } of [...all.changed, ...all.same])
        expect(before === undefined).toBe(move === 'first');
      for (const { now, before } of all.same)
        expect(before?.judged.verdict).toBe(now.judged.verdict);
    }),
    { numRuns: 200 },
  );
});
