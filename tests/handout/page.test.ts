/** What a family's page must always hold, for invented children and for records made at random. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { addDays, parseCivil, type CivilDate } from '../../src/lib/age/civil.ts';
import { dateAtAxisDay } from '../../src/lib/age/clocks.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { LANGUAGES, NO_FAMILY, PRONOUNS, type Family } from '../../src/lib/case/family.ts';
import { isAnswer, type Response } from '../../src/lib/case/finding.ts';
import { MAX_TOLD } from '../../src/lib/handout/choose.ts';
import type { FamilyPage } from '../../src/lib/handout/model.ts';
import { sentencesOf } from '../../src/lib/handout/page.ts';
import { differOn } from '../../src/lib/present/differ.ts';
import { CaseJudge, judgeCase } from '../../src/lib/judge/judge.ts';
import { nextVisit } from '../../src/lib/judge/nextVisit.ts';
import { changeBy, openQuestions } from '../../src/lib/judge/questions.ts';
import { planFor } from '../../src/lib/judge/plan.ts';
import { FAMILY_WORDS } from '../../src/lib/words/family.ts';
import { childCase } from '../support/kestrel.ts';
import { CHILDREN, options, pageOf, pagesOf, records, textOf } from './pages.ts';

const itemsOf = (page: FamilyPage) => page.sections.flatMap(({ items }) => items);
const keysOf = (page: FamilyPage) => sentencesOf(page).map(({ key }) => key);
const settled = (record: Case, family: Partial<Family>): Case => ({
  ...record,
  family: { ...NO_FAMILY, ...family },
});

/** Reflexes that ask to be discussed at the latest answer of any side and examiner, up to a date. */
function toDiscuss(record: Case, upTo: CivilDate): Set<string> {
  const last = new Map<string, { on: CivilDate; discuss: boolean; reflex: string }>();
  for (const { visit, findings } of judgeCase(record, options))
    for (const { finding, attention } of findings) {
      if (visit.on > upTo || !isAnswer(finding)) continue;
      const key = `${finding.reflex} ${finding.side}`;
      const before = last.get(key);
      const discuss = attention === 'discuss';
      if (before?.on === visit.on) before.discuss ||= discuss;
      else last.set(key, { on: visit.on, discuss, reflex: finding.reflex });
    }
  return new Set([...last.values()].flatMap(({ discuss, reflex }) => (discuss ? [reflex] : [])));
}

/** Whether a reflex is told of with words that ask to talk, or named as something to talk about. */
function isSaid(page: FamilyPage, reflex: string): boolean {
  const keys = new Set(keysOf(page));
  const item = itemsOf(page).some((one) => one.reflex.id === reflex);
  return item ? keys.has(`item.${reflex}.why-talk`) : keys.has(`item.${reflex}.talk`);
}

describe('what is to be discussed', () => {
  it('is never silently absent, whatever was chosen, in any language', () => {
    let asked = 0;
    fc.assert(
      fc.property(
        records,
        fc.option(fc.subarray([...ATLAS.reflexes.keys()], { maxLength: MAX_TOLD })),
        fc.constantFrom(...LANGUAGES),
        (record, chosen, language) => {
          for (const at of [null, ...record.visits.keys()]) {
            const visit = at === null ? '' : record.visits[at]!.id;
            const family = { language, pages: [{ visit, chosen, edits: [] }] };
            const page = pageOf(settled(record, family), at);
            const upTo = (record.visits[at ?? -1] ?? record.visits.at(-1)!).on;
            for (const reflex of toDiscuss(record, upTo)) {
              asked += 1;
              expect(isSaid(page, reflex), `${reflex} at ${visit}`).toBe(true);
            }
          }
        },
      ),
      { numRuns: 60 },
    );
    expect(asked).toBeGreaterThan(0);
  });

  it.each(CHILDREN)('of %s comes first', (_, record) => {
    for (const page of pagesOf(record)) {
      const asks = itemsOf(page).map(({ attention }) => attention);
      const rank = { today: 0, discuss: 0, watch: 1, fits: 2, 'not-judged': 2 };
      expect(asks.map((a) => rank[a])).toEqual(asks.map((a) => rank[a]).toSorted());
    }
  });

  test('taken off by the clinician, it is to be talked about', () => {
    const [, record] = CHILDREN.find(([label]) => label === 'Curlew')!;
    const visit = record.visits.at(-1)!.id;
    const page = pageOf(
      settled(record, { pages: [{ visit, chosen: ['palmar-grasp'], edits: [] }] }),
    );
    expect(itemsOf(page).map(({ reflex }) => reflex.id)).toEqual(['palmar-grasp']);
    expect(page.isChosen).toBe(true);
    expect(keysOf(page)).toContain('item.atnr.talk');
    expect(page.sections.map(({ id }) => id)).toContain('talk');
  });

  test('a try that gave no answer does not settle it, and a later answer does', () => {
    const child = { born: '2025-06-01', gestation: '40w0d' };
    const visits = (last: 'elicited' | 'not-assessable') =>
      childCase(child, [
        {
          on: '2026-02-01',
          findings: [
            ['moro', 'left', 'obligatory'],
            ['moro', 'right', 'obligatory'],
          ],
        },
        {
          on: '2026-03-01',
          findings: [
            ['moro', 'left', last],
            ['moro', 'right', last],
          ],
        },
      ]);
    const tried = itemsOf(pageOf(visits('not-assessable')))[0]!;
    expect(tried.attention).toBe('discuss');
    expect(tried.saw.map(({ key }) => key)).toEqual([
      'item.moro.when',
      'item.moro.saw',
      'item.moro.tried',
    ]);
    expect(itemsOf(pageOf(visits('elicited')))[0]?.meaning).not.toBe('talk-held');
  });

  test('what examiners differ on is to be talked about, and is told once they agree', () => {
    const [, record] = CHILDREN.find(([label]) => label === 'Turnstone')!;
    const { on } = record.visits.at(-1)!;
    expect(on).toBe(record.visits.at(-2)?.on);
    const itemIn = (of: Case) => itemsOf(pageOf(of)).find(({ reflex }) => reflex.id === 'atnr')!;
    const open = itemIn(record);
    expect(open.saw.map(({ key }) => key)).toEqual(['item.atnr.other']);
    expect(open.meaning).toBe('cannot-tell-tried');
    expect(isSaid(pageOf(record), 'atnr')).toBe(true);
    const agreed = differOn(judgeCase(record, options).slice(-2), 'atnr').map(({ side }) => ({
      ...{ on, reflex: 'atnr', side, response: 'elicited' as const },
      ...{ state: 'quiet-alert' as const, note: '' },
    }));
    expect(agreed.length).toBeGreaterThan(0);
    const told = itemIn({ ...record, agreed });
    expect(told.saw.map(({ key }) => key)).toEqual(['item.atnr.saw']);
    expect(told.meaning).not.toBe('cannot-tell-tried');
  });

  test('never tells a family that two examiners differed', () => {
    for (const language of LANGUAGES)
      for (const [, record] of CHILDREN)
        for (const page of pagesOf(record, { language }))
          expect(textOf(page)).not.toMatch(
            /two of us|did not see the same|dos personas|lo mismo\. Vamos/i,
          );
  });
});

describe('the choice', () => {
  it.each(CHILDREN)(
    'of %s holds at most six, and three where three were looked at',
    (_, record) => {
      for (const page of pagesOf(record)) {
        const told = itemsOf(page).length;
        expect(told).toBeLessThanOrEqual(MAX_TOLD);
        expect(told).toBeGreaterThanOrEqual(Math.min(3, page.candidates.length));
        expect(page.candidates.filter(({ isTold }) => isTold)).toHaveLength(told);
        expect(page.chart.bands.map(({ reflex }) => reflex)).toEqual(
          itemsOf(page).map(({ reflex }) => reflex),
        );
      }
    },
  );

  test('the figure is drawn on the side that answered, or on the stronger of two', () => {
    const sideOf = (left: Response, right: Response) =>
      itemsOf(
        pageOf(
          childCase({ born: '2026-01-01', gestation: '40w0d' }, [
            {
              on: '2026-03-01',
              findings: [
                ['atnr', 'left', left],
                ['atnr', 'right', right],
              ],
            },
          ]),
        ),
      )[0]?.side;
    expect(sideOf('elicited', 'elicited')).toBe('left');
    expect(sideOf('not-elicited', 'elicited')).toBe('right');
    expect(sideOf('elicited', 'not-elicited')).toBe('left');
    expect(sideOf('elicited', 'obligatory')).toBe('right');
    expect(sideOf('obligatory', 'elicited')).toBe('left');
  });

  test('what was not looked at is passed over', () => {
    const [, record] = CHILDREN[0]!;
    const visit = record.visits[0]!.id;
    const looked = record.visits[0]!.findings[0]!.reflex;
    const page = pageOf(
      settled(record, { pages: [{ visit, chosen: ['stnr', looked], edits: [] }] }),
      0,
    );
    expect(itemsOf(page).map(({ reflex }) => reflex.id)).toEqual([looked]);
  });
});

describe('every page', () => {
  it('keeps its keys apart, its places filled, and its cautions', () => {
    fc.assert(
      fc.property(
        records,
        fc.constantFrom(...LANGUAGES),
        fc.constantFrom(...PRONOUNS),
        (record, language, pronoun) => {
          for (const page of pagesOf(settled(record, { language, pronoun }))) {
            const keys = keysOf(page);
            expect(new Set(keys).size).toBe(keys.length);
            expect(textOf(page)).not.toMatch(/[{}]|undefined|null|NaN/);
            for (const must of ['caution.instead', 'urgent.number', 'call.any', 'help.no-practice'])
              expect(keys).toContain(must);
            for (const sign of ['skills', 'feeding', 'tone', 'fit', 'spasms', 'side'])
              expect(keys).toContain(`urgent.${sign}`);
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  test('says that little was tested where findings are few, and not where they are many', () => {
    const few = childCase({ born: '2026-01-01', gestation: '40w0d' }, [
      {
        on: '2026-02-01',
        findings: [
          ['moro', 'left', 'elicited'],
          ['moro', 'right', 'elicited'],
        ],
      },
    ]);
    expect(keysOf(pageOf(few))).toContain('looked.few');
    const [, many] = CHILDREN[0]!;
    expect(keysOf(pageOf(many))).not.toContain('looked.few');
  });

  test('says "we can’t tell yet" of a missing answer in a child who slept, and of that alone', () => {
    const asleep = childCase({ born: '2026-01-01', gestation: '40w0d' }, [
      { on: '2026-02-01', findings: [['landau', 'midline', 'not-elicited', 'quiet-sleep']] },
    ]);
    const page = pageOf(asleep);
    expect(itemsOf(page)[0]?.meaning).toBe('cannot-tell-state');
    expect(keysOf(page)).toContain('today.cannot-tell');
    expect(textOf(page)).toContain('asleep, so that does not count');
  });

  test('a record without a visit still says when to call and where', () => {
    const [, record] = CHILDREN.find(([label]) => label === 'Redshank')!;
    const page = pageOf(record, null);
    expect(keysOf(page)).toContain('looked.nothing');
    expect(page.chart.bands).toEqual([]);
  });

  test('an earlier visit’s page says that there has been another since, the last one does not', () => {
    const [, record] = CHILDREN[0]!;
    expect(keysOf(pageOf(record, 0))).toContain('who.newer');
    expect(keysOf(pageOf(record, -1))).not.toContain('who.newer');
    expect(keysOf(pageOf(record, null))).not.toContain('who.newer');
  });

  test('the case’s own clinic goes before the machine’s; an empty one leaves a place to write', () => {
    const [, record] = CHILDREN[0]!;
    const clinic = { name: 'Harbour clinic', phone: '555 0100' };
    expect(pageOf(record, -1, { clinic }).clinic).toEqual(clinic);
    expect(pageOf(record, -1, { clinic: { name: '', phone: '' } }).clinic).toBeNull();
    const own = { name: 'Hill clinic', phone: '' };
    expect(pageOf(settled(record, { clinic: own }), -1, { clinic }).clinic).toEqual(own);
  });

  it('is made of one record alone: twins do not mix, and a label is never said', () => {
    const twins = CHILDREN.slice(0, 3).map(([, record], index) =>
      settled(record, { calledName: `Twin${'ABC'[index]}`, pronoun: 'she', language: 'en' }),
    );
    for (const [index, record] of twins.entries()) {
      const said = textOf(pageOf(record));
      expect(said).toContain(`Twin${'ABC'[index]}`);
      for (const [other, twin] of twins.entries()) {
        if (other !== index) expect(said).not.toContain(`Twin${'ABC'[other]}`);
        expect(said).not.toContain(twin.child.label);
      }
      expect(textOf(pageOf(record))).toBe(said); // after the others were made, too
    }
  });

  it('changes nothing of the record it is made from', () => {
    fc.assert(
      fc.property(records, (record) => {
        const before = JSON.stringify(record);
        pagesOf(record);
        expect(JSON.stringify(record)).toBe(before);
      }),
      { numRuns: 20 },
    );
  });
});

describe('dates', () => {
  const MONTH = '\\p{L}+';
  const DATE = {
    en: new RegExp(`\\d{1,2} ${MONTH} \\d{4}`, 'gu'),
    es: new RegExp(`\\d{1,2} de ${MONTH} de \\d{4}`, 'gu'),
  };
  const written = (date: CivilDate, tag: string): string =>
    new Intl.DateTimeFormat(tag, {
      day: 'numeric',
      month: 'long',
      year: 'numeric',
      timeZone: 'UTC',
    }).format(new Date(`${date}T00:00:00Z`));

  /** Every date judgement awaits for a child on a day, and every date of the record. */
  function known(record: Case, on: CivilDate): Set<CivilDate> {
    const { birth } = record.child;
    const dates = new Set<CivilDate>([birth.born, birth.due, ...record.visits.map((v) => v.on)]);
    if (record.sheet) dates.add(record.sheet.on);
    const next = nextVisit(new CaseJudge(record, options), options);
    if (next) dates.add(next.by);
    for (const { most, every } of openQuestions(record, on, options))
      for (const date of [most, every]) if (date) dates.add(date);
    const { lines, rest } = planFor(record, on, options);
    for (const { why } of [...lines, ...rest])
      for (const one of why) if ('date' in one && one.date) dates.add(one.date);
    for (const compiled of options.sheet.values()) {
      const { day } = changeBy(compiled, 'to-integrate');
      if (day !== null) dates.add(dateAtAxisDay(birth, day));
    }
    return dates;
  }

  it('on a page are those of the record and those that judgement awaits, and no other', () => {
    fc.assert(
      fc.property(records, fc.constantFrom(...LANGUAGES), (record, language) => {
        for (const page of pagesOf(record, { language })) {
          const visit = record.visits.find((one) => one.id === page.visit);
          const on = (visit ?? record.visits.at(-1)!).on;
          const dates = new Set([...known(record, on)].map((date) => written(date, page.tag)));
          const said = textOf(page).match(DATE[language]) ?? [];
          expect(said.length).toBeGreaterThan(0);
          for (const date of said) expect(dates).toContain(date);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('that are awaited stand beside what is told and not to be discussed', () => {
    let seen = 0;
    for (const [, record] of CHILDREN)
      for (const page of pagesOf(record)) {
        const visit = record.visits.find((one) => one.id === page.visit) ?? record.visits.at(-1);
        if (!visit) continue;
        for (const { every, reflex, side } of openQuestions(record, visit.on, options)) {
          const item = itemsOf(page).find((one) => one.reflex.id === reflex);
          const isTold = visit.findings.some(
            (f) => f.reflex === reflex && f.side === side && isAnswer(f),
          );
          if (!item || !isTold || !every || item.attention === 'discuss') continue;
          // what examiners differ on awaits their answer first
          if (item.saw.some(({ key }) => key.endsWith('.other'))) continue;
          if (every < addDays(visit.on, 14) || every <= record.visits.at(-1)!.on) continue;
          seen += 1;
          expect(item.next.map(({ text }) => text).join(' ')).toContain(written(every, page.tag));
        }
      }
    expect(seen).toBeGreaterThan(10);
  });
});

describe('ages counted two ways', () => {
  // the sources are named in yardsticks: ages of infants born early, as printed
  test.each([
    ['UK primary-care reference (CA2, read)', '35w0d', 8 * 7, '1 month and 3 weeks', '3 weeks'],
    ['US multiples charity (CA5, read)', '32w0d', 12 * 7, '2 months and 3 weeks', '4 weeks'],
    ['parent feeding page (CA7, read)', '32w0d', 70, '2 months and 1 week', '2 weeks'],
    ['medical dictionary (CA8, read)', '36w0d', 29, '4 weeks and 1 day', '1 day'],
  ])('%s', (_, gestation, days, birthAge, dueAge) => {
    const born = parseCivil('2026-03-04')!;
    const record = childCase({ born, gestation }, [
      { on: addDays(born, days), findings: [['moro', 'left', 'elicited']] },
    ]);
    const said = textOf(pageOf(record));
    expect(said).toContain(`Counted from birth, your baby was ${birthAge} old`);
    expect(said).toContain(`Counted from the due date, your baby would be ${dueAge} old.`);
  });

  test('Quebec charity (CA4, read): 32 weeks, born on 1 January, is 4 months on 1 July', () => {
    const record = childCase({ born: '2026-01-01', gestation: '32w0d' }, [
      { on: '2026-07-01', findings: [['moro', 'left', 'elicited']] },
    ]);
    const said = textOf(pageOf(record));
    expect(said).toContain('Counted from birth, your baby was 6 months old');
    expect(said).toContain('Counted from the due date, your baby would be 4 months old.');
  });

  test('only where the child was born early', () => {
    const keys = (gestation: string) =>
      keysOf(
        pageOf(
          childCase({ born: '2026-01-01', gestation }, [
            { on: '2026-07-01', findings: [['moro', 'left', 'elicited']] },
          ]),
        ),
      ).filter((key) => key.startsWith('who.'));
    expect(keys('36w6d')).toEqual(
      expect.arrayContaining(['who.age-birth', 'who.age-due', 'who.why']),
    );
    expect(keys('37w0d')).toEqual(['who.born', 'who.seen', 'who.age']);
  });
});

describe('the chart', () => {
  it.each(CHILDREN)('of %s lies within its axis and has a word at each tick', (_, record) => {
    for (const { chart, language } of pagesOf(record)) {
      const { from, to, ticks, today } = chart;
      const days = ticks.map(({ axisDay }) => axisDay);
      expect(days).toEqual(days.toSorted((a, b) => a - b));
      for (const day of [...days, today.axisDay]) {
        expect(day).toBeGreaterThanOrEqual(from);
        expect(day).toBeLessThanOrEqual(to);
      }
      const words = FAMILY_WORDS[language].chart;
      expect(ticks.map((tick) => tick.words)).toContain(
        record.child.birth.gestationalDays < 37 * 7 ? words.due : words.birth,
      );
      for (const { marks } of chart.bands)
        for (const { axisDay } of marks) {
          expect(axisDay).toBeGreaterThanOrEqual(from);
          expect(axisDay).toBeLessThanOrEqual(today.axisDay);
        }
    }
  });
});
