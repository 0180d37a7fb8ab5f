/** What the codes of a record are called, for whoever reads them elsewhere. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Names } from './fhir/codeSystems.ts';
import { sides } from '../words/en/atlas.ts';
import { datings, responses, states } from '../words/en/case.ts';

export const codeNames = (atlas: Atlas): Names => ({
  reflex: Object.fromEntries([...atlas.reflexes.values()].map(({ id, name }) => [id, name])),
  milestone: Object.fromEntries([...atlas.milestones.values()].map(({ id, name }) => [id, name])),
  response: responses,
  state: states,
  side: sides,
  dating: datings,
});
