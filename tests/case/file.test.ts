import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS, sidesOf } from '../../src/lib/atlas/atlas.ts';
import { parseCaseText, sizeProblem } from '../../src/lib/case/file.ts';
import { caseText } from '../../src/lib/case/raw.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { RESPONSES, STATES } from '../../src/lib/case/finding.ts';
import { en } from '../../src/lib/words/en.ts';

/** A case file as an object, with changes merged into it. Invented. */
function file(
  change: {
    child?: Record<string, unknown>;
    visit?: Record<string, unknown>;
    finding?: Record<string, unknown>;
    top?: Record<string, unknown>;
  } = {},
): string {
  return JSON.stringify({
    format: 'tidemark-case',
    version: 1,
    child: {
      label: 'Kestrel',
      born: '2026-03-04',
      gestation: '33w1d',
      dating: 'ultrasound-first-trimester',
      ...change.child,
    },
    visits: [
      {
        on: '2026-05-18',
        examiner: 'PT 1',
        note: '',
        findings: [
          {
            reflex: 'moro',
            side: 'left',
            response: 'elicited',
            state: 'quiet-alert',
            note: '',
            ...change.finding,
          },
        ],
        ...change.visit,
      },
    ],
    ...change.top,
  });
}

const sentences = (text: string): string[] => {
  const parsed = parseCaseText(text, ATLAS);
  return parsed.ok ? [] : parsed.problems.map(en.problems.problemWords);
};

const moro = (side: string) => ({
  reflex: 'moro',
  side,
  response: 'elicited',
  state: 'quiet-alert',
  note: '',
});
const visitOn = (on: string, examiner: string) => ({ on, examiner, note: '', findings: [] });

describe('a case file', () => {
  test('is taken whole', () => {
    const parsed = parseCaseText(file(), ATLAS);
    expect(parsed.ok && parsed.value.child.birth).toEqual({
      born: '2026-03-04',
      due: '2026-04-21',
      gestationalDays: 232,
      dating: 'ultrasound-first-trimester',
    });
    expect(parsed.ok && parsed.value.visits[0]?.findings).toEqual([moro('left')]);
  });

  test('may leave out notes, states, the dating and the examiner', () => {
    const text = file({
      child: { dating: undefined },
      visit: { examiner: undefined, note: undefined },
      finding: { state: undefined, note: undefined },
    });
    const parsed = parseCaseText(text, ATLAS);
    expect(parsed.ok && parsed.value.child.birth.dating).toBe('unknown');
    expect(parsed.ok && parsed.value.visits[0]?.findings[0]?.state).toBe('not-recorded');
  });

  test('takes a due date instead of the gestation, and both when they agree', () => {
    const due = parseCaseText(file({ child: { gestation: undefined, due: '2026-04-21' } }), ATLAS);
    expect(due.ok && due.value.child).toMatchObject({
      datedBy: 'due',
      birth: { gestationalDays: 232 },
    });
    expect(sentences(file({ child: { due: '2026-04-21' } }))).toEqual([]);
  });

  test('orders its visits by date', () => {
    const visits = [visitOn('2026-06-01', 'B'), visitOn('2026-05-01', 'A')];
    const parsed = parseCaseText(file({ top: { visits } }), ATLAS);
    expect(parsed.ok && parsed.value.visits.map((v) => v.on)).toEqual(['2026-05-01', '2026-06-01']);
  });
});

describe('bad input gets a sentence that names the field and the mend', () => {
  test.each<[string, string, RegExp]>([
    [
      'a date that does not exist',
      file({ child: { born: '2026-02-30' } }),
      /^Birth date: "2026-02-30" is not a date/,
    ],
    [
      'a visit date of another form',
      file({ visit: { on: '18.5.2026' } }),
      /^Visit 1 \(18\.5\.2026\), visit date: .*year-month-day/,
    ],
    [
      'an exam before birth',
      file({ visit: { on: '2026-03-03' } }),
      /^Visit 1 .* is before the birth on 2026-03-04/,
    ],
    [
      'gestation under 22w0d',
      file({ child: { gestation: '21w6d' } }),
      /^Gestation at birth: 21w6d is outside 22w0d to 44w6d/,
    ],
    ['gestation over 44w6d', file({ child: { gestation: '45w0d' } }), /^Gestation at birth: 45w0d/],
    [
      'gestation that is none',
      file({ child: { gestation: 'early' } }),
      /^Gestation at birth: "early" is not understood/,
    ],
    [
      'no gestation and no due date',
      file({ child: { gestation: undefined } }),
      /^Gestation at birth: is needed/,
    ],
    [
      'a due date that contradicts',
      file({ child: { due: '2026-05-21' } }),
      /^Due date: means birth at 28w6d, but the gestation given is 33w1d/,
    ],
    [
      'a due date that gives an impossible gestation',
      file({ child: { gestation: undefined, due: '2026-09-21' } }),
      /^Due date: 2026-09-21 would mean birth at 11w2d/,
    ],
    [
      'an unknown dating method',
      file({ child: { dating: 'guess' } }),
      /^Dating method: "guess" is not one of: assisted-conception/,
    ],
    [
      'an unknown reflex',
      file({ finding: { reflex: 'galantt' } }),
      /^Visit 1 \(2026-05-18\), finding 1 \(galantt\), reflex: .*did you mean "galant"/,
    ],
    [
      'a side the reflex does not have',
      file({ finding: { side: 'midline' } }),
      /side: "midline" is not a side of the Moro reflex; record it as left or right/,
    ],
    [
      'an unknown side',
      file({ finding: { side: 'both' } }),
      /side: "both" is not one of: left, right, midline/,
    ],
    [
      'an unknown response',
      file({ finding: { response: '++' } }),
      /response: "\+\+" is not one of: not-elicited, weak/,
    ],
    [
      'an unknown state',
      file({ finding: { state: 'happy' } }),
      /state of the infant: "happy" is not one of/,
    ],
    [
      'a finding given twice',
      file({ visit: { findings: [moro('left'), moro('left')] } }),
      /moro on the left is recorded twice at this visit; keep one/,
    ],
    [
      'two visits on a date by one examiner',
      file({ top: { visits: [visitOn('2026-05-18', 'PT 1'), visitOn('2026-05-18', 'PT 1')] } }),
      /^Visit 2 .*already has a visit by PT 1/,
    ],
    ['an empty label', file({ child: { label: '  ' } }), /^Name or code: is empty/],
    [
      'a label of the wrong kind',
      file({ child: { label: 7 } }),
      /^Name or code: is of the wrong kind/,
    ],
    ['no visits', file({ top: { visits: undefined } }), /^Visits: is missing/],
    ['no JSON', 'reflexes', /^The file: is neither a case file nor a table/],
    ['nothing', ' \n', /^The file: is empty/],
    [
      'a backup',
      '{"format":"tidemark-backup","version":1}',
      /^The file: is a backup .*under Storage/,
    ],
    ['a talk', '{"format":"tidemark-talk","version":1}', /^The file: is a talk.*under Teach/],
    ['another file', '{"format":"other","version":1}', /^The file: is not a Tidemark case/],
    ['a list', '[1,2]', /^The file: is not a Tidemark case/],
    ['null', 'null', /^The file: is not a Tidemark case/],
    ['a file cut short', file().slice(0, 150), /^The file: ends in the middle/],
    [
      'a newer version',
      file({ top: { version: 3 } }),
      /^The file: was saved by a newer Tidemark \(version 3\)/,
    ],
    [
      'script in a label',
      file({ child: { label: '<script>alert(1)</script>' } }),
      /^Name or code: holds markup or script/,
    ],
    [
      'script in a note',
      file({ finding: { note: '<img src=x onerror=alert(1)>' } }),
      /note: holds markup or script/,
    ],
    [
      'a hidden character in a label',
      file({ child: { label: 'Kest\u202erel' } }),
      /^Name or code: holds characters that cannot be seen/,
    ],
    [
      'a line break in a label',
      file({ child: { label: 'Kest\nrel' } }),
      /^Name or code: holds characters/,
    ],
    ['another century', file({ visit: { on: '3026-05-18' } }), /is outside the years 1900 to 2199/],
    ['a version that is none', file({ top: { version: '1' } }), /names version "1"; write 1/],
    [
      'a milestone twice',
      file({
        visit: {
          milestones: [
            { milestone: 'sitting', seen: true },
            { milestone: 'sitting', seen: false },
          ],
        },
      }),
      /sitting is recorded twice/,
    ],
    ['an endless note', file({ finding: { note: 'x'.repeat(5000) } }), /note: is too long/],
    [
      'a milestone of no name',
      file({ visit: { milestones: [{ milestone: 'flying', seen: true }] } }),
      /milestones: "flying" is not one of/,
    ],
  ])('%s', (_, text, sentence) => {
    const [first] = sentences(text);
    expect(first).toMatch(sentence);
  });

  test('200 MB, before it is read', () => {
    expect(en.problems.problemWords(sizeProblem(200_000_000)!)).toMatch(
      /about 200 MB.*at most 5 MB/,
    );
    expect(sizeProblem(10_000)).toBeUndefined();
  });

  test('a note may hold a plain less-than sign', () => {
    expect(
      sentences(file({ finding: { note: 'answer in <3 s; L<R; a < b and b > a\nsecond line' } })),
    ).toEqual([]);
  });
});

test('two visits on one date by two examiners are two visits', () => {
  const visits = [visitOn('2026-05-18', 'PT 1'), visitOn('2026-05-18', 'PT 2')];
  expect(sentences(file({ top: { visits } }))).toEqual([]);
});

const word = fc.stringMatching(/^[A-Za-z0-9 .,<&"']{0,30}$/).filter((text) => !text.includes('<'));
const finding = fc.constantFrom(...ATLAS.reflexes.values()).chain((reflex) =>
  fc.record({
    reflex: fc.constant(reflex.id),
    side: fc.constantFrom(...sidesOf(reflex)),
    response: fc.constantFrom(...RESPONSES),
    state: fc.constantFrom(...STATES),
    note: word,
  }),
);
const day = (month: number) => `2026-${String(month).padStart(2, '0')}-11`;
const raw = fc.record({
  format: fc.constant('tidemark-case'),
  version: fc.constant(1),
  child: fc.record({
    label: fc.stringMatching(/^[A-Z][a-z0-9 ]{0,20}[a-z]$/),
    born: fc.constant('2026-01-05'),
    gestation: fc.constantFrom('24w0d', '31w2d', '40w6d'),
    dating: fc.constantFrom('unknown', 'last-period'),
    invented: fc.boolean(),
  }),
  visits: fc.uniqueArray(
    fc.record({
      on: fc.integer({ min: 2, max: 12 }).map(day),
      examiner: fc.constantFrom('PT 1', 'PT 2'),
      note: word,
      findings: fc.uniqueArray(finding, { selector: (f) => `${f.reflex} ${f.side}`, maxLength: 6 }),
      milestones: fc.constant([{ milestone: 'sitting', seen: true }]),
    }),
    { selector: (v) => `${v.on} ${v.examiner}`, maxLength: 5 },
  ),
  tags: fc.option(fc.array(fc.constantFrom('clinic', 'twin', ' second '), { maxLength: 4 }), {
    nil: undefined,
  }),
  archived: fc.option(fc.boolean(), { nil: undefined }),
  question: fc.option(word, { nil: undefined }),
  decisions: fc.option(
    fc.array(
      fc.record({
        on: fc.integer({ min: 2, max: 12 }).map(day),
        text: fc.constantFrom('See again', 'Ask the paediatrician'),
        who: fc.constantFrom('', 'PT 1'),
        by: fc.constantFrom('', '2026-12-24'),
        done: fc.boolean(),
      }),
      { maxLength: 3 },
    ),
    { nil: undefined },
  ),
  sheet: fc.option(
    fc.record({ on: fc.integer({ min: 2, max: 12 }).map(day), reflexes: fc.constant(['moro']) }),
    { nil: undefined },
  ),
});

test('a case written and read again is the same case', () => {
  fc.assert(
    fc.property(raw, (value) => {
      const first = parseCaseText(JSON.stringify(value), ATLAS);
      if (!first.ok) throw new Error(first.problems.map(en.problems.problemWords).join('\n'));
      const again = parseCaseText(caseText(first.value), ATLAS);
      expect(again).toEqual(first);
    }),
    { numRuns: 300 },
  );
});

test('a file with any part cut out is refused or read, never thrown at', () => {
  const whole = file();
  let [read, refused] = [0, 0];
  fc.assert(
    fc.property(fc.nat(whole.length), fc.nat(60), (from, length) => {
      const text = whole.slice(0, from) + whole.slice(from + length);
      const parsed = parseCaseText(text, ATLAS);
      if (!parsed.ok) {
        refused += 1;
        expect(parsed.problems.length).toBeGreaterThan(0);
        for (const p of parsed.problems) expect(en.problems.problemWords(p)).toMatch(/: ./);
      } else {
        read += 1;
        const value: Case = parsed.value;
        expect(value.visits.length).toBeLessThanOrEqual(1);
        // what is read is sound: it is written and read again as the same
        expect(parseCaseText(caseText(value), ATLAS)).toEqual({ ok: true, value });
      }
    }),
    { numRuns: 1000 },
  );
  expect(refused).toBeGreaterThan(0);
  expect(read).toBeGreaterThan(0);
});

describe('what surrounds the visits', () => {
  test('tags are trimmed and stand once', () => {
    const parsed = parseCaseText(file({ top: { tags: ['twin', ' twin ', ''] } }), ATLAS);
    expect(parsed.ok && parsed.value.tags).toEqual(['twin']);
  });

  test.each([
    [{ tags: ['<b>x</b>'] }, /Tags: holds markup/],
    [{ tags: Array.from({ length: 21 }, (_, n) => `t${n}`) }, /Tags: .*20/],
    [{ decisions: [{ on: '2026-02-30', text: 'x' }] }, /Date of the decision: "2026-02-30"/],
    [{ decisions: [{ on: '2026-02-03', text: ' ' }] }, /Decision: /],
    [{ decisions: [{ on: '2026-02-03', text: 'x', by: 'soon' }] }, /By when: "soon"/],
    [{ sheet: { on: 'today', reflexes: [] } }, /Sheet for the visit: "today"/],
    [{ archived: 'yes' }, /archived/i],
  ])('%j is refused with a sentence', (top, sentence) => {
    expect(sentences(file({ top })).join('\n')).toMatch(sentence);
  });
});

test("a finding on a reflex of one's own that is not at hand stays in the record", () => {
  const text = file({ finding: { reflex: 'own-k3x9', side: 'left' } });
  const parsed = parseCaseText(text, ATLAS);
  if (!parsed.ok) throw new Error(parsed.problems.map(en.problems.problemWords).join('\n'));
  expect(caseText(parsed.value)).toContain('own-k3x9');
  expect(sentences(file({ finding: { reflex: 'k3x9' } }))[0]).toMatch(/k3x9/);
});
