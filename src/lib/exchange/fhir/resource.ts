/** What the resources of a child have in common: an address, a subject, our codes in words. */
import type { CodeableConcept, FhirResource, Reference } from 'fhir/r4';
import { plainText } from './carried.ts';
import * as codes from './codes.ts';
import type { Names } from './codeSystems.ts';

/** A resource with the address it is known by. */
export interface Addressed<R extends FhirResource = FhirResource> {
  address: string;
  resource: R;
}

/** What every resource of a child is written with. */
export interface Writing {
  id: string;
  names: Names;
  child: Reference;
}

export const concept = (
  system: codes.OwnSystem,
  code: string,
  names: Names,
  more: CodeableConcept['coding'] = [],
): CodeableConcept => {
  const display = names[system]?.[code];
  return {
    coding: [codes.own(system, code, display), ...more],
    ...(display ? { text: display } : {}),
  };
};

/** Who examined, by the name alone: it is no entry in anybody's register. */
export const who = (examiner: string): Reference | undefined => {
  const display = plainText(examiner);
  return display ? { display } : undefined;
};
