/** Visits with their findings, milestones and notes, read off FHIR R4 encounters and observations. */
import * as codes from './codes.ts';
import { carriedBy, day, exact, inOrder, type Entry, type Faults } from './entry.ts';
import { at, codeIn, listAt, textAt, type Fields } from './value.ts';

function readFinding(entry: Entry, reflex: string, faults: Faults): unknown {
  const { resource } = entry;
  const { note, ...carried } = carriedBy(resource);
  const site = at(resource, 'bodySite');
  const qualifier = codeIn(site, codes.SNOMED);
  const side =
    codeIn(site, codes.OWN_SYSTEMS.side) ??
    Object.keys(codes.LATERALITY).find((one) => codes.LATERALITY[one]?.code === qualifier);
  const response =
    codeIn(at(resource, 'valueCodeableConcept'), codes.OWN_SYSTEMS.response) ??
    codeIn(at(resource, 'dataAbsentReason'), codes.OWN_SYSTEMS.response);
  const state = listAt(resource, 'component')
    .filter((one) => codeIn(at(one, 'code'), codes.OWN_SYSTEMS.record) === 'state')
    .map((one) => codeIn(at(one, 'valueCodeableConcept'), codes.OWN_SYSTEMS.state))[0];
  const notes = listAt(resource, 'note').flatMap((one) => textAt(one, 'text') ?? []);
  return {
    ...carried,
    reflex,
    side: faults.needed(entry, 'bodySite', side),
    response: faults.needed(entry, 'valueCodeableConcept', response),
    state: state ?? 'not-recorded',
    note: exact(notes.join('\n') || undefined, note),
  };
}

/** Visits in the order in which they are met; a finding outside a visit makes one of its day and examiner. */
export function readVisits(
  parts: readonly Entry[],
  target: (resource: Fields, name: string) => Entry | undefined,
  faults: Faults,
): unknown[] {
  interface Met {
    fields: Record<string, unknown>;
    findings: unknown[];
    milestones: unknown[];
  }
  const met = new Map<string, Met>();
  const byEncounter = new Map<Entry, string>();
  const visitOf = (on: string, examiner: string): Met => {
    const key = `${on} ${examiner}`;
    let visit = met.get(key);
    if (!visit)
      met.set(key, (visit = { fields: { on, examiner, note: '' }, findings: [], milestones: [] }));
    return visit;
  };
  for (const entry of parts) {
    if (entry.type !== 'Encounter') continue;
    const { resource } = entry;
    const { note, examiner, ...carried } = carriedBy(resource);
    const start = day(textAt(at(resource, 'period'), 'start'));
    const on = faults.needed(entry, 'period.start', start);
    const named = at(listAt(resource, 'participant')[0], 'individual');
    const by = exact(textAt(named, 'display'), examiner);
    const visit = visitOf(on, by);
    Object.assign(visit.fields, carried, typeof note === 'string' ? { note } : {});
    byEncounter.set(entry, `${on} ${by}`);
  }
  for (const entry of inOrder(parts)) {
    const { resource } = entry;
    if (entry.type !== 'Observation') continue;
    const code = at(resource, 'code');
    if (codeIn(code, codes.LOINC) !== undefined && !codeIn(code, codes.OWN_SYSTEMS.reflex))
      continue;
    const encounter = target(resource, 'encounter');
    const key = encounter && byEncounter.get(encounter);
    const performer = listAt(resource, 'performer')[0];
    const visit =
      (key === undefined ? undefined : met.get(key)) ??
      visitOf(
        faults.needed(entry, 'effectiveDateTime', day(textAt(resource, 'effectiveDateTime'))),
        textAt(performer, 'display') ?? '',
      );
    const milestone = codeIn(code, codes.OWN_SYSTEMS.milestone);
    const reflex = codeIn(code, codes.OWN_SYSTEMS.reflex);
    if (reflex !== undefined) visit.findings.push(readFinding(entry, reflex, faults));
    else if (milestone !== undefined) {
      const seen = at(resource, 'valueBoolean');
      if (typeof seen !== 'boolean') faults.refuse(entry, 'missing', 'valueBoolean');
      visit.milestones.push({ ...carriedBy(resource), milestone, seen: seen === true });
    } else visit.fields.note = exact(textAt(resource, 'valueString'), visit.fields.note);
  }
  return [...met.values()].map(({ fields, findings, milestones }) => ({
    ...fields,
    findings,
    milestones,
  }));
}
