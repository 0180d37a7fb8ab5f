/** What a family's page says when: of one side, of several things at once, of a day that is over, of an early birth. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { addDays, type CivilDate } from '../../src/lib/age/civil.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { LANGUAGES } from '../../src/lib/case/family.ts';
import type { FamilyPage, Sentence } from '../../src/lib/handout/model.ts';
import { sentencesOf } from '../../src/lib/handout/page.ts';
import { slidesOf } from '../../src/lib/handout/slides.ts';
import { FAMILY_WORDS } from '../../src/lib/words/family.ts';
import { childCase, type ShortVisit } from '../support/kestrel.ts';
import { CHILDREN, pageOf, pagesOf, records, textOf } from './pages.ts';

const childOf = (label: string): Case => CHILDREN.find(([one]) => one === label)![1];
const itemsOf = (page: FamilyPage) => page.sections.flatMap(({ items }) => items);
const keysOf = (page: FamilyPage) => sentencesOf(page).map(({ key }) => key);
const sectionOf = (page: FamilyPage, id: string) => page.sections.find((one) => one.id === id);
const textsOf = (sentences: readonly Sentence[] = []) => sentences.map(({ text }) => text);
const TERM = { born: '2025-10-01', gestation: '40w0d' };

describe('what came back', () => {
  test.each([
    ['en', 'It had gone. On the right, it is there again.'],
    ['es', 'Ya no lo tenía. En el lado derecho lo vimos otra vez.'],
  ] as const)('in %s names its side, and is not "still" there', (language, said) => {
    const page = pageOf(childOf('Godwit'), null, { language });
    const atnr = itemsOf(page).find(({ reflex }) => reflex.id === 'atnr')!;
    const means = textsOf(atnr.means);
    expect(means).toContain(said);
    expect(means.at(-1)).toBe(FAMILY_WORDS[language].aboutReflex['why-talk']);
    expect(means.join(' ')).not.toMatch(/still|[Tt]odavía/);
  });

  test('what never went on the other side is still there, and that side is named too', () => {
    const visit = (on: string, left: 'elicited' | 'not-elicited'): ShortVisit => ({
      on,
      findings: [
        ['atnr', 'left', left],
        ['atnr', 'right', 'elicited'],
      ],
    });
    const record = childCase(TERM, [
      visit('2025-12-01', 'elicited'),
      visit('2026-04-01', 'not-elicited'),
      visit('2026-11-01', 'elicited'),
    ]);
    const said = textsOf(itemsOf(pageOf(record))[0]?.means).join(' ');
    expect(said).toContain('On the left, it is there again.');
    expect(said).toContain('On the right, it is still there.');
    expect(said).not.toContain('On the left, it is still there.');
  });
});

/** All that was looked at is as expected. */
const WHOLE = /^today\.fits(-open)?$/;

describe('what all of it comes to', () => {
  it('is one sentence, and opens the page; what happens next comes with it, and with a date', () => {
    const seen = { dated: 0, none: 0 };
    fc.assert(
      fc.property(records, fc.constantFrom(...LANGUAGES), (record, language) => {
        for (const page of pagesOf(record, { language })) {
          const [today, next] = page.sections;
          expect(today?.id).toBe('today');
          expect(today?.sentences).toHaveLength(1);
          expect(today?.sentences[0]?.text).toMatch(/^[^.!?]+\.$/);
          const isLast = page.visit === '' || page.visit === record.visits.at(-1)!.id;
          if (!isLast || record.visits.at(-2)?.on === record.visits.at(-1)!.on) continue;
          expect(next?.id).toBe('next');
          const keys = next!.sentences.map(({ key }) => key);
          if (keys.includes('next.none')) seen.none += 1;
          else {
            expect(keys.some((key) => ['next.by', 'next.visit', 'next.doctor'].includes(key))).toBe(
              true,
            );
            seen.dated += 1;
          }
        }
      }),
      { numRuns: 40 },
    );
    expect(seen.dated).toBeGreaterThan(seen.none);
  });

  it('says each caveat once', () => {
    for (const language of LANGUAGES)
      for (const [, record] of CHILDREN)
        for (const page of pagesOf(record, { language })) {
          const caveat =
            /do not all agree|No dicen todas lo mismo|cannot name an illness|No puede decir qué enfermedad/g;
          const said = textOf(page).match(caveat) ?? [];
          expect(new Set(said).size).toBe(said.length);
        }
  });

  it('calls what was seen as expected only where enough was seen and all of it could be told', () => {
    const dunlin = pageOf(childOf('Dunlin'), 0);
    expect(itemsOf(dunlin)[0]?.meaning).toBe('cannot-tell-state');
    expect(keysOf(dunlin).filter((key) => /^today\.fits/.test(key))).toEqual(['today.fits-so-far']);
    let seen = 0;
    fc.assert(
      fc.property(records, (record) => {
        for (const page of pagesOf(record)) {
          if (!keysOf(page).some((key) => WHOLE.test(key))) continue;
          seen += 1;
          const asks = page.candidates.map(({ attention }) => attention);
          expect(new Set(asks)).toEqual(new Set(['fits']));
          expect(keysOf(page)).not.toContain('looked.few');
        }
      }),
      { numRuns: 40 },
    );
    for (const [, record] of CHILDREN)
      for (const page of pagesOf(record))
        seen += Number(keysOf(page).some((key) => WHOLE.test(key)));
    expect(seen).toBeGreaterThan(0);
  });

  it('does not say in one breath that little was looked at, and more than is shown', () => {
    expect(keysOf(pageOf(childOf('Dunlin'), 0))).toContain('looked.few-more');
    for (const [, record] of CHILDREN)
      for (const page of pagesOf(record)) {
        const keys = keysOf(page);
        expect(keys.includes('looked.few') && keys.includes('looked.more')).toBe(false);
      }
  });
});

describe('a day that is over', () => {
  const awaited = (page: FamilyPage): string =>
    [...itemsOf(page).flatMap(({ next }) => next), ...(sectionOf(page, 'next')?.sentences ?? [])]
      .map(({ text }) => text)
      .join(' ');
  /** Dates in an English text, in the order of the calendar's writing. */
  const datesIn = (text: string): number[] =>
    [...text.matchAll(/\d{1,2} \p{L}+ \d{4}/gu)].map(([date]) => Date.parse(`${date} UTC`));
  const at = (date: CivilDate): number => Date.parse(`${date}T00:00:00Z`);

  it('awaits nothing that lies before the last visit, and says what it meant that day', () => {
    let seen = 0;
    fc.assert(
      fc.property(records, fc.constantFrom(...LANGUAGES), (record, language) => {
        const last = record.visits.at(-1)!.on;
        for (const index of record.visits.keys()) {
          const page = pageOf(record, index, { language });
          const isPast = record.visits[index]!.on < last;
          const keys = keysOf(page).join(' ');
          const { meantThen, thoughtThen, headings, labels } = FAMILY_WORDS[language];
          const heading = isPast ? thoughtThen : headings.today;
          expect(sectionOf(page, 'today')?.heading.text).toBe(heading);
          expect(page.labels.means).toBe(isPast ? meantThen : labels.means);
          if (!isPast) continue;
          seen += 1;
          expect(keys).not.toMatch(/soon-by|look-again/);
          const english = language === 'en' ? datesIn(awaited(page)) : [];
          for (const date of english) expect(date).toBeGreaterThan(at(last));
        }
      }),
      { numRuns: 40 },
    );
    expect(seen).toBeGreaterThan(20);
  });

  test('Dunlin’s first visit tells of nothing to come soon; nor does its slide speak of today', () => {
    const page = pageOf(childOf('Dunlin'), 0);
    expect(textOf(page)).not.toContain('Soon we may look');
    const labels = slidesOf(page).flatMap(({ parts }) => parts.map(({ label }) => label));
    expect(labels).toContain('What it meant that day');
    expect(labels).not.toContain('What it means today');
  });

  it('is so by the calendar as well, but not of an invented child, who grows no older', () => {
    let seen = 0;
    for (const [, invented] of CHILDREN) {
      const record = { ...invented, child: { ...invented.child, invented: false } };
      const last = record.visits.at(-1)?.on;
      if (!last) continue;
      const today = addDays(last, 120);
      const late = pageOf(record, -1, { today });
      for (const date of datesIn(awaited(late))) expect(date).toBeGreaterThan(at(today));
      seen += datesIn(awaited(pageOf(record))).length - datesIn(awaited(late)).length;
      expect(textOf(pageOf(invented, -1, { today }))).toBe(textOf(pageOf(invented)));
    }
    expect(seen).toBeGreaterThan(10);
  });
});

describe('about an age', () => {
  const DATED = /\.(goes-by|goes-between|goes-later|comes-by|comes-between|soon-by)$/;

  it('of a child born early always says from when it is counted, and of no other', () => {
    let seen = 0;
    fc.assert(
      fc.property(records, (record) => {
        const isEarly = record.child.birth.gestationalDays < 37 * 7;
        for (const page of pagesOf(record))
          for (const { key, text } of sentencesOf(page)) {
            const isBand = key.startsWith('chart.') && /\d (weeks?|months?)\b/.test(text);
            if (!DATED.test(key) && !isBand) continue;
            seen += 1;
            if (isEarly) expect(text).toMatch(/due date|birth/);
            else expect(text).not.toMatch(/due date/);
          }
      }),
      { numRuns: 40 },
    );
    expect(seen).toBeGreaterThan(100);
  });

  it('is the same beside a reflex and in its picture', () => {
    const ageIn = (text: string): string | undefined =>
      [...text.matchAll(/\d+ (?:weeks?|months?)/g)].at(-1)?.[0];
    let seen = 0;
    for (const [, record] of CHILDREN)
      for (const page of pagesOf(record))
        for (const { reflex, next } of itemsOf(page)) {
          const dated = next.find(({ key }) => DATED.test(key));
          const band = page.chart.bands.find((one) => one.reflex === reflex)?.spoken.text;
          if (!dated) continue;
          seen += 1;
          expect(band).toContain(ageIn(dated.text));
        }
    expect(seen).toBeGreaterThan(20);
  });

  test('a span of ages is told with both its ends', () => {
    const stnr = itemsOf(pageOf(childOf('Godwit'))).find(({ reflex }) => reflex.id === 'stnr');
    expect(textsOf(stnr?.next)[0]).toMatch(/, at about 10 to 12 months\.$/);
  });
});

describe('what is to be talked about', () => {
  it.each(LANGUAGES)(
    'in %s is one sentence and a list, on the page and on its slide',
    (language) => {
      const page = pageOf(childOf('Curlew'), -1, { language });
      const { sentences } = sectionOf(page, 'talk')!;
      expect(sentences.map(({ key }) => key.replace(/\..*\./, '.*.'))).toEqual([
        'talk.intro',
        ...sentences.slice(1).map(() => 'item.*.talk'),
      ]);
      expect(sentences.length).toBeGreaterThan(2);
      const listed = slidesOf(page)
        .filter(({ id }) => id.startsWith('talk'))
        .flatMap(({ parts }) => parts.filter(({ isList }) => isList));
      expect(listed.flatMap((part) => part.sentences)).toEqual(textsOf(sentences.slice(1)));
    },
  );
});

test('where nothing was looked at, nothing is said of practice or of guides', () => {
  const keys = keysOf(pageOf(childOf('Redshank'), null));
  expect(keys).not.toContain('help.no-practice');
  expect(keys).not.toContain('caution.guides');
  expect(keys).toEqual(expect.arrayContaining(['help.daily', 'caution.instead', 'call.any']));
});

test('the line of the picture is the visit told of, or the last of the course', () => {
  const record = childOf('Curlew');
  expect(pageOf(record, 0).chart.today.words).toBe('this visit');
  expect(pageOf(record, null).chart.today.words).toBe('last visit');
});
