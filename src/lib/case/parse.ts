/** The one door into a record: forms and files become refined types, or problems that say the mend. */
import { birthFromDue, birthFromGestation, type Birth } from '../age/clocks.ts';
import { DATING_METHODS, isDatingMethod } from '../age/doubt.ts';
import { parseGestation } from '../age/gestation.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { OWN_PREFIX } from '../atlas/ownId.ts';
import type { Side } from '../atlas/types.ts';
import {
  agreedKey,
  findingKey,
  visitKey,
  type Agreed,
  type Case,
  type Child,
  type MilestoneSeen,
  type Visit,
} from './case.ts';
import { MOST_TRIES, RESPONSES, SIDES, STATES, type Finding, type Response } from './finding.ts';
import { nearestName } from './nearest.ts';
import type { Parsed, Place } from './problem.ts';
import { readFollowUp } from './followUp.ts';
import { QUOTED, Reader } from './reader.ts';
import {
  MAX_AGREED,
  MAX_FINDINGS,
  MAX_NOTE,
  MAX_VISITS,
  type RawCase,
  type RawChild,
  type RawFinding,
  type RawVisit,
} from './shape.ts';

/** How the id of a reflex of one's own begins; its type holds it to what the atlas says. */
const OWN: typeof OWN_PREFIX = 'own-';
const OWN_ID = new RegExp(`^${OWN}[\\w-]{1,60}$`);
/** For so many unknown names at most the nearest known one is looked for. */
const MOST_NEAREST = 50;

function readBirth(raw: RawChild, read: Reader): Birth | undefined {
  const born = read.date(raw.born, { field: 'born' });
  const dating = isDatingMethod(raw.dating)
    ? raw.dating
    : read.refuse(
        { field: 'dating' },
        { code: 'unknown-dating', text: raw.dating.slice(0, QUOTED), known: DATING_METHODS },
      );
  if (raw.gestation === undefined && raw.due === undefined) {
    read.refuse({ field: 'gestation' }, { code: 'no-dating' });
    return;
  }
  const due = raw.due === undefined ? undefined : read.date(raw.due, { field: 'due' });
  const days = raw.gestation === undefined ? undefined : parseGestation(raw.gestation);
  if (raw.gestation !== undefined && days === undefined)
    read.refuse(
      { field: 'gestation' },
      { code: 'gestation-form', text: raw.gestation.slice(0, QUOTED) },
    );
  if (!born || !dating) return undefined;
  const byGestation = days === undefined ? undefined : birthFromGestation(born, days, dating);
  const byDue = due === undefined ? undefined : birthFromDue(born, due, dating);
  if (byGestation && 'code' in byGestation) {
    read.refuse({ field: 'gestation' }, byGestation);
    return;
  }
  if (byDue && 'code' in byDue) {
    read.refuse({ field: 'due' }, byDue);
    return;
  }
  if (byDue && byGestation && byDue.gestationalDays !== byGestation.gestationalDays) {
    read.refuse(
      { field: 'due' },
      {
        code: 'due-contradicts',
        byDue: byDue.gestationalDays,
        byGestation: byGestation.gestationalDays,
      },
    );
    return;
  }
  return byGestation ?? byDue;
}

function readChild(raw: RawChild, read: Reader): Child | undefined {
  const label = read.line(raw.label, { field: 'label' });
  if (!label) read.refuse({ field: 'label' }, { code: 'empty' });
  const birth = readBirth(raw, read);
  if (!birth) return undefined;
  const datedBy = raw.gestation === undefined ? 'due' : 'gestation';
  return { label, birth, datedBy, invented: raw.invented };
}

function readSide(raw: RawFinding, atlas: Atlas, at: Place, read: Reader): Side | undefined {
  const side = read.oneOf(raw.side, SIDES);
  if (!side) {
    read.refuse(
      { ...at, field: 'side' },
      { code: 'unknown-side', text: raw.side.slice(0, QUOTED), known: SIDES },
    );
    return;
  }
  const reflex = atlas.reflexes.get(raw.reflex);
  if (!reflex) return side;
  const has: Side[] = [
    ...(reflex.testedPerSide ? (['left', 'right'] as const) : []),
    ...(reflex.midline ? (['midline'] as const) : []),
  ];
  if (has.includes(side)) return side;
  read.refuse({ ...at, field: 'side' }, { code: 'no-such-side', side, reflex: reflex.name, has });
}

/** More than one try; what answered at last, or could not be assessed, was not missing at each of them. */
function readTries(
  { tries }: RawFinding,
  response: Response | undefined,
  at: Place,
  read: Reader,
): Pick<Finding, 'tries'> {
  if (tries === undefined || tries === 1) return {};
  const field: Place = { ...at, field: 'tries' };
  if (!Number.isInteger(tries) || tries < 1 || tries > MOST_TRIES)
    read.refuse(field, { code: 'tries-range', tries, most: MOST_TRIES });
  else if (response !== undefined && response !== 'not-elicited')
    read.refuse(field, { code: 'tries-answered', response });
  return { tries };
}

/** The variant that was tested; only one that sources date by itself can be judged by itself. */
function readVariant(
  { reflex, variant }: RawFinding,
  atlas: Atlas,
  at: Place,
  read: Reader,
): Pick<Finding, 'variant'> {
  if (variant === undefined) return {};
  const known = atlas.variants.get(reflex) ?? [];
  if (known.includes(variant)) return { variant };
  const text = variant.slice(0, QUOTED);
  const name = atlas.reflexes.get(reflex)?.name ?? reflex.slice(0, QUOTED);
  read.refuse({ ...at, field: 'variant' }, { code: 'unknown-variant', text, reflex: name, known });
  return {};
}

function readFinding(raw: RawFinding, atlas: Atlas, at: Place, read: Reader): Finding | undefined {
  // a reflex of one's own that was removed, or never came with the file: its findings stay
  if (!atlas.reflexes.has(raw.reflex) && !OWN_ID.test(raw.reflex))
    read.refuse(
      { ...at, field: 'reflex' },
      {
        code: 'unknown-reflex',
        text: raw.reflex.slice(0, QUOTED),
        // to find it takes long, and after so many problems nobody mends by it
        nearest:
          read.problems.length < MOST_NEAREST
            ? nearestName(raw.reflex, [...atlas.reflexes.keys()])
            : undefined,
      },
    );
  const side = readSide(raw, atlas, at, read);
  const response =
    read.oneOf(raw.response, RESPONSES) ??
    read.refuse(
      { ...at, field: 'response' },
      { code: 'unknown-response', text: raw.response.slice(0, QUOTED), known: RESPONSES },
    );
  const state =
    read.oneOf(raw.state, STATES) ??
    read.refuse(
      { ...at, field: 'state' },
      { code: 'unknown-state', text: raw.state.slice(0, QUOTED), known: STATES },
    );
  const note = read.text(raw.note, { ...at, field: 'note' }, MAX_NOTE);
  const variant = readVariant(raw, atlas, at, read);
  const tries = readTries(raw, response, at, read);
  if (!side || !response || !state) return undefined;
  return { reflex: raw.reflex, side, response, state, note, ...variant, ...tries };
}

function readVisit(
  raw: RawVisit,
  number: number,
  birth: Birth | undefined,
  atlas: Atlas,
  read: Reader,
): Visit | undefined {
  const visit = { number, on: raw.on.slice(0, QUOTED) };
  const id = read.id(raw.id, { field: 'id', visit });
  const on = read.date(raw.on, { field: 'on', visit });
  if (on && birth && on < birth.born)
    read.refuse({ field: 'on', visit }, { code: 'exam-before-birth', on, born: birth.born });
  const examiner = read.line(raw.examiner, { field: 'examiner', visit });
  const note = read.text(raw.note, { field: 'note', visit }, MAX_NOTE);
  if (raw.findings.length > MAX_FINDINGS) {
    read.refuse({ field: 'findings', visit }, { code: 'too-many', limit: MAX_FINDINGS });
    return;
  }
  const seen = new Set<string>();
  const findings = raw.findings.flatMap((rawFinding, index): Finding[] => {
    const at: Place = {
      field: 'reflex',
      visit,
      finding: { number: index + 1, reflex: rawFinding.reflex.slice(0, QUOTED) },
    };
    const finding = readFinding(rawFinding, atlas, at, read);
    if (!finding) return [];
    const { reflex, side } = finding;
    if (seen.has(findingKey(finding))) read.refuse(at, { code: 'duplicate-finding', reflex, side });
    seen.add(findingKey(finding));
    return [finding];
  });
  const known = [...atlas.milestones.keys()];
  const looked = new Set<string>();
  const milestones: MilestoneSeen[] = [];
  for (const { milestone, seen, lost } of raw.milestones) {
    const at: Place = { field: 'milestones', visit };
    if (!atlas.milestones.has(milestone))
      read.refuse(at, { code: 'unknown-milestone', text: milestone.slice(0, QUOTED), known });
    if (looked.has(milestone)) read.refuse(at, { code: 'duplicate-milestone', milestone });
    looked.add(milestone);
    if (lost && seen) read.refuse(at, { code: 'lost-seen', milestone });
    milestones.push({ milestone, seen, ...(lost ? { lost } : {}) });
  }
  return on && { id, on, examiner, note, findings, milestones };
}

/** Answers that examiners agreed on: each a finding with its day, and one at most of a day, test and side. */
function readAgreed({ agreed = [] }: RawCase, born: string, atlas: Atlas, read: Reader): Agreed[] {
  if (agreed.length > MAX_AGREED)
    read.refuse({ field: 'agreed' }, { code: 'too-many', limit: MAX_AGREED });
  const seen = new Set<string>();
  return agreed.slice(0, MAX_AGREED).flatMap((raw, index): Agreed[] => {
    const of = { number: index + 1, reflex: raw.reflex.slice(0, QUOTED) };
    const at: Place = { field: 'agreed', finding: of };
    const on = read.date(raw.on, at);
    if (on && on < born) read.refuse(at, { code: 'exam-before-birth', on, born });
    const finding = readFinding(raw, atlas, at, read);
    if (!on || !finding) return [];
    const one: Agreed = { on, ...finding };
    const { reflex, side } = finding;
    if (seen.has(agreedKey(one))) read.refuse(at, { code: 'duplicate-finding', reflex, side });
    seen.add(agreedKey(one));
    return [one];
  });
}

/** A raw case refined: every date exists, every name is known, nothing is said twice. */
export function parseRaw(raw: RawCase, atlas: Atlas): Parsed<Case> {
  const read = new Reader();
  const child = readChild(raw.child, read);
  if (raw.visits.length > MAX_VISITS) {
    read.refuse({ field: 'visits' }, { code: 'too-many', limit: MAX_VISITS });
    return { ok: false, problems: read.problems };
  }
  const seen = new Set<string>();
  const visits = raw.visits.flatMap((rawVisit, index): Visit[] => {
    const visit = readVisit(rawVisit, index + 1, child?.birth, atlas, read);
    if (!visit) return [];
    const { on, examiner } = visit;
    if (seen.has(visitKey(visit)))
      read.refuse(
        { field: 'on', visit: { number: index + 1, on } },
        { code: 'duplicate-visit', on, examiner },
      );
    seen.add(visitKey(visit));
    return [visit];
  });
  const followUp = readFollowUp(raw, read);
  const agreed = readAgreed(raw, child?.birth.born ?? '', atlas, read);
  if (!child || read.problems.length > 0) return { ok: false, problems: read.problems };
  visits.sort((a, b) => (visitKey(a) < visitKey(b) ? -1 : 1));
  return { ok: true, value: { child, visits, ...followUp, agreed } };
}
