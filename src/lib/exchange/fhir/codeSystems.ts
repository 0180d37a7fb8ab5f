/** Our own code systems as FHIR resources, so that a bundle says what its codes mean. */
import type { CodeSystem } from 'fhir/r4';
import { OWN_SYSTEMS, PARTS, type OwnSystem } from './codes.ts';
import { addressOf } from './names.ts';
import type { Addressed } from './resource.ts';

/** What each code is called, for people. */
export type Names = Readonly<Partial<Record<OwnSystem, Readonly<Record<string, string>>>>>;

const ABOUT: Readonly<Record<OwnSystem, { name: string; title: string }>> = {
  reflex: { name: 'TidemarkReflex', title: 'Infant reflexes and postural reactions' },
  milestone: { name: 'TidemarkMilestone', title: 'Motor milestones' },
  response: { name: 'TidemarkResponse', title: 'Responses to eliciting a reflex' },
  state: { name: 'TidemarkState', title: 'States of an infant, in words' },
  side: { name: 'TidemarkSide', title: 'Sides of a finding' },
  dating: { name: 'TidemarkDating', title: 'Ways of dating a pregnancy' },
  record: { name: 'TidemarkRecord', title: 'Parts of a record' },
};

/** One resource for each system. Reflexes are a fragment: a reader can add some of their own. */
export function codeSystems(names: Names): Addressed<CodeSystem>[] {
  const all: Names = { ...names, record: PARTS };
  return (Object.keys(OWN_SYSTEMS) as OwnSystem[]).map((system) => {
    const concept = Object.entries(all[system] ?? {}).map(([code, display]) => ({ code, display }));
    return {
      address: addressOf('code-system', system),
      resource: {
        resourceType: 'CodeSystem',
        url: OWN_SYSTEMS[system],
        ...ABOUT[system],
        status: 'active',
        caseSensitive: true,
        content: system === 'reflex' ? 'fragment' : 'complete',
        ...(concept.length > 0 ? { concept } : {}),
      },
    };
  });
}
