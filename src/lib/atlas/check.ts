/** What must be true of the atlas. Run on load and in tests; each fault is a line that names it. */
import { fromMonths, fromGestationWeeks } from '../age/axis.ts';
import { isByTerm, printedDay, printedSpan } from './printed.ts';
import type { Count } from './count.ts';
import type { AtlasParts, Claim, Kind, Printed, SourceData, Station } from './types.ts';

const EARLIEST_APPEARANCE = fromGestationWeeks(8);
const LATEST_PRIMITIVE_APPEARANCE = fromMonths(12);
const LATEST_PRINTED = fromMonths(130);

const repeated = (ids: readonly string[]): string[] =>
  ids.filter((id, index) => ids.indexOf(id) !== index);

function printedFaults(printed: Printed | undefined, end: string): string[] {
  if (!printed) return [];
  const { low, high, unit, asPrinted } = printed;
  const faults: string[] = [];
  if (!asPrinted.trim()) faults.push(`${end} has no printed words`);
  if (!(low >= 0) || (high !== null && !(high >= low)))
    faults.push(`${end} "${asPrinted}" does not run from low to high`);
  if (unit === 'wkPMA' && (low < 8 || (high ?? low) > 60))
    faults.push(`${end} "${asPrinted}" is no age in weeks of gestation`);
  if (printedDay(high ?? low, unit) > LATEST_PRINTED)
    faults.push(`${end} "${asPrinted}" lies beyond childhood`);
  return faults;
}

/** Faults of one claim: its status fits its figures, its ages are sane and in order. */
export function claimFaults(claim: Claim, kind: Kind | undefined): string[] {
  const { appears, integrates } = claim;
  const faults = [...printedFaults(appears, 'appears'), ...printedFaults(integrates, 'integrates')];
  if (!kind) faults.push('names no reflex of the atlas');
  if ((claim.appearsStatus === 'given') !== !!appears)
    faults.push('an appearance is given exactly when it has figures');
  const dated = claim.integratesStatus === 'given' || claim.integratesStatus === 'later-than';
  if (dated !== !!integrates) faults.push('an end is dated exactly when it has figures');
  if (integrates && (integrates.high === null) !== (claim.integratesStatus === 'later-than'))
    faults.push('only "later than" has an open end');
  if (appears?.atLatest || (integrates?.atLatest && integrates.high === null))
    faults.push('only a dated end may be a latest age');
  if (integrates?.notYetAll || (appears?.notYetAll && !((appears.high ?? 0) > appears.low)))
    faults.push('only an appearance over a range may leave some infants out');
  const start = appears && !isByTerm(appears) ? printedSpan(appears) : undefined;
  const end = integrates && printedSpan(integrates);
  if (start && end && start.from > end.to) faults.push('integrates before it appears');
  if (start && claim.role === 'window') {
    if (start.from < EARLIEST_APPEARANCE) faults.push('appears before 8 weeks of gestation');
    if (kind === 'primitive-reflex' && start.from > LATEST_PRIMITIVE_APPEARANCE)
      faults.push('a primitive reflex appears after 12 months');
  }
  return faults;
}

function countFaults(count: Count): string[] {
  const faults: string[] = [];
  if (count.n !== null && !(Number.isInteger(count.n) && count.n > 0))
    faults.push('n is no number of infants');
  if (count.percent !== null && !(count.percent >= 0 && count.percent <= 100))
    faults.push('the share is no percentage');
  if (count.low !== null && count.high !== null && count.low > count.high)
    faults.push('the ages run backwards');
  if (
    count.hits !== undefined &&
    !(count.hits >= 0 && count.hits <= (count.of?.number ?? count.n ?? -1))
  )
    faults.push('more were counted than there were');
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(count.measureId)) faults.push('the measure has no key');
  if (count.complementary && count.answer === 'other')
    faults.push('no answer of an examination, so it has no other one');
  if ((count.unit === 'milestone') !== (count.low === null))
    faults.push('an age is missing or belongs to no age');
  return faults;
}

function sourceFaults(
  source: SourceData,
  kinds: ReadonlyMap<string, Kind>,
  variants: ReadonlyMap<string, ReadonlySet<string>>,
): string[] {
  const faults: string[] = [];
  if (!source.short.trim()) faults.push(`${source.id}: has no short name`);
  for (const claim of source.claims) {
    for (const fault of claimFaults(claim, kinds.get(claim.reflex)))
      faults.push(`${source.id} on ${claim.reflex}: ${fault}`);
    if (claim.variant !== undefined && !variants.get(claim.reflex)?.has(claim.variant))
      faults.push(`${source.id} on ${claim.reflex}: speaks of ${claim.variant}, no variant of it`);
  }
  for (const count of source.counts) {
    if (count.reflex !== 'any-reflex' && !kinds.has(count.reflex))
      faults.push(`${source.id}: counts ${count.reflex}, no reflex of the atlas`);
    for (const fault of countFaults(count))
      faults.push(`${source.id} counting ${count.reflex}: ${fault}`);
  }
  return faults;
}

/** Every fault of the atlas; none when it may be judged by. */
export function checkAtlas(parts: AtlasParts): string[] {
  const kinds = new Map(parts.reflexes.map((reflex) => [reflex.id, reflex.kind]));
  const variants = new Map(
    parts.reflexes.map(({ id, patterns }) => [id, new Set(patterns.map((one) => one.variant))]),
  );
  const sourceIds = new Set(parts.sources.map((source) => source.id));
  const milestones = new Set(parts.milestones.map((milestone) => milestone.id));
  const known = (station: Station): boolean =>
    station.event === 'reached'
      ? milestones.has(station.milestone)
      : station.event === 'sets-apart' || kinds.has(station.reflex);
  const faults = [
    ...repeated(parts.reflexes.map((r) => r.id)).map((id) => `reflex ${id} stands twice`),
    ...repeated(parts.sources.map((s) => s.id)).map((id) => `source ${id} stands twice`),
    ...repeated(parts.sequences.map((s) => s.id)).map((id) => `sequence ${id} stands twice`),
    ...parts.sources.flatMap((source) => sourceFaults(source, kinds, variants)),
  ];
  for (const reflex of parts.reflexes) {
    for (const { fromMonths: from, toMonths: to } of reflex.unlikeSides)
      if (!(from <= to)) faults.push(`reflex ${reflex.id} has unlike sides at no age`);
    if (reflex.patterns.length === 0) faults.push(`reflex ${reflex.id} has no limb pattern`);
    if (!reflex.testedPerSide && !reflex.midline) faults.push(`reflex ${reflex.id} has no side`);
  }
  for (const { id, stations, sources, contradictedBy } of parts.sequences) {
    if (stations.length < 2 || !stations.every(known))
      faults.push(`sequence ${id} has a station the atlas does not know`);
    for (const source of [...sources, ...contradictedBy])
      if (!sourceIds.has(source)) faults.push(`sequence ${id} cites ${source}, no source`);
  }
  for (const { id, window, mostByMonths, source } of parts.milestones) {
    if (window ? !(window.p1Months < window.p99Months) : !mostByMonths)
      faults.push(`milestone ${id} has no age`);
    if (!sourceIds.has(source)) faults.push(`milestone ${id} cites ${source}, no source`);
  }
  return faults;
}

/** The parts of an atlas as they are; an error where they have faults, so that none is judged by. */
export function faultless(parts: AtlasParts): AtlasParts {
  const faults = checkAtlas(parts);
  if (faults.length > 0) throw new Error(`the atlas has faults:\n${faults.join('\n')}`);
  return parts;
}
