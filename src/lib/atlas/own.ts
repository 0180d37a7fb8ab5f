/**
 * Sources and reflexes of one's own, kept as they were typed and read anew each time, and the atlas
 * with them in it. Nothing built in can be overwritten: their ids have a prefix no other has, and a
 * name that is taken is refused.
 */
import { readEnd, readStart, type AgeProblem } from './asPrinted.ts';
import { claimFaults } from './check.ts';
import { OWN_PREFIX } from './ownId.ts';
import { ownSource, readTable, textProblem, type CellProblem, type Row } from './ownTable.ts';
import { reflexNamed } from './search.ts';
import type {
  AtlasParts,
  Claim,
  Group,
  Kind,
  LimbTokens,
  Position,
  Reflex,
  ReflexProse,
  SourceData,
  StimulusKind,
  Tier,
} from './types.ts';
import { absenceOf } from './weight.ts';

/** A source as it was typed: a table of rows, ages as printed. */
export interface OwnSource {
  kind: 'source';
  id: string;
  name: string;
  tier: Tier;
  /** Switched off it is kept, and takes no part. */
  on: boolean;
  rows: readonly Row[];
}

/** An age of an own reflex, as one source prints it. */
export interface OwnAge {
  source: string;
  tier: Tier;
  appears: string;
  integrates: string;
}

/** What each limb does, in the words of a limb pattern. */
export type OwnLimbs = Omit<LimbTokens, 'face' | 'also'>;

/** A reflex as it was described. */
export interface OwnReflex {
  kind: 'reflex';
  id: string;
  name: string;
  group: Group;
  reflexKind: Kind;
  position: Position;
  stimulus: StimulusKind;
  /** Examined left and right, or on the midline. */
  sides: 'pair' | 'midline';
  limbs: OwnLimbs;
  ages: readonly OwnAge[];
  on: boolean;
}

export type OwnEntry = OwnSource | OwnReflex;

/** A problem of a field that is no cell of a source's table. */
export type FieldProblem = { row: number } & (
  | { field: 'name'; code: 'empty' | 'taken' | 'formula' | 'markup' | 'too-long' }
  | { field: 'limbs'; code: 'nothing-moves' }
  | { field: 'source'; code: 'empty' | 'formula' | 'markup' | 'too-long' }
  | { field: 'appears'; code: AgeProblem | 'nothing-stated' }
  | { field: 'integrates'; code: AgeProblem | 'ends-before-start' }
);

export interface Known {
  parts: AtlasParts;
  prose: Readonly<Record<string, ReflexProse>>;
}

const MAX_NAME = 80;
const plain = (text: string): string => text.trim().toLowerCase().replaceAll(/\s+/g, ' ');

function nameProblem(name: string): 'empty' | 'formula' | 'markup' | 'too-long' | undefined {
  if (name.trim() === '') return 'empty';
  if (name.trim().length > MAX_NAME) return 'too-long';
  const code = textProblem(name)?.code;
  return code === 'formula' || code === 'markup' || code === 'too-long' ? code : undefined;
}

/** What is wrong with the name of a source; it must be told from every other. */
export function sourceNameProblem(
  name: string,
  id: string,
  known: readonly SourceData[],
): FieldProblem | undefined {
  const problem = nameProblem(name);
  if (problem) return { row: 0, field: 'name', code: problem };
  const taken = known.some((source) => source.id !== id && plain(source.short) === plain(name));
  return taken ? { row: 0, field: 'name', code: 'taken' } : undefined;
}

export const isBlankRow = (row: Row): boolean =>
  Object.values(row).every((cell) => cell.trim() === '');

/** A source read from its rows; data only when every cell can be read. Rows count as they stand. */
export function readOwnSource(
  source: OwnSource,
  { parts, prose }: Known,
): { data?: SourceData; claims: readonly Claim[]; problems: readonly CellProblem[] } {
  const places = source.rows.flatMap((row, index) => (isBlankRow(row) ? [] : [index]));
  const rows = places.map((index) => source.rows[index]!);
  const read = readTable(rows, parts.reflexes, prose);
  const problems = read.problems.map((problem) => ({
    ...problem,
    row: places[problem.row] ?? problem.row,
    ...(problem.code === 'twice' ? { firstRow: places[problem.firstRow] ?? 0 } : {}),
  }));
  if (problems.length === 0 && read.claims.length > 0)
    return {
      data: { ...ownSource(source.id, source.name.trim(), read.claims), tier: source.tier },
      claims: read.claims,
      problems,
    };
  const wrong = new Set(read.problems.map((problem) => problem.row));
  const sound = rows.filter((_, index) => !wrong.has(index));
  return { claims: readTable(sound, parts.reflexes, prose).claims, problems };
}

const ownPattern = ({ limbs, sides, name }: OwnReflex): Reflex['patterns'][number] => ({
  variant: 'own',
  label: name.trim(),
  stimulusSide: sides === 'pair' ? 'left' : 'none',
  ...limbs,
});

/** The reflex that a description stands for, whatever its ages are. */
export const reflexOf = (own: OwnReflex): Reflex => ({
  id: own.id,
  name: own.name.trim(),
  short: own.name.trim(),
  group: own.group,
  kind: own.reflexKind,
  testedPerSide: own.sides === 'pair',
  midline: own.sides === 'midline',
  // no count of it is known: its absence counts as for most
  absence: absenceOf(own.id),
  unlikeSides: [],
  position: own.position,
  stimulus: own.stimulus,
  upsetting: false,
  cautions: ['stop-if-distress'],
  patterns: [ownPattern(own)],
});

/** A claim with the source it was typed for. */
interface SaidBy {
  source: string;
  tier: Tier;
  claim: Claim;
}

export interface OwnReflexRead {
  reflex: Reflex;
  said: readonly SaidBy[];
  problems: readonly FieldProblem[];
}

function readAge(age: OwnAge, row: number, own: OwnReflex): SaidBy | FieldProblem[] {
  const problems: FieldProblem[] = [];
  const name = nameProblem(age.source);
  if (name) problems.push({ row, field: 'source', code: name });
  const start = readStart(age.appears);
  const end = readEnd(age.integrates);
  if ('problem' in start) problems.push({ row, field: 'appears', code: start.problem });
  if ('problem' in end) problems.push({ row, field: 'integrates', code: end.problem });
  if (problems.length > 0 || 'problem' in start || 'problem' in end) return problems;
  if (start.status === 'not-stated' && end.status === 'not-stated')
    return [{ row, field: 'appears', code: 'nothing-stated' }];
  const claim: Claim = {
    reflex: own.id,
    role: 'window',
    basis: 'read',
    appearsStatus: start.status,
    ...('printed' in start ? { appears: start.printed } : {}),
    integratesStatus: end.status,
    ...('printed' in end ? { integrates: end.printed } : {}),
  };
  const faults = claimFaults(claim, own.reflexKind);
  if (faults.some((fault) => fault.includes('before it appears')))
    return [{ row, field: 'integrates', code: 'ends-before-start' }];
  if (faults.length > 0) return [{ row, field: 'appears', code: 'out-of-range' }];
  return { source: age.source.trim(), tier: age.tier, claim };
}

const isBlankAge = ({ source, appears, integrates }: OwnAge): boolean =>
  [source, appears, integrates].every((cell) => cell.trim() === '');

/** A reflex read from its description, with what each source says of it, or what is to be mended. */
export function readOwnReflex(own: OwnReflex, { parts, prose }: Known): OwnReflexRead {
  const problems: FieldProblem[] = [];
  const others = parts.reflexes.filter((reflex) => reflex.id !== own.id);
  const name = nameProblem(own.name);
  if (name) problems.push({ row: 0, field: 'name', code: name });
  else if (reflexNamed(own.name, others, prose)?.exact)
    problems.push({ row: 0, field: 'name', code: 'taken' });
  if (Object.values(own.limbs).every((token) => token === 'none'))
    problems.push({ row: 0, field: 'limbs', code: 'nothing-moves' });
  const said = own.ages.flatMap((age, row): SaidBy[] => {
    if (isBlankAge(age)) return [];
    const read = readAge(age, row, own);
    if (!Array.isArray(read)) return [read];
    problems.push(...read);
    return [];
  });
  if (said.length === 0 && problems.length === 0)
    problems.push({ row: 0, field: 'appears', code: 'nothing-stated' });
  return { reflex: reflexOf(own), said, problems };
}

/** Sources made of what was typed with own reflexes: one for each name. */
function withSaid(sources: readonly SourceData[], said: readonly SaidBy[]): SourceData[] {
  const all = [...sources];
  for (const { source, tier, claim } of said) {
    const at = all.findIndex(
      ({ id, short }) => id.startsWith(OWN_PREFIX) && plain(short) === plain(source),
    );
    const found = all[at];
    if (found) all[at] = { ...found, claims: [...found.claims, claim] };
    else {
      const id = `by-${plain(source).replaceAll(/[^\p{L}\p{N}]+/gu, '-')}`;
      all.push({ ...ownSource(id, source, [claim]), tier });
    }
  }
  return all;
}

/** Own reflexes stand after the last of their group. */
function withReflexes(reflexes: readonly Reflex[], own: readonly Reflex[]): Reflex[] {
  const all = [...reflexes];
  for (const one of own) {
    const last = all.findLastIndex(({ group }) => group === one.group);
    all.splice(last < 0 ? all.length : last + 1, 0, one);
  }
  return all;
}

/**
 * The atlas's parts with what is one's own in them. An entry that can no longer be read whole (a
 * reflex it names has gone) takes no part and is named in `unread`.
 */
export function withOwn(
  known: Known,
  entries: readonly OwnEntry[],
): { parts: AtlasParts; unread: readonly string[] } {
  const unread: string[] = [];
  const reflexes: Reflex[] = [];
  const said: SaidBy[] = [];
  let parts = known.parts;
  for (const entry of entries) {
    if (entry.kind !== 'reflex') continue;
    const read = readOwnReflex(entry, { ...known, parts });
    if (read.problems.length > 0) unread.push(entry.id);
    else {
      reflexes.push(read.reflex);
      said.push(...read.said);
      parts = { ...known.parts, reflexes: withReflexes(known.parts.reflexes, reflexes) };
    }
  }
  const sources = [...parts.sources];
  for (const entry of entries) {
    if (entry.kind !== 'source') continue;
    const { data } = readOwnSource(entry, { ...known, parts });
    if (data && !sourceNameProblem(entry.name, data.id, sources)) sources.push(data);
    else unread.push(entry.id);
  }
  return { parts: { ...parts, sources: withSaid(sources, said) }, unread };
}
