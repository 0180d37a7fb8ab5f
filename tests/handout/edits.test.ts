/** The clinician's own words: they survive, stay with their page and language, and say when they are stale. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { ATLAS } from '../../src/lib/atlas/atlas.ts';
import type { Case } from '../../src/lib/case/case.ts';
import { LANGUAGES, NO_FAMILY, rawFamily, type Family } from '../../src/lib/case/family.ts';
import { parseCaseText } from '../../src/lib/case/file.ts';
import { caseText, rawOf } from '../../src/lib/case/raw.ts';
import { parseRaw } from '../../src/lib/case/parse.ts';
import { sentencesOf } from '../../src/lib/handout/page.ts';
import { withChosen, withEdit, withoutOrphans } from '../../src/lib/handout/settle.ts';
import { withoutVisit, withVisit } from '../../src/lib/repository/edits.ts';
import { CHILDREN, pageOf, records, textOf } from './pages.ts';

const [, TERN] = CHILDREN[0]!;

/** A record with what was settled, through the door that every record passes. */
function through(record: Case, family: Family): Case {
  const parsed = parseRaw({ ...rawOf(record), family: rawFamily(family) }, ATLAS);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.value;
}

const plain = fc
  .string({
    minLength: 1,
    maxLength: 60,
    unit: fc.constantFrom('a', 'b', ' ', 'Ä', 'ñ', 'é', '.', ',', '?', '<b>', '</b>', '<', '&'),
  })
  .filter((text) => text.trim() !== '');

describe('an edit', () => {
  it('of any sentence of any page survives the file and is shown as theirs', () => {
    fc.assert(
      fc.property(
        records,
        fc.constantFrom(...LANGUAGES),
        fc.nat(),
        fc.nat(),
        plain,
        (record, language, where, which, text) => {
          const at = where % (record.visits.length + 1) || null;
          const place = at === null ? null : at - 1;
          const page = pageOf(record, place, { language });
          const said = sentencesOf(page);
          const sentence = said[which % said.length]!;
          fc.pre(text.trim() !== sentence.ours);
          const edited = through(record, withEdit(record.family, page, sentence, text));
          const read = parseCaseText(caseText(edited), ATLAS);
          if (!read.ok) throw new Error(JSON.stringify(read.problems));
          const again = sentencesOf(pageOf(read.value, place, { language }));
          expect(again.find(({ key }) => key === sentence.key)).toEqual({
            ...sentence,
            text: text.trim(),
            theirs: true,
          });
          const other = LANGUAGES.find((one) => one !== language)!;
          for (const one of sentencesOf(pageOf(read.value, place, { language: other })))
            expect(one.theirs).toBe(false);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('stays with its page: another visit says its own', () => {
    const page = pageOf(TERN, 0);
    const [sentence] = page.sections.find(({ id }) => id === 'today')!.sentences;
    const edited = through(TERN, withEdit(null, page, sentence!, 'All is well with me.'));
    expect(textOf(pageOf(edited, 0))).toContain('All is well with me.');
    for (const at of [1, -1, null])
      expect(textOf(pageOf(edited, at))).not.toContain('All is well with me.');
  });

  it('is told of on the other pages, where it does not stand', () => {
    const page = pageOf(TERN);
    const sentence = sentencesOf(page).find(({ key }) => key === 'help.pace')!;
    const record = { ...TERN, family: withEdit(null, page, sentence, 'Ring Rowan on Mondays.') };
    const here = { visit: page.visit, language: page.language, count: 1 };
    expect(pageOf(record).elsewhere).toEqual([]);
    expect(pageOf(record, null).elsewhere).toEqual([here]);
    expect(pageOf(record, -1, { language: 'es' }).elsewhere).toEqual([here]);
  });

  it('says when what stood beneath it has changed', () => {
    const page = pageOf(TERN);
    const born = sentencesOf(page).find(({ key }) => key === 'who.born')!;
    const edited = through(TERN, withEdit(null, page, born, 'Born on a Monday.'));
    const find = (record: Case) =>
      sentencesOf(pageOf(record)).find(({ key }) => key === 'who.born')!;
    expect(find(edited)).toMatchObject({ theirs: true, changedBeneath: false });
    const renamed = through(edited, { ...edited.family!, calledName: 'Wren' });
    expect(find(renamed)).toMatchObject({
      text: 'Born on a Monday.',
      changedBeneath: true,
      ours: expect.stringContaining('Wren') as string,
    });
  });

  it('is taken away by an empty text, or by the page’s own', () => {
    const page = pageOf(TERN);
    const sentence = sentencesOf(page)[3]!;
    const edited = withEdit(null, page, sentence, 'Other words.');
    expect(edited.pages).toHaveLength(1);
    expect(withEdit(edited, page, sentence, '  ').pages).toEqual([]);
    expect(withEdit(edited, page, sentence, sentence.ours).pages).toEqual([]);
  });

  it('of a sentence that no longer stands is listed, not lost', () => {
    const page = pageOf(TERN);
    const told = page.sections.flatMap(({ items }) => items)[0]!;
    const edited = withEdit(null, page, told.did, 'We held the baby.');
    const without = page.candidates.find(({ reflex }) => reflex !== told.reflex)!.reflex.id;
    const record = through(TERN, withChosen(edited, page.visit, [without]));
    expect(pageOf(record).unused.map(({ key }) => key)).toEqual([told.did.key]);
    expect(pageOf(through(TERN, edited)).unused).toEqual([]);
  });

  test('of a name is heard wherever the name stands', () => {
    const page = pageOf(TERN);
    const told = page.sections.flatMap(({ items }) => items)[0]!;
    const record = through(TERN, withEdit(null, page, told.name, 'the big hug'));
    const band = pageOf(record).chart.bands.find(({ reflex }) => reflex === told.reflex);
    expect(band?.name).toBe('the big hug');
  });
});

describe('what was settled for a visit', () => {
  const page = pageOf(TERN, 0);
  const record = through(TERN, withChosen(null, page.visit, ['moro']));

  it('goes with the visit to another date or examiner', () => {
    const visit = rawOf(record).visits[0]!;
    const moved = parseRaw(withVisit(record, { ...visit, examiner: 'Alder ' }), ATLAS);
    if (!moved.ok) throw new Error(JSON.stringify(moved.problems));
    expect(moved.value.family?.pages.map((one) => one.visit)).toEqual([moved.value.visits[0]!.id]);
    expect(pageOf(moved.value, 0).isChosen).toBe(true);
  });

  it('goes away with the visit', () => {
    expect(withoutVisit(record, record.visits[0]!.id).family?.pages).toEqual([]);
    expect(withoutVisit(record, record.visits[1]!.id).family?.pages).toHaveLength(1);
  });

  it('is known as left over where the visit is gone by another way', () => {
    const orphan = through(TERN, withChosen(null, '2001-01-01 Nobody', ['moro']));
    const { orphans } = pageOf(orphan);
    expect(orphans).toHaveLength(1);
    expect(withoutOrphans(orphan.family!, orphans).pages).toEqual([]);
    expect(pageOf(record).orphans).toEqual([]);
  });
});

test('nothing is changed in place', () => {
  const family: Family = { ...NO_FAMILY };
  const page = pageOf(TERN);
  withEdit(family, page, sentencesOf(page)[0]!, 'Other words.');
  withChosen(family, page.visit, ['moro']);
  expect(family).toEqual(NO_FAMILY);
});
