/** What the page of keeping does: bring back out of the bin, take from a backup, decide a clash. */
import { OWN_PREFIX } from '../atlas/ownId.ts';
import type { Case } from '../case/case.ts';
import { rawOf } from '../case/raw.ts';
import { withMine } from '../case/decided.ts';
import type { Point } from '../case/merge.ts';
import { parseRaw } from '../case/parse.ts';
import type { Backup, BackupProblem } from '../store/backupFile.ts';
import { ANY, type Change } from '../store/rows.ts';
import { filePieces } from '../exchange/worker/fileWays.ts';
import { reading } from '../exchange/worker/reading.svelte.ts';
import type { BinnedIs } from '../words/en/keeping.ts';
import { aside, desk, library, settings, talks } from './app.svelte.ts';
import type { Binned, Clashed } from '../repository/trash.svelte.ts';
import { believed } from '../backup/parseStored.ts';
import { newId, newPartId } from '../platform/ids.ts';
import { withFindingBack } from '../repository/findingParts.ts';
import { mappings } from './keptMappings.ts';
import { QUESTIONS, SETTINGS, SHEETS } from '../platform/storageKeys.ts';
import {
  readDecisionPart,
  readFindingPart,
  readVisitPart,
  withDecisionBack,
  withVisitBack,
} from '../repository/parts.ts';
import { readStepPart, withStepBack } from '../repository/stepParts.ts';
import {
  Laying,
  takeInto,
  takenOf,
  type Here,
  type Preview,
  type PreviewLine,
  type SmallPlace,
  type Take,
} from '../backup/preview.ts';
import { bringAnswersBack, progress } from './keptAnswers.ts';

const small: Record<string, SmallPlace> = {
  [SETTINGS]: settings.kept,
  [QUESTIONS]: progress.kept,
  [SHEETS]: mappings,
};

const textsHere = (): Here['texts'] => ({
  cases: desk.backed.look(),
  own: library.backed.look(),
  talks: talks.backed.look(),
});

/** A backup laid beside all that is here, or why it was not read. `left`: it was given up. */
export type Laid =
  | { is: 'laid'; at: string; preview: Preview }
  | { is: 'refused'; problem: BackupProblem }
  | { is: 'left' | 'broke' };

/** Reads a backup apart from the page, and lays each of its entries beside what is here as it comes. */
export async function layBeside(file: File): Promise<Laid> {
  const laying = new Laying({
    texts: textsHere(),
    small,
  });
  await library.ready(); // what is laid here is taken at one stroke
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

/**
 * Takes what was chosen of a backup, at once, so that who leaves the page has all of it or nothing;
 * answers, once it is written, with how many entries that was.
 */
export async function takeFrom(
  { lines }: Preview,
  take: (line: PreviewLine) => Take,
): Promise<number> {
  const taken = takenOf(
    lines,
    take,
    (table) =>
      table === 'cases' ? newId() : table === 'own' ? `${OWN_PREFIX}${newId()}` : `talk-${newId()}`,
    // what the backup goes over can be had back when undo no longer reaches it
    textsHere(),
  );
  const count = takeInto({ library, desk, talks, small }, taken);
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

/** Brings something back out of the bin, as one change: its row goes with the same write. */
export async function bringBack(item: Binned): Promise<Brought> {
  await library.ready();
  const brought = putBack(item);
  if (brought !== 'done') return brought;
  await written();
  await aside.look();
  return 'done';
}

function putBack(item: Binned): Brought {
  const { table, id, text } = item;
  const child = childOf(id);
  const known = library.known;
  const taken: readonly Change[] = [{ table: 'bin', id: item.row, base: ANY, text: undefined }];
  const put = (record: Case | undefined): Brought =>
    record && desk.takeIn([{ id, record }], 'brought-back', undefined, taken) ? 'done' : 'refused';
  switch (table) {
    case 'visits':
    case 'decisions': {
      if (!child) return 'gone';
      const visit = table === 'visits' ? readVisitPart(text) : undefined;
      const decision = table === 'decisions' ? readDecisionPart(text) : undefined;
      return put(
        (visit && withVisitBack(child.record, visit, known)) ??
          (decision && withDecisionBack(child.record, decision, known)),
      );
    }
    case 'findings': {
      if (!child) return 'gone';
      const part = readFindingPart(text);
      const record = part ? withFindingBack(child.record, part, known) : 'refused';
      return typeof record === 'string' ? record : put(record);
    }
    case 'steps': {
      const talk = talks.get(id);
      const part = readStepPart(text);
      if (!talk) return 'gone';
      if (!part) return 'refused';
      const entry = { id, talk: withStepBack(talk, part) };
      return talks.takeIn([entry], undefined, taken) ? 'done' : 'refused';
    }
    case 'answers':
      bringAnswersBack(item);
      return 'done';
    default: {
      const entry = believed({ table, id, text }, known);
      if (entry?.table === 'cases') return put(entry.value);
      const isTaken =
        entry?.table === 'own'
          ? library.takeIn([entry.value], undefined, taken)
          : entry && talks.takeIn([entry.value], undefined, taken);
      return isTaken ? 'done' : 'refused';
    }
  }
}

/** Settles a clash with the points on which the second saved is right; false where that cannot be. */
export async function decide(clash: Clashed, mine: readonly Point[]): Promise<boolean> {
  const kept = desk.shelf.find(({ id }) => id === clash.child);
  if (kept && mine.length > 0) {
    const parsed = parseRaw(withMine(rawOf(kept.record), mine, newPartId), library.known);
    if (!parsed.ok) return false;
    // the question goes with the write that keeps the choice
    const decided: Change = { table: 'clashes', id: clash.row, base: ANY, text: undefined };
    const children = [{ id: kept.id, record: parsed.value }];
    if (!desk.takeIn(children, 'clash-decided', undefined, [decided])) return false;
    await desk.written;
    await aside.look();
    return true;
  }
  await aside.decided(clash.row);
  return true;
}
