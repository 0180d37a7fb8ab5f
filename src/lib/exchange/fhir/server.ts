/**
 * A FHIR R4 server as a shared store: found by identifier, compared, and written to only where nobody
 * else has changed anything meanwhile. Part of the connected build alone.
 */
import type { Bundle, BundleEntry } from 'fhir/r4';
import { IS_ADDRESS } from './codes.ts';
import { at, fieldsOf, listAt, textAt, type Fields } from './value.ts';
import type { Addressed } from './resource.ts';

const TIMEOUT_MS = 20_000;
const MAX_PAGES = 100;
const MAX_ANSWER = 20_000_000;
const PER_PAGE = '200';
/** What belongs to a child, and by which search parameter (HL7 FHIR R4, the search parameters of each). */
const PARTS = ['Encounter', 'Observation', 'Task', 'CarePlan'] as const;

export type ServerFault =
  | { code: 'address' }
  | { code: 'unreachable' }
  | { code: 'timeout' }
  | { code: 'not-allowed'; status: number }
  | { code: 'changed-meanwhile' }
  | { code: 'refused'; status: number; text: string | undefined }
  | { code: 'not-fhir' }
  | { code: 'too-large' }
  | { code: 'several'; count: number };

export class ServerError extends Error {
  readonly fault: ServerFault;
  constructor(fault: ServerFault) {
    super(fault.code);
    this.fault = fault;
  }
}

export interface Server {
  /** The base address, such as `https://records.clinic.test/fhir`. */
  base: string;
  /** A bearer token, kept in memory only; empty for none. */
  token: string;
  fetch?: typeof fetch;
  timeoutMs?: number;
}

/** A resource as the server holds it. */
export interface Held {
  type: string;
  id: string;
  version: string | undefined;
  resource: Fields;
}

/** A base address without what follows it: https anywhere, http only on this machine. */
export function readBase(text: string): string | undefined {
  try {
    const url = new URL(text.trim());
    const local = ['localhost', '127.0.0.1'].includes(url.hostname);
    const safe = url.protocol === 'https:' || (url.protocol === 'http:' && local);
    if (!safe || url.username || url.password || url.search || url.hash) return undefined;
    return url.href.replace(/\/+$/, '');
  } catch {
    return undefined;
  }
}

/** What a server says went wrong, in its own words. */
const saidIn = (body: unknown): string | undefined => {
  const issue = listAt(body, 'issue')[0];
  const text = textAt(at(issue, 'details'), 'text') ?? textAt(issue, 'diagnostics');
  return text?.slice(0, 200);
};

async function ask(
  server: Server,
  url: string,
  init: { method?: string; body?: unknown; headers?: Record<string, string> } = {},
): Promise<Fields> {
  const ended = AbortSignal.timeout(server.timeoutMs ?? TIMEOUT_MS);
  let response: Response;
  let text: string;
  try {
    response = await (server.fetch ?? fetch)(url, {
      method: init.method ?? 'GET',
      signal: ended,
      redirect: 'error', // a token goes to nobody but the server that was named
      credentials: 'omit',
      cache: 'no-store',
      headers: {
        accept: 'application/fhir+json',
        ...(init.body === undefined ? {} : { 'content-type': 'application/fhir+json' }),
        ...(server.token ? { authorization: `Bearer ${server.token}` } : {}),
        ...init.headers,
      },
      ...(init.body === undefined ? {} : { body: JSON.stringify(init.body) }),
    });
    text = await response.text();
  } catch {
    throw new ServerError({ code: ended.aborted ? 'timeout' : 'unreachable' });
  }
  if (text.length > MAX_ANSWER) throw new ServerError({ code: 'too-large' });
  let body: unknown;
  try {
    body = text === '' ? {} : JSON.parse(text);
  } catch {
    body = undefined;
  }
  const { status } = response;
  if (status === 401 || status === 403) throw new ServerError({ code: 'not-allowed', status });
  if (status === 409 || status === 412) throw new ServerError({ code: 'changed-meanwhile' });
  if (!response.ok) throw new ServerError({ code: 'refused', status, text: saidIn(body) });
  const fields = fieldsOf(body);
  if (!fields) throw new ServerError({ code: 'not-fhir' });
  return fields;
}

function heldOf(resource: unknown): Held[] {
  const fields = fieldsOf(resource);
  const [type, id] = [textAt(fields, 'resourceType'), textAt(fields, 'id')];
  if (!fields || !type || !id) return [];
  return [{ type, id, version: textAt(at(fields, 'meta'), 'versionId'), resource: fields }];
}

/** Every resource that a search finds, page by page; a next page elsewhere than on the server is not asked. */
async function search(
  server: Server,
  type: string,
  query: Readonly<Record<string, string>>,
): Promise<Held[]> {
  const found: Held[] = [];
  const parameters = new URLSearchParams({ ...query, _count: PER_PAGE });
  let url: string | undefined = `${server.base}/${type}?${parameters.toString()}`;
  for (let page = 0; url !== undefined && page < MAX_PAGES; page++) {
    const bundle: Fields = await ask(server, url);
    if (textAt(bundle, 'resourceType') !== 'Bundle') throw new ServerError({ code: 'not-fhir' });
    const answers = listAt(bundle, 'entry').flatMap((entry) => heldOf(at(entry, 'resource')));
    found.push(...answers.filter((one) => one.type === type));
    const next = listAt(bundle, 'link').find((link) => textAt(link, 'relation') === 'next');
    const following = textAt(next, 'url');
    url =
      following !== undefined && new URL(following, server.base).href.startsWith(`${server.base}/`)
        ? new URL(following, server.base).href
        : undefined;
  }
  return found;
}

/** The children a server knows by an identifier: `system|value`, or a value alone. */
export const findPatients = (server: Server, identifier: string): Promise<Held[]> =>
  search(server, 'Patient', { identifier });

/** A child with all that belongs to it. */
export async function fetchChild(server: Server, patient: Held): Promise<Held[]> {
  const parts: Held[] = [];
  for (const type of PARTS)
    parts.push(...(await search(server, type, { patient: `Patient/${patient.id}` })));
  return [patient, ...parts];
}

/** What was fetched as a bundle, to be opened like one from a file. */
export const bundleOf = (held: readonly Held[]): unknown => ({
  resourceType: 'Bundle',
  type: 'collection',
  entry: held.map(({ resource }) => ({ resource })),
});

/** The address of ours that a resource goes by. */
export const addressIn = (resource: unknown): string | undefined =>
  listAt(resource, 'identifier')
    .filter((one) => textAt(one, 'system') === IS_ADDRESS)
    .map((one) => textAt(one, 'value'))[0];

/** A value as text, with the fields of every object in one order. */
function canonical(value: unknown, name: (reference: string) => string): unknown {
  if (Array.isArray(value)) return value.map((one) => canonical(one, name));
  const fields = fieldsOf(value);
  if (!fields) return value;
  return Object.fromEntries(
    Object.keys(fields)
      .sort()
      .map((key) => {
        const part = fields[key];
        return [
          key,
          key === 'reference' && typeof part === 'string' ? name(part) : canonical(part, name),
        ];
      }),
  );
}

/** What a resource says, whoever holds it: without id, version and what a server adds to it. */
export function contentOf(resource: object, name: (reference: string) => string): string {
  const { meta, ...fields } = resource as Fields;
  const rest = Object.fromEntries(
    Object.entries(fields).filter(([name]) => name !== 'id' && name !== 'text'),
  );
  const kept = Object.fromEntries(
    ['security', 'tag'].flatMap((key) => {
      const list = listAt(meta, key);
      return list.length > 0 ? [[key, list]] : [];
    }),
  );
  return JSON.stringify(canonical({ ...rest, ...kept }, name));
}

/** Creates the child on the server unless it is there: two at once make one. */
export async function createPatient(
  server: Server,
  { address, resource }: Addressed,
): Promise<Held | undefined> {
  const identifier = new URLSearchParams({ identifier: `${IS_ADDRESS}|${address}` }).toString();
  const body = await ask(server, `${server.base}/Patient`, {
    method: 'POST',
    body: resource,
    headers: { 'if-none-exist': identifier, prefer: 'return=representation' },
  });
  return heldOf(body)[0];
}

/** Sends changes as one transaction: all of them are made, or none (HL7 FHIR R4, "transaction"). */
export async function transact(server: Server, entry: BundleEntry[]): Promise<void> {
  const bundle: Bundle = { resourceType: 'Bundle', type: 'transaction', entry };
  const answer = await ask(server, server.base, { method: 'POST', body: bundle });
  for (const one of listAt(answer, 'entry')) {
    const status = textAt(at(one, 'response'), 'status') ?? '';
    if (/^(?:409|412)/.test(status)) throw new ServerError({ code: 'changed-meanwhile' });
    if (!/^2/.test(status))
      throw new ServerError({
        code: 'refused',
        status: Number(status.slice(0, 3)) || 0,
        text: saidIn(at(at(one, 'response'), 'outcome')),
      });
  }
}
