/** Sources and reflexes of one's own: read like any other, refused cell by cell, never over what is built in. */
import { describe, expect, test } from 'vitest';
import { setsApart } from '../../src/lib/atlas/apart.ts';
import { ATLAS_PARTS, buildAtlas } from '../../src/lib/atlas/atlas.ts';
import {
  readOwnReflex,
  readOwnSource,
  sourceNameProblem,
  withOwn,
  type OwnReflex,
  type OwnSource,
} from '../../src/lib/atlas/own.ts';
import { PROSE } from '../../src/lib/atlas/prose.ts';
import { reflexesAt } from '../../src/lib/judge/sequence.ts';

const known = { parts: ATLAS_PARTS, prose: PROSE };

const source = (rows: [string, string, string][], name = 'Lecture book 2020'): OwnSource => ({
  kind: 'source',
  id: 'own-book',
  name,
  tier: 'course-notes',
  on: true,
  rows: rows.map(([reflex, appears, integrates]) => ({ reflex, appears, integrates, note: '' })),
});

const fencer: OwnReflex = {
  kind: 'reflex',
  id: 'own-fencer',
  name: 'Fencer on the belly',
  group: 'tonic-postural',
  reflexKind: 'primitive-reflex',
  position: 'prone',
  stimulus: 'head-turn',
  sides: 'pair',
  limbs: {
    head: 'turned-left',
    trunk: 'none',
    armL: 'extended',
    armR: 'flexed',
    legL: 'none',
    legR: 'none',
    handL: 'none',
    handR: 'none',
    footL: 'none',
    footR: 'none',
  },
  ages: [{ source: 'Own notes', tier: 'course-notes', appears: 'birth', integrates: '5 mo' }],
  on: true,
};

const STILL: OwnReflex['limbs'] = {
  head: 'none',
  trunk: 'none',
  armL: 'none',
  armR: 'none',
  legL: 'none',
  legR: 'none',
  handL: 'none',
  handR: 'none',
  footL: 'none',
  footR: 'none',
};

describe('a source of one’s own', () => {
  test('becomes a source like any other, of the kind that was chosen', () => {
    const { data } = readOwnSource(
      source([
        ['Moro', '28 wk', '4-6 mo'],
        ['', '', ''],
        ['ATNR', 'birth', '6 mo'],
      ]),
      known,
    );
    expect(data).toMatchObject({
      id: 'own-book',
      short: 'Lecture book 2020',
      tier: 'course-notes',
    });
    expect(data?.claims.map(({ reflex }) => reflex)).toEqual(['moro', 'atnr']);
  });

  test('nothing is taken until every cell is mended; rows count as they stand, blank ones too', () => {
    const read = readOwnSource(
      source([
        ['Moro', '28 wk', '4-6 mo'],
        ['', '', ''],
        ['Galant reflex', '32 wk', '6'],
        ['Moro reflex', 'birth', '5 mo'],
      ]),
      known,
    );
    expect(read.data).toBeUndefined();
    expect(read.problems).toEqual([
      { code: 'no-unit', row: 2, column: 'integrates' },
      { code: 'twice', firstRow: 0, row: 3, column: 'reflex' },
    ]);
    // what can be read is still drawn
    expect(read.claims.map(({ reflex }) => reflex)).toEqual(['moro']);
  });

  test.each([
    ['palmar grasp refelx', 'palmar-grasp'],
    ['asymetric tonic neck', 'atnr'],
    ['paracute', 'protective-forward'],
  ])('a slip in "%s" is met with %s', (name, nearest) => {
    expect(readOwnSource(source([[name, 'birth', '4 mo']]), known).problems[0]).toMatchObject({
      code: 'unknown-reflex',
      nearest,
    });
  });

  test.each([
    ['', 'empty'],
    ['  nelson TEXTBOOK ', 'taken'],
    ['=1+1', 'formula'],
    ['<b>Book</b>', 'markup'],
    ['x'.repeat(100), 'too-long'],
  ])('the name "%s" is refused: %s', (name, code) => {
    expect(sourceNameProblem(name, 'own-book', ATLAS_PARTS.sources)?.code).toBe(code);
  });
});

describe('a reflex of one’s own', () => {
  test('joins the order its limb pattern belongs to, and its source joins the others', () => {
    const { parts, unread } = withOwn(known, [fencer]);
    const atlas = buildAtlas(parts);
    expect(unread).toEqual([]);
    expect(setsApart(atlas.reflexes.get('own-fencer')!)).toBe('arms-from-each-other');
    expect(reflexesAt({ event: 'sets-apart', apart: 'arms-from-each-other' }, atlas)).toContain(
      'own-fencer',
    );
    const [claim] = atlas.claims.get('own-fencer')!;
    expect(claim!.source).toMatchObject({ short: 'Own notes', tier: 'course-notes' });
  });

  test('a table of one’s own may date it, and its ages may come from that table’s source', () => {
    const book = source([['Fencer on the belly', 'birth', '4 mo']]);
    const again = { ...fencer, ages: [{ ...fencer.ages[0]!, source: 'lecture book 2020' }] };
    const atlas = buildAtlas(withOwn(known, [book, again]).parts);
    expect(atlas.claims.get('own-fencer')!.map((c) => c.source.id)).toEqual([
      'own-book',
      'own-book',
    ]);
  });

  test('a table that names it takes no part once it has gone, and says so', () => {
    const book = source([['Fencer on the belly', 'birth', '4 mo']]);
    const { parts, unread } = withOwn(known, [book]);
    expect(unread).toEqual(['own-book']);
    expect(parts.sources).toHaveLength(ATLAS_PARTS.sources.length);
  });

  test.each<[string, Partial<OwnReflex>, string, string]>([
    ['a name of the atlas', { name: 'moro REFLEX' }, 'name', 'taken'],
    ['a synonym of the atlas', { name: 'fencing posture' }, 'name', 'taken'],
    ['nothing that moves', { limbs: STILL }, 'limbs', 'nothing-moves'],
    ['no age', { ages: [] }, 'appears', 'nothing-stated'],
    [
      'an end before the start',
      { ages: [{ ...fencer.ages[0]!, appears: '6 mo', integrates: '2 mo' }] },
      'integrates',
      'ends-before-start',
    ],
    ['no source', { ages: [{ ...fencer.ages[0]!, source: ' ' }] }, 'source', 'empty'],
    [
      'a formula as an age',
      { ages: [{ ...fencer.ages[0]!, appears: '=A1' }] },
      'appears',
      'not-understood',
    ],
  ])('%s is refused', (_, wrong, field, code) => {
    expect(readOwnReflex({ ...fencer, ...wrong }, known).problems[0]).toMatchObject({
      field,
      code,
    });
  });

  test('nothing built in is changed by it', () => {
    const { parts } = withOwn(known, [fencer, source([['Moro', '28 wk', '4-6 mo']])]);
    for (const reflex of ATLAS_PARTS.reflexes) expect(parts.reflexes).toContain(reflex);
    expect(parts.sources.slice(0, ATLAS_PARTS.sources.length)).toEqual(ATLAS_PARTS.sources);
  });
});
