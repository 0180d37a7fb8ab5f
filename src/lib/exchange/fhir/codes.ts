/**
 * What things are called in FHIR R4. Codes of others stand here only where a published page shows them;
 * everything else is our own, in code systems that `codeSystems.ts` writes out.
 */
import type { Coding } from 'fhir/r4';

/** Our own code systems, by what they name. */
export const OWN_SYSTEMS = {
  reflex: 'urn:tidemark:reflex',
  milestone: 'urn:tidemark:milestone',
  response: 'urn:tidemark:response',
  state: 'urn:tidemark:state',
  side: 'urn:tidemark:side',
  dating: 'urn:tidemark:dating',
  record: 'urn:tidemark:record',
} as const;

export type OwnSystem = keyof typeof OWN_SYSTEMS;

/** The parts of a record that have no code of their own elsewhere. */
export const PARTS = {
  visit: 'Visit',
  'visit-note': 'Note of a visit',
  state: 'State of the infant',
  examination: 'Elicited and watched at an examination',
  question: 'Question to the team',
  decision: 'Decision of the team',
  sheet: 'Sheet for a visit to come',
} as const;

export type Part = keyof typeof PARTS;

/** Carries a field of the record that FHIR has no place for: its name, and its value as JSON. */
export const FIELD = 'urn:tidemark:field';

/** At which place among its like a part stands, from 0: a server gives them back in any order. */
export const PLACE = 'urn:tidemark:place';

/** Before the name of a field of the child itself, where the record's own fields stand beside it. */
export const OF_CHILD = 'child.';

/** Tags by which children are found again. */
export const TAGS = 'urn:tidemark:tag';

/** The name a child is kept under, so that the same child goes by the same address on every machine. */
export const CHILD = 'urn:tidemark:child';

/** The system of identifiers that are addresses themselves (HL7 FHIR R4, "Identifier systems"). */
export const IS_ADDRESS = 'urn:ietf:rfc:3986';

/** Units by their Unified Code for Units of Measure. */
export const UNITS = 'http://unitsofmeasure.org';

/**
 * LOINC, as HL7's guides use them: the estimated gestational age of a birth (guide for birth and fetal
 * death reporting, profile "gestational age at delivery"; in days in the Portuguese birth notice), and
 * the estimated date of delivery (International Patient Summary, "pregnancy expected delivery date").
 */
export const LOINC = 'http://loinc.org';
export const GESTATION: Coding = {
  system: LOINC,
  code: '11884-4',
  display: 'Gestational age Estimated',
};
export const DUE: Coding = { system: LOINC, code: '11778-8', display: 'Delivery date Estimated' };

/** SNOMED CT's qualifiers, as HL7 Europe's value set of body structure laterality prints them. */
export const SNOMED = 'http://snomed.info/sct';
export const LATERALITY: Readonly<Record<string, Coding>> = {
  left: { system: SNOMED, code: '7771000', display: 'Left' },
  right: { system: SNOMED, code: '24028007', display: 'Right' },
};

/** FHIR R4's observation category for what is found by examining. */
export const EXAM: Coding = {
  system: 'http://terminology.hl7.org/CodeSystem/observation-category',
  code: 'exam',
  display: 'Exam',
};

/** HL7's label for test health data (code system v3-ActReason): an invented child. */
export const TEST_DATA: Coding = {
  system: 'http://terminology.hl7.org/CodeSystem/v3-ActReason',
  code: 'HTEST',
  display: 'test health data',
};

/** A code in FHIR: no blank at either end, and single ones within. */
export const isCode = (text: string): boolean => /^[^\s]+( [^\s]+)*$/.test(text);

export const own = (system: OwnSystem, code: string, display?: string): Coding => ({
  system: OWN_SYSTEMS[system],
  code,
  ...(display ? { display } : {}),
});

export const part = (name: Part): Coding => own('record', name, PARTS[name]);
