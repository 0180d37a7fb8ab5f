import { describe, expect, test } from 'vitest';
import { fromMonths, toAxisDay } from '../../src/lib/age/axis.ts';
import { parseCivil } from '../../src/lib/age/civil.ts';
import { agesOn, birthFromGestation, type Birth } from '../../src/lib/age/clocks.ts';
import { parseGestation } from '../../src/lib/age/gestation.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { chartData } from '../../src/lib/chart/data.ts';
import { readLane } from '../../src/lib/chart/layout.ts';
import { readAt } from '../../src/lib/judge/expectation.ts';
import { sheetOf } from '../../src/lib/judge/judge.ts';
import { VERDICTS } from '../../src/lib/judge/verdict.ts';
import { en } from '../../src/lib/words/en.ts';

const born = parseCivil('2026-03-04')!;
const ages = (gestation: string, on: string) =>
  agesOn(
    birthFromGestation(born, parseGestation(gestation)!, 'last-period') as Birth,
    parseCivil(on)!,
  );

describe('ages are said the way the trade says them', () => {
  test.each([
    ['33w1d', '2026-03-10', '6 wk before term'],
    ['33w1d', '2026-03-04', '6 wk 6 d before term'],
    ['33w1d', '2026-04-21', 'at term'],
    ['33w1d', '2026-05-18', '3 wk 6 d'],
    ['33w1d', '2026-06-15', '7 wk 6 d'],
    ['33w1d', '2026-08-06', '3 mo 2 wk'],
    ['33w1d', '2026-07-21', '3 mo'],
    ['41w0d', '2026-03-05', '1 wk 1 d'],
  ])('born at %s, on %s: %s', (gestation, on, words) => {
    expect(en.ages.correctedWords(ages(gestation, on))).toBe(words);
  });

  test('the age that counts, why, and the doubt', () => {
    const early = ages('33w1d', '2026-08-06');
    expect(en.ages.countedWords(early, born)).toBe('3 mo 2 wk corrected');
    expect(en.ages.whyCounts(early, 259, 24)).toMatch(
      /Born at 33w1d, before 37w0d.*corrected age counts/,
    );
    expect(en.ages.doubtWords(early.sdDays)).toMatch(/within 16 days/);
    const term = ages('39w0d', '2026-08-06');
    expect(en.ages.countedWords(term, born)).toBe('5 mo chronological');
    expect(en.ages.doubtWords(term.sdDays)).toBe('The age is exact.');
  });

  test.each([
    [224, '32w0d'],
    [280, '0 mo'],
    [280 + 4.5 * 30.4375, '4.5 mo'],
  ])('axis day %f is %s', (day, words) => {
    expect(en.ages.axisWords(toAxisDay(day))).toBe(words);
  });

  test.each([
    [175, 210, '25 to 30 wk of gestation'],
    [210, 310.4375, '30 wk of gestation to 1 mo'],
    [210, 280, '30 wk of gestation to term'],
    [340.875, 462.625, '2 to 6 mo'],
    [645.25, null, 'later than 12 mo'],
  ])('from %f to %j: %s', (from, to, words) => {
    expect(en.ages.spanWords(toAxisDay(from), to === null ? null : toAxisDay(to))).toBe(words);
  });
});

describe('sources in words', () => {
  test('are said with the voices they are, wherever they are counted', () => {
    const [few, many] = [
      { sources: 1, voices: 1 },
      { sources: 12, voices: 8 },
    ];
    expect(en.atlas.sourcesWords(many)).toBe('12 sources, 8 voices');
    expect(en.atlas.sourcesWords(few)).toBe('1 source, 1 voice');
    expect(en.atlas.sourcesOfWords({ sources: 5, voices: 4 }, many)).toBe(
      '5 of 12 sources, 4 of 8 voices',
    );
    const said = [
      en.rests.rests.silent(many),
      en.pages.settingsPage.defaultSources(many),
      en.pages.settingsPage.all(many),
      en.ui.sourceWords.all(many),
      en.talks.stage.all(many),
      en.report.report.judgedBy(many),
      en.atlasPages.findPage.counted(en.atlas.sourcesWords(many), '12 established'),
    ];
    for (const sentence of said) expect(sentence).toContain('12 sources, 8 voices');
    expect(en.ui.sourceWords.byDefaultShort(many)).toBe('12 default, 8 voices');
    expect(en.ui.sourceWords.allShort(many)).toBe('all 12, 8 voices');
    expect(en.ui.sourceWords.byDefault(many)).toBe('the 12 default sources, 8 voices');
    const held = { sources: 174, claims: 1, dating: many, judging: few, counting: 1, counts: 1 };
    expect(en.pages.sourcesPage.lead(held)).toMatch(
      /12 of them \(8 voices\).*1 of these \(1 voice\)/,
    );
  });

  test('a lane says them in its figures and at an age, as Moro by all sources does at 3 months', () => {
    const [lane] = chartData(ATLAS, sheetOf(ATLAS), { reflexes: ['moro'], sequences: [] }).lanes;
    const words = en.chart.chartWords(ATLAS);
    const claims = ATLAS.claims.get('moro')!.filter(({ role }) => role === 'window');
    const whole = {
      sources: new Set(claims.map(({ source }) => source.id)).size,
      voices: new Set(claims.map(({ family }) => family)).size,
    };
    const reading = readLane(lane!, fromMonths(3));
    expect(reading.speaking.sources).toBeLessThan(whole.sources);
    const some = en.atlas.sourcesOfWords(reading.speaking, whole);
    expect(words.lane(reading)).toContain(en.atlas.sourcesWords(whole));
    expect(words.lane(reading)).toContain(`by ${some}`);
    expect(words.readout(reading).title).toContain(`by ${some}`);
  });

  test('an answer to a question says them, a copy counted once', () => {
    const rests = {
      of: 'moro',
      says: 'established' as const,
      sources: ['allen-capute-1986', 'futagi-2012', 'bates'],
    };
    expect(en.quizWhy.restsWords(rests, ATLAS)).toContain(
      'all 3 sources that give an age, 2 voices',
    );
  });
});

describe('a response under whose name two tests go', () => {
  const forward = (chosen: ReadonlySet<string> | 'all') => {
    const compiled = sheetOf(ATLAS, chosen).get('protective-forward')!;
    const reflex = ATLAS.reflexes.get('protective-forward')!;
    return en.judge.testsSentences({ reflex, reading: readAt(compiled, 500, 0) });
  };
  test('is said to be read by both together, where the finding does not say which was done', () => {
    expect(forward('all')).toEqual([
      'Two tests are read together (parachute, propping): the finding does not say which was done.',
    ]);
    expect(forward(new Set(['jaffe-1994']))).toEqual([]);
    const reflex = ATLAS.reflexes.get('moro')!;
    const reading = readAt(sheetOf(ATLAS).get('moro')!, 300, 0);
    expect(en.judge.testsSentences({ reflex, reading })).toEqual([]);
  });
});

describe('verdicts in words', () => {
  test('every verdict has its sentence, for every agreement', () => {
    for (const verdict of VERDICTS)
      for (const of of [1, 3])
        for (const response of ['elicited', 'not-elicited'] as const) {
          const sentence = en.judge.verdictSentence(verdict, response, {
            agree: 1,
            of,
            voices: { agree: 1, of },
          });
          expect(sentence).toMatch(/^[A-Z].*\.$/);
          expect(sentence).toMatch(of === 1 ? /the one source/ : /1 of 3 sources, 1 of 3 voices/);
        }
  });

  test.each([
    [
      { kind: 'firm', fromDays: 231, toDays: null } as const,
      'All sources would agree if the child was really born at 33w0d or later.',
    ],
    [
      { kind: 'holds', fromDays: null, toDays: 231 } as const,
      'If the child was really born at 33w1d or later, this would be judged differently.',
    ],
    [
      { kind: 'holds', fromDays: 214, toDays: null } as const,
      'If the child was really born at 30w3d or earlier, this would be judged differently.',
    ],
    [
      { kind: 'firm', fromDays: 224, toDays: 231 } as const,
      'All sources would agree if the child was really born at 32w0d to 33w0d.',
    ],
    [
      { kind: 'firm', fromDays: 224, toDays: 224 } as const,
      'All sources would agree if the child was really born at 32w0d.',
    ],
  ])('%j: %s', (turning, words) => {
    expect(en.judge.turningSentence(turning)).toBe(words);
  });

  test('no verdict, caution or note claims a diagnosis', () => {
    const said = JSON.stringify([
      en.judge.verdicts,
      en.judge.attentions,
      en.judge.flags,
      en.atlas.cautions,
    ]);
    expect(said).not.toMatch(/abnormal|patholog|diagnos|disorder|palsy/i);
    expect(en.judge.CAUTION).toMatch(/not a diagnosis.*local pathways.*licensed practice/);
  });

  test('every caution and position the atlas uses has words', () => {
    for (const reflex of ATLAS.reflexes.values()) {
      expect(en.atlas.positions[reflex.position]).toBeTruthy();
      for (const caution of reflex.cautions) expect(en.atlas.cautions[caution]).toMatch(/\.$/);
    }
  });
});

describe('why a reflex is on a sheet', () => {
  const on = parseCivil('2026-06-08')!;
  const by = toAxisDay(400);
  test.each([
    [
      { code: 'closing', share: 0.5, by, date: '2026-08-14', byAll: true },
      'expected to fade: integrated by 14 August 2026 in every source',
    ],
    [
      { code: 'closing', share: 0.5, by, date: '2026-06-05', byAll: false },
      'expected to fade: integrated since 5 June 2026 in every source that dates it',
    ],
    [
      { code: 'opening', share: 0.5, by, date: null, byAll: true },
      'expected to appear: present by 3.9 mo in every source',
    ],
    [{ code: 'opening', share: 0.5, by: null, date: null, byAll: false }, 'expected to appear'],
    [
      { code: 'open-question', verdict: 'fits', flags: ['uneven'], on: '2026-05-11' },
      'asymmetric last time (11 May)',
    ],
    [
      { code: 'open-question', verdict: 'closing', flags: ['returned'], on: '2026-05-11' },
      're-emerged, expected to fade last time (11 May)',
    ],
    [
      { code: 'unread', response: 'not-elicited', state: 'crying', on: '2026-05-11' },
      'no answer last time (11 May): crying',
    ],
    [
      { code: 'unread', response: 'not-assessable', state: 'crying', on: '2026-05-11' },
      'not assessable last time (11 May)',
    ],
    [
      { code: 'settled', now: 'gone', on: '2026-05-11' },
      'integrated on 11 May, no change expected',
    ],
    [{ code: 'second-try', sides: ['left'], on: '2026-05-11' }, 'second try, left'],
    [{ code: 'second-try', sides: ['left', 'right'], on: '2026-05-11' }, 'second try'],
    [{ code: 'never-tested' }, 'not tested yet'],
  ])('%o', (why, words) => {
    expect(en.sheet.whyWords(why as never, on)).toBe(words);
  });

  test('how much it tells is a word too', () => {
    expect([1, 0.8, 0.79, 0.4, 0.39, 0].map(en.sheet.tellsWords)).toEqual([
      'highly informative',
      'highly informative',
      'informative',
      'informative',
      'little information',
      'little information',
    ]);
  });
});
