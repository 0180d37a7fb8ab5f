/** What surrounds the visits, read from a file and written to it; an empty part is left out of a file. */
import type { Decision, FollowUp, VisitSheet } from './case.ts';
import { rawFamily, readFamily } from './family.ts';
import { Reader } from './reader.ts';
import { MAX_DECISIONS, MAX_FINDINGS, MAX_NOTE, MAX_TAGS, type RawCase } from './shape.ts';

export const NO_FOLLOW_UP: FollowUp = {
  tags: [],
  archived: false,
  question: '',
  decisions: [],
  agreed: [],
  sheet: null,
  family: null,
};

/** Tags as words: each once, in the order they were given. */
function readTags(tags: readonly string[], read: Reader): string[] {
  if (tags.length > MAX_TAGS) read.refuse({ field: 'tags' }, { code: 'too-many', limit: MAX_TAGS });
  const words = tags.slice(0, MAX_TAGS).map((tag) => read.line(tag, { field: 'tags' }));
  return [...new Set(words.filter((word) => word !== ''))];
}

function readDecisions(raws: NonNullable<RawCase['decisions']>, read: Reader): Decision[] {
  if (raws.length > MAX_DECISIONS)
    read.refuse({ field: 'decisions' }, { code: 'too-many', limit: MAX_DECISIONS });
  return raws.slice(0, MAX_DECISIONS).flatMap((raw): Decision[] => {
    const id = read.id(raw.id, { field: 'id' });
    const on = read.date(raw.on, { field: 'decided' });
    const by = raw.by.trim() === '' ? null : read.date(raw.by, { field: 'by' });
    const text = read.text(raw.text.trim(), { field: 'decision' }, MAX_NOTE);
    if (!text) read.refuse({ field: 'decision' }, { code: 'empty' });
    const who = read.line(raw.who, { field: 'who' });
    return on && by !== undefined ? [{ id, on, text, who, by, done: raw.done }] : [];
  });
}

function readSheet(raw: NonNullable<RawCase['sheet']>, read: Reader): VisitSheet | null {
  const on = read.date(raw.on, { field: 'sheet' });
  if (raw.reflexes.length > MAX_FINDINGS)
    read.refuse({ field: 'sheet' }, { code: 'too-many', limit: MAX_FINDINGS });
  const ids = raw.reflexes.slice(0, MAX_FINDINGS);
  return on
    ? { on, reflexes: [...new Set(ids.map((id) => read.line(id, { field: 'sheet' })))] }
    : null;
}

/** All that surrounds the visits but the agreed answers, which are read as findings are. */
export const readFollowUp = (raw: RawCase, read: Reader): Omit<FollowUp, 'agreed'> => ({
  tags: readTags(raw.tags ?? [], read),
  archived: raw.archived ?? false,
  question: read.text(raw.question ?? '', { field: 'question' }, MAX_NOTE),
  decisions: readDecisions(raw.decisions ?? [], read),
  sheet: raw.sheet ? readSheet(raw.sheet, read) : null,
  family: readFamily(raw.family, read),
});

/** The parts of a follow-up that say something, as a file holds them. */
export const rawFollowUp = ({
  tags,
  archived,
  question,
  decisions,
  agreed,
  sheet,
  family,
}: FollowUp) => ({
  ...(tags.length > 0 ? { tags: [...tags] } : {}),
  ...(archived ? { archived } : {}),
  ...(question ? { question } : {}),
  ...(decisions.length > 0
    ? { decisions: decisions.map(({ by, ...rest }) => ({ ...rest, by: by ?? '' })) }
    : {}),
  ...(agreed.length > 0 ? { agreed: agreed.map((one) => ({ ...one })) } : {}),
  ...(sheet ? { sheet: { on: sheet.on, reflexes: [...sheet.reflexes] } } : {}),
  ...(family ? { family: rawFamily(family) } : {}),
});
