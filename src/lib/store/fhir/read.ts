/** FHIR R4 resources as raw case files. Nothing is believed: what comes out passes the parser like any file. */
import { formatGestation } from '../../age/gestation.ts';
import { FORMAT, VERSION } from '../../case/shape.ts';
import * as codes from './codes.ts';
import {
  carriedBy,
  day,
  exact,
  inOrder,
  isOwnCodes,
  isWrong,
  nameOf,
  QUOTED,
  type Entry,
  type EntryProblem,
  type FoundChild,
  type LeftOut,
  type ReadBundle,
} from './entry.ts';
import { addressOf } from './names.ts';
import { at, codeIn, fieldsOf, listAt, textAt, wordsOf, type Fields } from './value.ts';

/** What a child can be kept under. */
const KEPT_ID = /^[\w-]{1,64}$/;

class BundleReader {
  readonly problems: EntryProblem[] = [];
  readonly leftOut: LeftOut[] = [];
  readonly #byAddress = new Map<string, Entry>();
  readonly #entries: readonly Entry[];

  constructor(entries: readonly Entry[]) {
    this.#entries = entries;
    for (const entry of entries)
      for (const address of entry.addresses)
        if (!this.#byAddress.has(address)) this.#byAddress.set(address, entry);
  }

  read(): FoundChild[] {
    const patients = this.#entries.filter(({ type }) => type === 'Patient');
    const parts = new Map<Entry, Entry[]>(patients.map((one) => [one, []]));
    for (const entry of this.#entries) {
      if (entry.type === 'Patient' || isOwnCodes(entry)) continue;
      const what = this.#what(entry);
      if (what) {
        this.leftOut.push({ entry: entry.number, type: entry.type, ...what });
        continue;
      }
      const subject = this.#target(entry.resource, entry.type === 'Task' ? 'for' : 'subject');
      const mine = subject && parts.get(subject);
      if (mine) mine.push(entry);
      else this.leftOut.push({ entry: entry.number, type: entry.type, why: 'no-child' });
    }
    return patients.map((one) => this.#child(one, parts.get(one) ?? []));
  }

  /** Why an entry is left out, if it is. */
  #what({ type, resource }: Entry): Pick<LeftOut, 'why' | 'what'> | undefined {
    if (isWrong(resource)) return { why: 'entered-in-error' };
    if (type === 'Encounter') return undefined;
    const code = at(resource, 'code');
    const known = ((): boolean => {
      switch (type) {
        case 'Observation':
          return (
            codeIn(code, codes.LOINC) === codes.GESTATION.code ||
            codeIn(code, codes.LOINC) === codes.DUE.code ||
            codeIn(code, codes.OWN_SYSTEMS.reflex) !== undefined ||
            codeIn(code, codes.OWN_SYSTEMS.milestone) !== undefined ||
            codeIn(code, codes.OWN_SYSTEMS.record) === 'visit-note'
          );
        case 'Task':
          return ['question', 'decision'].includes(codeIn(code, codes.OWN_SYSTEMS.record) ?? '');
        case 'CarePlan':
          return listAt(resource, 'category').some(
            (one) => codeIn(one, codes.OWN_SYSTEMS.record) === 'sheet',
          );
        default:
          return false;
      }
    })();
    if (known) return undefined;
    const words = wordsOf(code)?.slice(0, QUOTED);
    const ours = ['Observation', 'Task', 'CarePlan'].includes(type);
    return { why: ours ? 'unknown-code' : 'not-used', ...(words ? { what: words } : {}) };
  }

  #target(resource: Fields, name: string): Entry | undefined {
    const reference = textAt(at(resource, name), 'reference');
    return reference === undefined ? undefined : this.#byAddress.get(reference);
  }

  #refuse(entry: Entry, fault: EntryProblem['fault'], field: string, text?: string): void {
    this.problems.push({
      entry: entry.number,
      type: entry.type,
      fault,
      field,
      ...(text === undefined ? {} : { text: text.slice(0, QUOTED) }),
    });
  }

  /** A text that must be there. */
  #needed(entry: Entry, field: string, text: string | undefined): string {
    if (text === undefined) this.#refuse(entry, 'missing', field);
    return text ?? '';
  }

  #child(patient: Entry, parts: readonly Entry[]): FoundChild {
    const { resource } = patient;
    const carried = carriedBy(resource);
    const isOfChild = (name: string): boolean => name.startsWith(codes.OF_CHILD);
    const ofRecord = Object.entries(carried).filter(([name]) => !isOfChild(name));
    const { label, ...ofChild } = Object.fromEntries(
      Object.entries(carried)
        .filter(([name]) => isOfChild(name))
        .map(([name, value]) => [name.slice(codes.OF_CHILD.length), value]),
    );
    const coded = (type: string, fits: (one: Entry) => boolean): Entry[] =>
      parts.filter((one) => one.type === type && fits(one));
    const tasks = (code: string): Entry[] =>
      coded('Task', (one) => codeIn(at(one.resource, 'code'), codes.OWN_SYSTEMS.record) === code);
    const asked = tasks('question')[0];
    const question = asked
      ? exact(textAt(asked.resource, 'description'), carriedBy(asked.resource).question)
      : undefined;
    const decisions = inOrder(tasks('decision')).map(({ resource: task }) => this.#decision(task));
    const plan = coded('CarePlan', () => true)[0];
    const tags = listAt(at(resource, 'meta'), 'tag')
      .filter((tag) => textAt(tag, 'system') === codes.TAGS)
      .flatMap((tag) => textAt(tag, 'display') ?? textAt(tag, 'code') ?? []);
    return {
      addresses: patient.addresses,
      id: listAt(resource, 'identifier')
        .filter((one) => textAt(one, 'system') === codes.CHILD)
        .flatMap((one) => textAt(one, 'value') ?? [])
        .find((id) => KEPT_ID.test(id) && patient.addresses.includes(addressOf(id))),
      raw: {
        format: FORMAT,
        version: VERSION,
        child: {
          ...ofChild,
          label: exact(nameOf(resource), label),
          born: this.#needed(patient, 'birthDate', textAt(resource, 'birthDate')),
          ...this.#dating(parts),
          invented: listAt(at(resource, 'meta'), 'security').some(
            (one) =>
              textAt(one, 'system') === codes.TEST_DATA.system &&
              textAt(one, 'code') === codes.TEST_DATA.code,
          ),
        },
        visits: this.#visits(parts),
        ...(tags.length > 0 ? { tags } : {}),
        ...(at(resource, 'active') === false ? { archived: true } : {}),
        ...(question ? { question } : {}),
        ...(decisions.length > 0 ? { decisions } : {}),
        ...(plan ? { sheet: this.#sheet(plan.resource) } : {}),
        ...Object.fromEntries(ofRecord),
      },
    };
  }

  #decision(task: Fields): unknown {
    const { text, who, ...carried } = carriedBy(task);
    return {
      ...carried,
      on: day(textAt(task, 'authoredOn')) ?? '',
      text: exact(textAt(task, 'description'), text),
      who: exact(textAt(at(task, 'owner'), 'display'), who),
      by: day(textAt(at(at(task, 'restriction'), 'period'), 'end')) ?? '',
      done: textAt(task, 'status') === 'completed',
    };
  }

  #sheet(plan: Fields): unknown {
    return {
      ...carriedBy(plan),
      on: day(textAt(at(plan, 'period'), 'start')) ?? '',
      reflexes: listAt(plan, 'activity').flatMap(
        (one) => codeIn(at(at(one, 'detail'), 'code'), codes.OWN_SYSTEMS.reflex) ?? [],
      ),
    };
  }

  /** Gestation, due date and how they were found; one that was derived from the other is left away. */
  #dating(parts: readonly Entry[]): object {
    const dated = (code: string | undefined): Entry | undefined => {
      const found = parts.filter(
        ({ type, resource }) =>
          type === 'Observation' && codeIn(at(resource, 'code'), codes.LOINC) === code,
      );
      return found.find(({ resource }) => listAt(resource, 'derivedFrom').length === 0) ?? found[0];
    };
    const given = (one: Entry | undefined): boolean =>
      one !== undefined && listAt(one.resource, 'derivedFrom').length === 0;
    const gestation = dated(codes.GESTATION.code);
    const due = dated(codes.DUE.code);
    const byDue = due !== undefined && (given(due) || !gestation);
    const byGestation = gestation !== undefined && (given(gestation) || !byDue);
    const method = [byGestation ? gestation : undefined, due]
      .map((one) => one && codeIn(at(one.resource, 'method'), codes.OWN_SYSTEMS.dating))
      .find((code) => code !== undefined);
    return {
      ...(byGestation ? { gestation: this.#gestation(gestation) } : {}),
      ...(byDue ? { due: day(textAt(due.resource, 'valueDateTime')) ?? '' } : {}),
      dating: method ?? 'unknown',
    };
  }

  /** A gestation in whole days, from days or weeks. */
  #gestation(entry: Entry): string {
    const quantity = at(entry.resource, 'valueQuantity');
    const value = at(quantity, 'value');
    const unit = textAt(quantity, 'code') ?? textAt(quantity, 'unit');
    const perUnit = unit === 'd' ? 1 : unit === 'wk' ? 7 : undefined;
    const days = typeof value === 'number' && perUnit ? value * perUnit : NaN;
    if (Number.isInteger(days) && days >= 0 && days < 1000) return formatGestation(days);
    this.#refuse(entry, 'no-gestation', 'valueQuantity');
    return '';
  }

  /** Visits in the order in which they are met; a finding outside a visit makes one of its day and examiner. */
  #visits(parts: readonly Entry[]): unknown[] {
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
        met.set(
          key,
          (visit = { fields: { on, examiner, note: '' }, findings: [], milestones: [] }),
        );
      return visit;
    };
    for (const entry of parts) {
      if (entry.type !== 'Encounter') continue;
      const { resource } = entry;
      const { note, examiner, ...carried } = carriedBy(resource);
      const start = day(textAt(at(resource, 'period'), 'start'));
      const on = this.#needed(entry, 'period.start', start);
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
      const encounter = this.#target(resource, 'encounter');
      const key = encounter && byEncounter.get(encounter);
      const performer = listAt(resource, 'performer')[0];
      const visit =
        (key === undefined ? undefined : met.get(key)) ??
        visitOf(
          this.#needed(entry, 'effectiveDateTime', day(textAt(resource, 'effectiveDateTime'))),
          textAt(performer, 'display') ?? '',
        );
      const milestone = codeIn(code, codes.OWN_SYSTEMS.milestone);
      const reflex = codeIn(code, codes.OWN_SYSTEMS.reflex);
      if (reflex !== undefined) visit.findings.push(this.#finding(entry, reflex));
      else if (milestone !== undefined) {
        const seen = at(resource, 'valueBoolean');
        if (typeof seen !== 'boolean') this.#refuse(entry, 'missing', 'valueBoolean');
        visit.milestones.push({ ...carriedBy(resource), milestone, seen: seen === true });
      } else visit.fields.note = exact(textAt(resource, 'valueString'), visit.fields.note);
    }
    return [...met.values()].map(({ fields, findings, milestones }) => ({
      ...fields,
      findings,
      milestones,
    }));
  }

  #finding(entry: Entry, reflex: string): unknown {
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
      side: this.#needed(entry, 'bodySite', side),
      response: this.#needed(entry, 'valueCodeableConcept', response),
      state: state ?? 'not-recorded',
      note: exact(notes.join('\n') || undefined, note),
    };
  }
}

/** The entries of a bundle that hold a resource, with every address each can be referred to by. */
export function readEntries(bundle: Fields): ReadBundle {
  const problems: EntryProblem[] = [];
  const entries = listAt(bundle, 'entry').flatMap((one, index): Entry[] => {
    const resource = fieldsOf(at(one, 'resource'));
    const type = textAt(resource, 'resourceType');
    if (!resource || type === undefined) {
      problems.push({ entry: index + 1, type: 'entry', fault: 'missing', field: 'resource' });
      return [];
    }
    const id = textAt(resource, 'id');
    const identifiers = listAt(resource, 'identifier')
      .filter((identifier) => textAt(identifier, 'system') === codes.IS_ADDRESS)
      .flatMap((identifier) => textAt(identifier, 'value') ?? []);
    const fullUrl = textAt(one, 'fullUrl');
    const addresses = [
      ...(fullUrl ? [fullUrl] : []),
      ...(id ? [`${type}/${id}`] : []),
      ...identifiers,
    ];
    return [{ number: index + 1, type: type.slice(0, QUOTED), resource, addresses }];
  });
  const reader = new BundleReader(entries);
  const children = reader.read();
  return {
    children,
    leftOut: reader.leftOut,
    problems: [...problems, ...reader.problems],
  };
}
