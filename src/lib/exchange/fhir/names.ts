/** Addresses of the parts of a record: the same part has the same address in every bundle. */
import type { Identifier } from 'fhir/r4';
import { v5 } from 'uuid';
import { IS_ADDRESS } from './codes.ts';

/** Ours, drawn at random once: it keeps our addresses apart from everybody else's. */
const SPACE = 'b3a86a0e-6f1c-4c0b-9a57-2f6f6d0f8e41';

/** The address of a part of the child kept under an id (RFC 9562, version 5). */
export const addressOf = (id: string, ...path: readonly string[]): string =>
  `urn:uuid:${v5(JSON.stringify([id, ...path]), SPACE)}`;

export const identifierOf = (address: string): Identifier => ({
  system: IS_ADDRESS,
  value: address,
});
