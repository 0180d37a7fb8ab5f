/** Files as jobs: which kind one is, by what is in it, and what it holds, piece by piece. No page is needed. */
import type { Atlas } from '../../atlas/atlas.ts';
import type { Case } from '../../case/case.ts';
import { parseCaseText, sizeProblem } from '../../case/file.ts';
import type { Problem } from '../../case/problem.ts';
import {
  backupTooLarge,
  readBackup,
  type Backup,
  type BackupProblem,
} from '../../store/backupFile.ts';
import type { LeftOut } from '../fhir/entry.ts';
import {
  bundleTooLarge,
  looksLikeFhir,
  openBundleText,
  type BundleChild,
  type BundleProblem,
} from '../fhir/open.ts';
import {
  looksLikeTable,
  readSheet,
  sheetTooLarge,
  textOf,
  type Sheet,
  type SheetProblem,
} from '../sheet/read.ts';
import { believed, type BelievedItem } from '../../backup/parseStored.ts';

/** A file as far as it is needed here. */
interface GivenFile {
  arrayBuffer(): Promise<ArrayBuffer>;
}

export interface FileJob {
  as: 'record' | 'backup';
  file: GivenFile;
  /** As the page was told it, bytes. */
  size: number;
  atlas: Atlas;
}

export type FilePiece =
  | { is: 'refused'; by: 'file'; problems: readonly Problem[] }
  | { is: 'refused'; by: 'bundle'; problems: readonly BundleProblem[] }
  | { is: 'refused'; by: 'sheet'; problem: SheetProblem }
  | { is: 'refused'; by: 'backup'; problem: BackupProblem }
  | { is: 'case'; record: Case }
  | { is: 'sheet'; sheet: Sheet }
  | { is: 'bundle'; leftOut: readonly LeftOut[] }
  | { is: 'children'; children: readonly BundleChild[] }
  | { is: 'backup'; at: string; small: Backup['small'] }
  | { is: 'entries'; entries: readonly BelievedItem[]; unread: readonly string[] };

type Pieces = AsyncGenerator<FilePiece, undefined>;

/** So many letters, or findings of a child as letters, are handed over at once without a halt. */
const PIECE = 400_000;
const LETTERS_A_FINDING = 100;
/** More problems than a page says. */
const MOST_PROBLEMS = 20;

/** A case file says so at its beginning, whatever stands in its notes. */
const isCase = (text: string): boolean => /"format"\s*:\s*"tidemark-/.test(text.slice(0, 200));

/** A list in parts that weigh about as much as a piece may. */
function* parted<T>(list: Iterable<T>, weight: (one: T) => number): Generator<T[], undefined> {
  let [part, sum]: [T[], number] = [[], 0];
  for (const one of list) {
    part.push(one);
    sum += weight(one);
    if (sum < PIECE) continue;
    yield part;
    [part, sum] = [[], 0];
  }
  if (part.length > 0) yield part;
}

const weightOf = ({ visits }: Case): number =>
  2000 +
  LETTERS_A_FINDING * visits.reduce((sum, { findings }) => sum + findings.length, 0) +
  visits.reduce((sum, { note }) => sum + note.length, 0);

function* readBundle(text: string, atlas: Atlas): Generator<FilePiece, undefined> {
  const opened = openBundleText(text, atlas);
  if (!opened.ok) {
    yield { is: 'refused', by: 'bundle', problems: opened.problems };
    return;
  }
  yield { is: 'bundle', leftOut: opened.leftOut };
  for (const children of parted(opened.children, ({ record }) => weightOf(record)))
    yield { is: 'children', children };
}

/** A file that may be a case, a bundle or a sheet. The size is looked at before a byte is read. */
async function* readRecord({ file, size, atlas }: FileJob): Pieces {
  const [tooLarge] = bundleTooLarge(size) ? [sizeProblem(size)] : [];
  if (tooLarge) {
    yield { is: 'refused', by: 'file', problems: [tooLarge] };
    return;
  }
  const text = textOf(new Uint8Array(await file.arrayBuffer()));
  if (looksLikeFhir(text) && !isCase(text)) return yield* readBundle(text, atlas);
  if (looksLikeTable(text)) {
    const large = sheetTooLarge(size);
    const read = large ? { ok: false as const, problem: large } : readSheet(text);
    yield read.ok
      ? { is: 'sheet', sheet: read.sheet }
      : { is: 'refused', by: 'sheet', problem: read.problem };
    return;
  }
  const large = sizeProblem(size);
  const parsed = large ? { ok: false as const, problems: [large] } : parseCaseText(text, atlas);
  yield parsed.ok
    ? { is: 'case', record: parsed.value }
    : { is: 'refused', by: 'file', problems: parsed.problems.slice(0, MOST_PROBLEMS) };
}

async function* readEverything({ file, size, atlas }: FileJob): Pieces {
  const large = backupTooLarge(size);
  const read = large
    ? { ok: false as const, problem: large }
    : readBackup(new Uint8Array(await file.arrayBuffer()));
  if (!read.ok) {
    yield { is: 'refused', by: 'backup', problem: read.problem };
    return;
  }
  const { at, items, small } = read.backup;
  yield { is: 'backup', at, small };
  for (const part of parted(items, ({ text }) => text.length)) {
    const read = part.map((item) => ({ id: item.id, entry: believed(item, atlas) }));
    yield {
      is: 'entries',
      entries: read.flatMap(({ entry }) => entry ?? []),
      unread: read.flatMap(({ id, entry }) => (entry ? [] : [id])),
    };
  }
}

export const readFile = (job: FileJob): Pieces =>
  job.as === 'backup' ? readEverything(job) : readRecord(job);
