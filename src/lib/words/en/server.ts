/** English for the page that pushes to a FHIR server and fetches from it. */
import type { Clash, Pushed } from '../../exchange/fhir/push.ts';
import type { ServerFault } from '../../exchange/fhir/server.ts';

const WHY: Readonly<Record<Clash['why'], string>> = {
  'changed-there': 'was changed on the server since it was last seen here',
  'removed-there': 'was removed from the server',
  'not-seen': 'is on the server with another content, and was never seen here',
};

export const server = {
  title: 'A FHIR server',
  lead: 'Records leave this machine only when you press a button below, and only for the server you name. The server’s own rules say who may read them.',
  base: 'Address of the server',
  baseHelp: 'The base of its FHIR R4 interface, beginning with https://',
  badBase:
    'Write the whole address, beginning with https:// (http:// only on this machine), without a name or password in it.',
  token: 'Access token',
  tokenHelp: 'A bearer token, if the server asks for one. It is kept until the page is closed.',
  pushTitle: 'Push the open child',
  push: (label: string): string => `Push ${label}`,
  noChild: 'No child is open.',
  pushHelp:
    'Changes by somebody else on the server are not overwritten: then nothing is sent, and the conflicts are listed.',
  fetchTitle: 'Fetch',
  identifier: 'Identifier',
  identifierHelp:
    'As the server knows the child: a value, or system|value. Left empty, the open child is looked for.',
  fetch: 'Fetch',
  working: 'Asking the server…',
  notFound: 'The server knows no child by this identifier.',
  several: (n: number): string =>
    `The server knows ${n} children by this identifier; none is fetched.`,
  pushed: ({ created, updated, removed, same }: Pushed): string =>
    `Pushed: ${created} new, ${updated} changed, ${removed} removed, ${same} the same.`,
  clashes: 'Nothing was sent, since the server holds data not yet seen here:',
  clash: ({ type }: Clash, what: string, why: Clash['why']): string =>
    `${type}${what ? `, ${what}` : ''}: ${WHY[why]}.`,
  afterClash:
    'Fetch the child, review the differences, and push again. Fetched data counts as seen.',
};

/** Why a server could not be used, with what to correct. */
export function faultSentence(fault: ServerFault): string {
  switch (fault.code) {
    case 'address':
      return server.badBase;
    case 'unreachable':
      return 'The server cannot be reached. Check the address and the network; the server must also allow this page to ask it (CORS).';
    case 'timeout':
      return 'The server did not answer in time. Try again later; if something was sent, fetch first and look whether it arrived.';
    case 'not-allowed':
      return `The server does not allow this (status ${fault.status}). Check the access token and what it permits.`;
    case 'changed-meanwhile':
      return 'Somebody has changed the child on the server at the same moment. Nothing of theirs was overwritten. Fetch, look, and push again.';
    case 'refused':
      return `The server refused (status ${fault.status})${fault.text ? `: ${fault.text}` : ''}. Nothing has changed here.`;
    case 'not-fhir':
      return 'The address does not lead to a FHIR R4 server. Check it.';
    case 'too-large':
      return 'The server’s answer is too large to be read. Name one child by its identifier.';
    case 'several':
      return `The server holds this child ${fault.count} times. Correct that on the server first.`;
  }
}
