/** A child's record as FHIR R4 resources. What maps to what is listed in docs/formats.md. */
import type { Bundle, Encounter, Observation, Patient } from 'fhir/r4';
import { rawOf } from '../../case/raw.ts';
import type { RawCase, RawFinding, RawVisit } from '../../case/shape.ts';
import { findingKey, visitKey, type Case } from '../../case/case.ts';
import type { Side } from '../../atlas/types.ts';
import { carried, placed, plainText } from './carried.ts';
import * as codes from './codes.ts';
import { codeSystems, type Names } from './codeSystems.ts';
import { addressOf, identifierOf } from './names.ts';
import { sheetFits, sheetPlan, tasks } from './plans.ts';
import { concept, who, type Addressed, type Writing } from './resource.ts';

function patient(raw: RawCase, id: string, address: string): Patient {
  const { child } = raw;
  const label = plainText(child.label);
  const tags = raw.tags ?? [];
  const meta = {
    ...(child.invented ? { security: [codes.TEST_DATA] } : {}),
    ...(tags.length > 0
      ? {
          tag: tags.map((tag) => ({
            system: codes.TAGS,
            ...(codes.isCode(tag) ? { code: tag } : {}),
            display: plainText(tag) ?? tag,
          })),
        }
      : {}),
  };
  const exactTags = tags.every((tag) => plainText(tag) === tag);
  const { extension: ofCase = [] } = carried(raw, [
    ...['format', 'version', 'child', 'visits', 'question', 'decisions', 'archived'],
    ...(exactTags ? ['tags'] : []),
    ...(sheetFits(raw.sheet) ? ['sheet'] : []),
  ]);
  const { extension: ofChild = [] } = carried(
    child,
    ['label', 'born', 'gestation', 'due', 'dating', 'invented'],
    { label: child.label },
    codes.OF_CHILD,
  );
  const extension = [...ofCase, ...ofChild];
  return {
    resourceType: 'Patient',
    ...(Object.keys(meta).length > 0 ? { meta } : {}),
    ...(extension.length > 0 ? { extension } : {}),
    identifier: [identifierOf(address), { system: codes.CHILD, value: id }],
    active: raw.archived !== true,
    ...(label ? { name: [{ text: label }] } : {}),
    birthDate: child.born,
  };
}

/** Gestation and due date: what the record gives, and the other, marked as derived from it. */
function dating(record: Case, { id, names, child }: Writing): Addressed<Observation>[] {
  const { birth, datedBy } = record.child;
  const address = { gestation: addressOf(id, 'gestation'), due: addressOf(id, 'due') };
  const common = (one: 'gestation' | 'due'): Omit<Observation, 'code'> => ({
    resourceType: 'Observation',
    identifier: [identifierOf(address[one])],
    status: 'final',
    subject: child,
    effectiveDateTime: birth.born,
    ...(birth.dating === 'unknown' ? {} : { method: concept('dating', birth.dating, names) }),
    ...(datedBy === one ? {} : { derivedFrom: [{ reference: address[datedBy] }] }),
  });
  return [
    {
      address: address.gestation,
      resource: {
        ...common('gestation'),
        code: { coding: [codes.GESTATION] },
        valueQuantity: {
          value: birth.gestationalDays,
          unit: 'days',
          system: codes.UNITS,
          code: 'd',
        },
      },
    },
    {
      address: address.due,
      resource: {
        ...common('due'),
        code: { coding: [codes.DUE] },
        valueDateTime: birth.due,
      },
    },
  ];
}

function finding(
  raw: RawFinding,
  place: number,
  visit: RawVisit,
  encounter: string,
  { id, names, child }: Writing,
): Addressed<Observation> {
  const key = findingKey({ reflex: raw.reflex, side: raw.side as Side });
  const address = addressOf(id, 'visit', keyOf(visit), key);
  const { side } = raw;
  const laterality = codes.LATERALITY[side];
  const response = concept('response', raw.response, names);
  const note = plainText(raw.note);
  const examiner = who(visit.examiner);
  return {
    address,
    resource: {
      resourceType: 'Observation',
      ...placed(
        place,
        carried(raw, ['reflex', 'side', 'response', 'state', 'note'], { note: raw.note }),
      ),
      identifier: [identifierOf(address)],
      status: 'final',
      category: [{ coding: [codes.EXAM] }],
      code: concept('reflex', raw.reflex, names),
      subject: child,
      encounter: { reference: encounter },
      effectiveDateTime: visit.on,
      ...(examiner ? { performer: [examiner] } : {}),
      ...(raw.response === 'not-assessable'
        ? { dataAbsentReason: response }
        : { valueCodeableConcept: response }),
      ...(note ? { note: [{ text: note }] } : {}),
      bodySite: concept('side', side, names, laterality ? [laterality] : []),
      method: { coding: [codes.part('examination')] },
      ...(raw.state === 'not-recorded'
        ? {}
        : {
            component: [
              {
                code: { coding: [codes.part('state')] },
                valueCodeableConcept: concept('state', raw.state, names),
              },
            ],
          }),
    },
  };
}

const keyOf = (visit: RawVisit): string =>
  visitKey({ on: visit.on as Parameters<typeof visitKey>[0]['on'], examiner: visit.examiner });

function visitResources(visit: RawVisit, writing: Writing): Addressed[] {
  const { id, child, names } = writing;
  const key = keyOf(visit);
  const address = addressOf(id, 'visit', key);
  const examiner = who(visit.examiner);
  const encounter: Encounter = {
    resourceType: 'Encounter',
    ...carried(visit, ['on', 'examiner', 'note', 'findings', 'milestones'], {
      note: visit.note,
      examiner: visit.examiner,
    }),
    identifier: [identifierOf(address)],
    status: 'finished',
    // the class is required, and whether the child was an inpatient is not known
    class: codes.part('visit'),
    subject: child,
    ...(examiner ? { participant: [{ individual: examiner }] } : {}),
    period: { start: visit.on, end: visit.on },
  };
  const seen = (what: string): Omit<Observation, 'code'> => ({
    resourceType: 'Observation',
    identifier: [identifierOf(addressOf(id, 'visit', key, what))],
    status: 'final',
    subject: child,
    encounter: { reference: address },
    effectiveDateTime: visit.on,
    ...(examiner ? { performer: [examiner] } : {}),
  });
  const note = plainText(visit.note);
  const noted: Addressed<Observation>[] = note
    ? [
        {
          address: addressOf(id, 'visit', key, 'note'),
          resource: {
            ...seen('note'),
            code: { coding: [codes.part('visit-note')] },
            valueString: note,
          },
        },
      ]
    : [];
  const milestones = visit.milestones.map((milestone, place): Addressed<Observation> => {
    const what = `milestone ${milestone.milestone}`;
    return {
      address: addressOf(id, 'visit', key, what),
      resource: {
        ...seen(what),
        ...placed(place, carried(milestone, ['milestone', 'seen'])),
        category: [{ coding: [codes.EXAM] }],
        code: concept('milestone', milestone.milestone, names),
        valueBoolean: milestone.seen,
      },
    };
  });
  return [
    { address, resource: encounter },
    ...visit.findings.map((raw, place) => finding(raw, place, visit, address, writing)),
    ...milestones,
    ...noted,
  ];
}

/** Every resource of a record: the child, the dating, visits with their findings, what surrounds them. */
export function resourcesOf(id: string, record: Case, names: Names): Addressed[] {
  const raw = rawOf(record);
  const address = addressOf(id);
  const writing: Writing = { id, names, child: { reference: address } };
  return [
    { address, resource: patient(raw, id, address) },
    ...dating(record, writing),
    ...raw.visits.flatMap((visit) => visitResources(visit, writing)),
    ...tasks(raw, writing),
    ...sheetPlan(raw, writing),
  ];
}

/**
 * A record as a bundle of the kind *collection*: a file to be carried, which asks nothing of whoever
 * reads it. The code systems it uses come with it. `now` is an instant, ISO 8601 with its zone.
 */
export function caseBundle(id: string, record: Case, names: Names, now: string): Bundle {
  const resources = [...resourcesOf(id, record, names), ...codeSystems(names)];
  return {
    resourceType: 'Bundle',
    type: 'collection',
    timestamp: now,
    entry: resources.map(({ address, resource }) => ({ fullUrl: address, resource })),
  };
}
