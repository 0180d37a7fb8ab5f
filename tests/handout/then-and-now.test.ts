/** What was seen on an earlier day is told of that day, and not as if it had been seen today. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Case } from '../../src/lib/case/case.ts';
import { LANGUAGES } from '../../src/lib/case/family.ts';
import type { FamilyPage } from '../../src/lib/handout/model.ts';
import { sentencesOf } from '../../src/lib/handout/page.ts';
import { FAMILY_WORDS } from '../../src/lib/words/family.ts';
import { childCase, type ShortFinding, type ShortVisit } from '../support/kestrel.ts';
import { CHILDREN, pageOf, pagesOf, records } from './pages.ts';

const itemOf = (page: FamilyPage, id: string) =>
  page.sections.flatMap(({ items }) => items).find(({ reflex }) => reflex.id === id)!;
const said = (page: FamilyPage, id: string): string => {
  const { saw, means, next } = itemOf(page, id);
  return [...saw, ...means, ...next].map(({ text }) => text).join(' ');
};
const keysOf = (page: FamilyPage) => sentencesOf(page).map(({ key }) => key);
const both = (id: string, response: ShortFinding[2]): ShortFinding[] => [
  [id, 'left', response],
  [id, 'right', response],
];
const at = (on: string, ...findings: ShortFinding[][]): ShortVisit => ({
  on,
  findings: findings.flat(),
});
const TERM = { born: '2025-04-01', gestation: '40w0d' };

describe('what was last looked at on an earlier day', () => {
  const course = (record: Case, language: 'en' | 'es' = 'en') => pageOf(record, null, { language });
  const late = childCase(TERM, [
    at('2025-06-01', both('moro', 'elicited'), both('palmar-grasp', 'elicited')),
    at('2026-06-05', [['landau', 'midline', 'elicited']]),
  ]);

  test('means what it meant at that age, and has not been looked at since', () => {
    expect(said(course(late), 'moro')).toMatch(
      /^We last looked at this on 1 June 2025\. We saw it on both sides\. .*\bthat age\b.* We have not looked at it since\.$/,
    );
    expect(said(course(late), 'moro')).not.toMatch(/this age|\bnow\b/);
    expect(said(course(late, 'es'), 'moro')).toMatch(
      /^Lo revisamos por última vez el 1 de junio de 2025\. .*esa edad.* Desde entonces no lo hemos/,
    );
    expect(said(course(late), 'landau')).not.toMatch(/that age|since|last looked/);
  });

  test('what was not seen then was looked at, not seen, that day', () => {
    const record = childCase(TERM, [
      at('2025-06-10', [['sucking', 'midline', 'not-elicited', 'quiet-alert', 2]]),
      at('2025-12-06', [['landau', 'midline', 'elicited']]),
    ]);
    for (const page of [course(record), pageOf(record, 1)]) {
      const text = said(page, 'sucking');
      expect(text).toContain('We last looked at this on 10 June 2025. We did not see it.');
      expect(text).toMatch(/that age|[Bb]y then/);
      expect(text).not.toMatch(/this age|[Bb]y now|[Aa]bout now/);
    }
    expect(said(course(record), 'sucking')).toContain('We want to talk with you about this.');
  });

  test('a try since without an answer is told instead', () => {
    const record = childCase(TERM, [
      at('2025-06-01', both('moro', 'elicited')),
      at('2025-06-20', both('moro', 'not-assessable')),
    ]);
    expect(said(course(record), 'moro')).toContain('We tried again on 20 June 2025');
    expect(said(course(record), 'moro')).not.toContain('since');
  });

  it('counts for nothing in what all of it comes to today', () => {
    expect(keysOf(course(late)).filter((key) => key.startsWith('today.fits'))).toHaveLength(1);
    expect(keysOf(course(late)).join(' ')).toMatch(/today\.fits-so-far/);
    const tried = childCase(TERM, [
      at('2025-06-01', both('moro', 'elicited'), both('palmar-grasp', 'elicited')),
      at('2026-06-05', [['landau', 'midline', 'not-assessable']]),
    ]);
    expect(keysOf(course(tried))).toContain('today.cannot-tell');
  });

  it('is never told in the words of today, whatever was seen', () => {
    let older = 0;
    fc.assert(
      fc.property(records, fc.constantFrom(...LANGUAGES), (record, language) => {
        const { aboutReflex, tense } = FAMILY_WORDS[language];
        const since = aboutReflex.since;
        for (const page of pagesOf(record, { language }))
          for (const { means } of page.sections.flatMap(({ items }) => items)) {
            const texts = means.map(({ text }) => text);
            if (!texts.includes(since)) continue;
            older += 1;
            expect(texts.join(' ')).not.toContain(tense.now['age']);
          }
      }),
      { numRuns: 40 },
    );
    expect(older).toBeGreaterThan(0);
  });
});

test('what was there before is not told as still to come', () => {
  const record = childCase({ born: '2026-01-10', gestation: '36w1d' }, [
    at('2026-02-10', both('moro', 'elicited')),
    at('2026-03-05', both('moro', 'not-elicited')),
  ]);
  const page = pageOf(record, null);
  expect(said(page, 'moro')).toContain(
    'We saw it before, and this time we did not. We want to look again.',
  );
  expect(said(page, 'moro')).not.toMatch(
    /time for it to be there|At this age, we expect to see it/,
  );
});

test('what a child feeds by is not said to fade', () => {
  let seen = 0;
  for (const on of ['2025-06-20', '2025-08-01', '2025-10-01', '2026-01-01', '2026-04-01']) {
    const record = childCase(TERM, [
      at(on, [['sucking', 'midline', 'elicited']], both('rooting', 'elicited')),
    ]);
    for (const language of LANGUAGES) {
      const page = pageOf(record, -1, { language });
      for (const id of ['sucking', 'rooting']) {
        expect(said(page, id)).not.toMatch(/\bfade|desaparec|\bse va\b/);
        seen += Number(/feed without it|sin esto/.test(said(page, id)));
      }
    }
  }
  expect(seen).toBeGreaterThan(0);
});

test('where the guides do not agree on a part, the whole is not said to be as expected', () => {
  let firm = 0;
  const looked = (record: Case): void => {
    for (const page of pagesOf(record).filter(({ visit }) => visit !== '')) {
      if (!keysOf(page).some((key) => /^today\.fits(-so-far)?$/.test(key))) continue;
      firm += 1;
      for (const item of page.sections.flatMap(({ items }) => items))
        if (item.attention === 'fits') expect(item.firm).toBe(true);
    }
  };
  for (const [, record] of CHILDREN) looked(record);
  fc.assert(fc.property(records, looked), { numRuns: 40 });
  expect(firm).toBeGreaterThan(0);
  expect(CHILDREN.flatMap(([, record]) => pagesOf(record).flatMap(keysOf))).toContain(
    'today.fits-open',
  );
});

test('a child seen at home before the due date is laid on the back to sleep', () => {
  const record = childCase({ born: '2026-04-20', gestation: '30w4d' }, [
    at('2026-06-01', both('moro', 'elicited')),
  ]);
  expect(keysOf(pageOf(record))).toContain('help.sleep-home');
});
