/** Which variant was tested: said while recording, undone, and named wherever its finding is told. */
import { describe, expect, it } from 'vitest';
import type { CivilDate } from '../../src/lib/age/civil.ts';
import { agesOn } from '../../src/lib/age/clocks.ts';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import { coursesOf } from '../../src/lib/case/course.ts';
import { chartData } from '../../src/lib/chart/data.ts';
import { readLane } from '../../src/lib/chart/layout.ts';
import { judgeCase, sheetOf } from '../../src/lib/judge/judge.ts';
import { gridOf } from '../../src/lib/present/course.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { entriesOf } from '../../src/lib/present/verdictEntries.ts';
import { groundOf } from '../../src/lib/present/ground.ts';
import { findingRows } from '../../src/lib/present/findingRows.ts';
import { reportOf, reportText } from '../../src/lib/present/report.ts';
import {
  blankVisit,
  variantIn,
  withResponse,
  withVariant,
} from '../../src/lib/drafts/visitEdits.ts';
import { VisitEntry } from '../../src/lib/repository/visitEntry.svelte.ts';
import { en } from '../../src/lib/words/en.ts';
import { childCase, type ShortFinding } from '../support/kestrel.ts';

const REFLEX = 'protective-forward';
const both = (response: ShortFinding[2], variant?: string): ShortFinding[] =>
  ['left', 'right'].map((side) => [REFLEX, side, response, 'quiet-alert', undefined, variant]);

describe('while recording', () => {
  const blank = blankVisit('2026-06-08');
  const left = withResponse(blank, REFLEX, ['left'], 'elicited', 'quiet-alert', 'propping');

  it('is written with the first response, and the other side takes it', () => {
    expect(left.findings[0]).toMatchObject({ side: 'left', variant: 'propping' });
    const two = withResponse(left, REFLEX, ['right'], 'weak', 'quiet-alert');
    expect(two.findings.map(({ variant }) => variant)).toEqual(['propping', 'propping']);
  });

  it('is changed and taken back for all sides, of that reflex alone', () => {
    const two = withResponse(left, REFLEX, ['right'], 'weak', 'quiet-alert');
    const more = withResponse(two, 'moro', ['left'], 'weak', 'quiet-alert');
    const other = withVariant(more, REFLEX, 'forward');
    expect(other.findings.map(({ variant }) => variant)).toEqual(['forward', 'forward', undefined]);
    expect(variantIn(other, REFLEX)).toBe('forward');
    const none = withVariant(other, REFLEX, undefined);
    for (const finding of none.findings) expect(finding).not.toHaveProperty('variant');
  });

  it('stays when the response is changed', () => {
    const changed = withResponse(left, REFLEX, ['left'], 'brisk', 'quiet-alert');
    expect(changed.findings[0]).toMatchObject({ response: 'brisk', variant: 'propping' });
  });

  it('is one step of undo', () => {
    const desk = new Desk(ATLAS, [{ id: 'kestrel', record: demoCase(ATLAS) }], undefined);
    const entry = new VisitEntry(
      desk,
      () => desk.open!.record.visits[2]!.id,
      '2026-06-08' as CivilDate,
    );
    const said = () =>
      desk
        .open!.record.visits[2]!.findings.filter(({ reflex }) => reflex === REFLEX)
        .map(({ variant }) => variant);
    entry.write(withVariant(entry.visit!, REFLEX, 'forward'));
    expect(said()).toEqual(['forward', 'forward']);
    desk.undo();
    expect(said()).toEqual([undefined, undefined]);
  });
});

describe('where a finding is told', () => {
  const record = childCase({ born: '2026-01-01', gestation: '40w0d' }, [
    { on: '2026-09-01', findings: both('elicited', 'propping') },
    { on: '2026-12-01', findings: both('not-elicited', 'forward') },
  ]);
  const sheet = sheetOf(ATLAS, 'default');
  const visits = judgeCase(record, { atlas: ATLAS, sheet });
  const courses = coursesOf(record.visits, (on) => agesOn(record.child.birth, on));

  it('the list of verdicts names the variant, and rests on no source of the other', () => {
    const [entry] = entriesOf([visits[1]!], visits.slice(0, 1));
    expect(entry!.reflex.short).toBe('Protective, forward: parachute');
    const { speaking, silent, context } = groundOf(entry!.lead, ATLAS);
    const claims = [...speaking, ...silent].map(({ claim }) => claim);
    expect(claims.length).toBeGreaterThan(0);
    for (const { variant } of [...claims, ...context])
      expect([undefined, 'forward']).toContain(variant);
    expect(en.judge.testsSentences(entry!.lead)).toEqual([]);
  });

  it('the course has a row for each variant', () => {
    expect(gridOf(visits, courses, ATLAS).map(({ id, reflex }) => [id, reflex!.short])).toEqual([
      [`${REFLEX}/propping`, 'Protective, forward: propping'],
      [`${REFLEX}/forward`, 'Protective, forward: parachute'],
    ]);
  });

  it('the table of findings has it in a column', () => {
    expect(findingRows([{ record, visits }]).map(({ variant }) => variant)).toEqual([
      'propping',
      'propping',
      'forward',
      'forward',
    ]);
  });

  it('the report names it', () => {
    const text = reportText(
      reportOf({
        record,
        visits,
        shown: visits[1]!,
        options: { atlas: ATLAS, sheet },
        withNames: true,
      }),
    );
    expect(text).toContain('Protective, forward: parachute');
    expect(text).not.toContain('Two tests are read together');
  });

  it('the chart’s lane says what was tested on which day, and its table at each visit', () => {
    const { lanes, child } = chartData(
      ATLAS,
      sheet,
      { reflexes: [REFLEX] },
      { birth: record.child.birth, visits, courses, sequences: [] },
    );
    const words = en.chart.chartWords(ATLAS);
    const reading = readLane(lanes[0]!, child!.visits[1]!.day, false, child);
    expect(words.lane(reading)).toMatch(/tested: propping 1 Sep, parachute 1 Dec$/);
    expect(words.readout(reading).lines[0]).toMatch(/^Judged as what was tested: propping/);
    expect(child!.marks.map(({ variant }) => variant)).toEqual([
      'propping',
      'propping',
      'parachute',
      'parachute',
    ]);
    expect(words.lane(readLane(lanes[0]!, child!.visits[1]!.day))).not.toContain('tested');
  });
});
