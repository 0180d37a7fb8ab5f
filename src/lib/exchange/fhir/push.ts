/** Bringing a child's record to a server, without overwriting what somebody else has changed there. */
import type { BundleEntry, FhirResource } from 'fhir/r4';
import { v4 } from 'uuid';
import { IS_ADDRESS } from './codes.ts';
import {
  addressIn,
  contentOf,
  createPatient,
  fetchChild,
  findPatients,
  ServerError,
  transact,
  type Held,
  type Server,
} from './server.ts';
import type { Addressed } from './resource.ts';

/** The versions that were last seen on the server, by address: what they hold has been looked at here. */
export type Seen = Readonly<Record<string, string>>;

/** A part that two have changed. */
export interface Clash {
  type: string;
  /** The resource here; undefined when it was taken away here. */
  ours: FhirResource | undefined;
  why: 'changed-there' | 'removed-there' | 'not-seen';
}

export interface Pushed {
  seen: Seen;
  created: number;
  updated: number;
  removed: number;
  same: number;
}

/** What a push comes to before anything is sent. */
interface Plan {
  entries: BundleEntry[];
  clashes: Clash[];
  created: number;
  updated: number;
  removed: number;
  same: number;
}

const ifMatch = ({ version }: Held): { ifMatch?: string } =>
  version === undefined ? {} : { ifMatch: `W/"${version}"` };

/** A copy in which what the server holds is referred to by its place there. */
const placed = (resource: FhirResource, places: ReadonlyMap<string, string>): FhirResource =>
  JSON.parse(JSON.stringify(resource), (key, value: unknown) =>
    key === 'reference' && typeof value === 'string' ? (places.get(value) ?? value) : value,
  ) as FhirResource;

function planPush(
  base: string,
  ours: readonly Addressed[],
  held: readonly Held[],
  seen: Seen,
): Plan {
  const theirs = new Map<string, Held>();
  for (const one of held) {
    const address = addressIn(one.resource);
    if (address) theirs.set(address, one);
  }
  const places = new Map([...theirs].map(([address, { type, id }]) => [address, `${type}/${id}`]));
  const addresses = new Map([...places].map(([address, place]) => [place, address]));
  const name = (reference: string): string => addresses.get(reference) ?? reference;
  // what is new goes by a passing address: a server may put its own in the place of one wherever it stands,
  // and the identifier has to stay as it is
  const passing = new Map(
    ours
      .filter(({ address }) => !theirs.has(address))
      .map(({ address }) => [address, `urn:uuid:${v4()}`]),
  );
  const where = new Map([...places, ...passing]);
  const plan: Plan = { entries: [], clashes: [], created: 0, updated: 0, removed: 0, same: 0 };
  const clash = (type: string, one: FhirResource | undefined, why: Clash['why']): void => {
    plan.clashes.push({ type, ours: one, why });
  };
  ours.forEach(({ address, resource }, index) => {
    const there = theirs.get(address);
    const type = resource.resourceType;
    if (!there) {
      if (Object.hasOwn(seen, address)) return clash(type, resource, 'removed-there');
      plan.created++;
      plan.entries.push({
        fullUrl: passing.get(address) ?? address,
        resource: placed(resource, where),
        request: { method: 'POST', url: type },
      });
      return undefined;
    }
    const isSame = contentOf(resource, name) === contentOf(there.resource, name);
    if (isSame) plan.same++;
    else if (!Object.hasOwn(seen, address)) return clash(type, resource, 'not-seen');
    else if (seen[address] !== there.version) return clash(type, resource, 'changed-there');
    else plan.updated++;
    // the child itself is written with every push: its version is the lock against one made at the same time
    if (isSame && index > 0) return undefined;
    plan.entries.push({
      fullUrl: `${base}/${type}/${there.id}`,
      resource: { ...placed(resource, where), id: there.id },
      request: { method: 'PUT', url: `${type}/${there.id}`, ...ifMatch(there) },
    });
    return undefined;
  });
  const here = new Set(ours.map(({ address }) => address));
  for (const [address, there] of theirs) {
    if (here.has(address) || !Object.hasOwn(seen, address)) continue;
    if (seen[address] !== there.version) clash(there.type, undefined, 'changed-there');
    else {
      plan.removed++;
      plan.entries.push({
        request: { method: 'DELETE', url: `${there.type}/${there.id}`, ...ifMatch(there) },
      });
    }
  }
  return plan;
}

/** The versions of what was fetched, by address. */
export const seenIn = (held: readonly Held[]): Seen =>
  Object.fromEntries(
    held.flatMap(({ resource, version }) => {
      const address = addressIn(resource);
      return address && version ? [[address, version]] : [];
    }),
  );

/**
 * Pushes a record's resources, the child first. Where anything clashes nothing is sent, and the clashes
 * are told. Throws a ServerError when the server cannot be asked or refuses.
 */
export async function push(
  server: Server,
  ours: readonly Addressed[],
  seen: Seen,
): Promise<Pushed | { clashes: readonly Clash[] }> {
  const [child] = ours;
  if (child?.resource.resourceType !== 'Patient') throw new ServerError({ code: 'not-fhir' });
  const identifier = `${IS_ADDRESS}|${child.address}`;
  const found = await findPatients(server, identifier);
  if (found.length > 1) throw new ServerError({ code: 'several', count: found.length });
  const known = found[0];
  // one that was here before and is gone was removed by somebody: it is not made anew unasked
  if (!known && Object.hasOwn(seen, child.address))
    return { clashes: [{ type: 'Patient', ours: child.resource, why: 'removed-there' }] };
  const patient = known ?? (await createPatient(server, child));
  if (!patient) throw new ServerError({ code: 'not-fhir' });
  const before = await fetchChild(server, patient);
  const plan = planPush(server.base, ours, before, seen);
  if (plan.clashes.length > 0) return { clashes: plan.clashes };
  if (plan.created + plan.updated + plan.removed > 0) await transact(server, plan.entries);
  const [after] = await findPatients(server, identifier);
  const held = after ? await fetchChild(server, after) : [];
  const created = plan.created + (known ? 0 : 1);
  const same = plan.same - (known ? 0 : 1);
  return { seen: seenIn(held), created, updated: plan.updated, removed: plan.removed, same };
}
