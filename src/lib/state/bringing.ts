/** What the page of keeping does: bring back out of the bin, take from a backup, decide a clash. */
import { OWN_PREFIX } from '../atlas/ownId.ts';
import { rawOf } from '../case/file.ts';
import { withMine, type Point } from '../case/merge.ts';
import { parseRaw } from '../case/parse.ts';
import type { Backup, BackupProblem } from '../store/backupFile.ts';
import { filePieces } from './apart/fileWays.ts';
import { reading } from './apart/reading.svelte.ts';
import type { BinnedIs } from '../words/en/keeping.ts';
import { aside, desk, library, settings, talks } from './app.svelte.ts';
import type { Binned, Clashed } from './aside.svelte.ts';
import { believed } from './believed.ts';
import { newId } from './ids.ts';
import { withFindingBack } from './findingParts.ts';
import { mappings } from './mappingsKept.ts';
import { QUESTIONS, SETTINGS, SHEETS } from './names.ts';
import {
  readDecisionPart,
  readFindingPart,
  readVisitPart,
  withDecisionBack,
  withVisitBack,
} from './parts.ts';
import { readStepPart, withStepBack } from './stepParts.ts';
import {
  Laying,
  takeInto,
  takenOf,
  type Preview,
  type PreviewLine,
  type SmallPlace,
  type Take,
} from './preview.ts';
import { bringAnswersBack, progress } from './quizKept.ts';

const small: Record<string, SmallPlace> = {
  [SETTINGS]: settings.kept,
  [QUESTIONS]: progress.kept,
  [SHEETS]: mappings,
};

/** A backup laid beside all that is here, or why it was not read. `left`: it was given up. */
export type Laid =
  | { is: 'laid'; at: string; preview: Preview }
  | { is: 'refused'; problem: BackupProblem }
  | { is: 'left' | 'broke' };

/** Reads a backup apart from the page, and lays each of its entries beside what is here as it comes. */
export async function layBeside(file: File): Promise<Laid> {
  const laying = new Laying({
    texts: { cases: desk.backed.look(), own: library.backed.look(), talks: talks.backed.look() },
    small,
  });
  let laid: Laid = { is: 'broke' };
  let beside: Backup['small'] = {};
  const end = await reading.through(
    file.name,
    (signal) => filePieces({ as: 'backup', file, size: file.size, atlas: library.known }, signal),
    (piece) => {
      if (piece.is === 'refused' && piece.by === 'backup')
        laid = { is: 'refused', problem: piece.problem };
      else if (piece.is === 'entries') laying.add(piece.entries, piece.unread);
      else if (piece.is === 'backup') {
        laid = { is: 'laid', at: piece.at, preview: laying.preview };
        beside = piece.small;
      }
    },
  );
  if (end !== 'whole') return { is: end };
  laying.addSmall(beside);
  return laid;
}

const written = (): Promise<unknown> => Promise.all([desk.written, library.written, talks.written]);

/** Takes what was chosen of a backup; answers, once it is written, with how many entries that was. */
export async function takeFrom(
  { lines }: Preview,
  take: (line: PreviewLine) => Take,
): Promise<number> {
  const taken = takenOf(lines, take, (table) =>
    table === 'cases' ? newId() : table === 'own' ? `${OWN_PREFIX}${newId()}` : `talk-${newId()}`,
  );
  // what the backup goes over can be had back when undo no longer reaches it
  const tables = { cases: desk.backed, own: library.backed, talks: talks.backed };
  const over = lines.flatMap((line) => {
    const { table, id } = line.entry;
    if (table === 'small' || line.compared !== 'changed' || take(line) !== 'theirs') return [];
    const text = tables[table].look().get(id);
    return text ? [{ table, id, text }] : [];
  });
  await aside.putAll(over);
  const count = await takeInto({ library, desk, talks, small }, taken);
  await written();
  return count;
}

const childOf = (id: string) => desk.shelf.find((kept) => kept.id === id);
const labelOf = (id: string): string | undefined => childOf(id)?.record.child.label;

/** Undefined where it cannot be read. */
export function binnedIs({ table, id, text }: Binned): BinnedIs | undefined {
  switch (table) {
    case 'visits': {
      const part = readVisitPart(text);
      return (
        part && { kind: table, on: part.visit.on, examiner: part.visit.examiner, of: labelOf(id) }
      );
    }
    case 'findings': {
      const part = readFindingPart(text);
      if (!part) return undefined;
      const { on, examiner, finding } = part;
      const { side, response } = finding;
      const reflex = library.known.reflexes.get(finding.reflex)?.name ?? finding.reflex;
      return { kind: table, reflex, side, response, on, examiner, of: labelOf(id) };
    }
    case 'decisions': {
      const part = readDecisionPart(text);
      return part && { kind: table, on: part.on, text: part.text, of: labelOf(id) };
    }
    case 'steps': {
      const part = readStepPart(text);
      return part && { kind: table, caption: part.step.caption, of: part.title };
    }
    case 'answers':
      return progress.kept.understood(text) === undefined ? undefined : { kind: table };
    default: {
      const entry = believed({ table, id, text }, library.known);
      return entry && { kind: table, name: entry.name };
    }
  }
}

/** `gone`: what it was taken out of is not here. `again`: another stands in its place by now. `refused`: it does not go in as things stand. */
export type Brought = 'done' | 'gone' | 'again' | 'refused';

/** Brings something back out of the bin, as one change. */
export async function bringBack(item: Binned): Promise<Brought> {
  const brought = await putBack(item);
  if (brought !== 'done') return brought;
  await written();
  // a whole entry takes its row along; a part put back in another session does not know its own
  if (aside.bin.some(({ row }) => row === item.row)) await aside.forGood([item.row]);
  return 'done';
}

async function putBack(item: Binned): Promise<Brought> {
  const { table, id, text } = item;
  const child = childOf(id);
  const known = library.known;
  switch (table) {
    case 'visits':
    case 'decisions': {
      if (!child) return 'gone';
      const visit = table === 'visits' ? readVisitPart(text) : undefined;
      const decision = table === 'decisions' ? readDecisionPart(text) : undefined;
      const record =
        (visit && withVisitBack(child.record, visit, known)) ??
        (decision && withDecisionBack(child.record, decision, known));
      return record && desk.takeIn([{ id, record }], 'brought-back') ? 'done' : 'refused';
    }
    case 'findings': {
      if (!child) return 'gone';
      const part = readFindingPart(text);
      const record = part ? withFindingBack(child.record, part, known) : 'refused';
      if (typeof record === 'string') return record;
      return desk.takeIn([{ id, record }], 'brought-back') ? 'done' : 'refused';
    }
    case 'steps': {
      const talk = talks.get(id);
      const part = readStepPart(text);
      if (!talk) return 'gone';
      if (!part) return 'refused';
      talks.takeIn([{ id, talk: withStepBack(talk, part) }]);
      return 'done';
    }
    case 'answers':
      bringAnswersBack(item);
      return 'done';
    default: {
      const entry = believed({ table, id, text }, known);
      if (entry?.table === 'cases') desk.takeIn([{ id, record: entry.value }], 'brought-back');
      else if (entry?.table === 'own') await library.takeIn([entry.value]);
      else if (entry?.table === 'talks') talks.takeIn([entry.value]);
      return entry ? 'done' : 'refused';
    }
  }
}

/** Settles a clash with the points on which the second saved is right; false where that cannot be. */
export async function decide(clash: Clashed, mine: readonly Point[]): Promise<boolean> {
  const kept = desk.shelf.find(({ id }) => id === clash.child);
  if (kept && mine.length > 0) {
    const parsed = parseRaw(withMine(rawOf(kept.record), mine), library.known);
    if (!parsed.ok) return false;
    desk.takeIn([{ id: kept.id, record: parsed.value }], 'clash-decided');
    await desk.written; // the choice is kept before the question goes
  }
  await aside.decided(clash.row);
  return true;
}
