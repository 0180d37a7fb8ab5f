/** The connected build against a FHIR server: push, another's change, fetch. */
import { test as loud } from '@playwright/test';
import { preview, type PreviewServer } from 'vite';
import { startFhirServer, type TestServer } from '../../support/fhirServer.ts';
import { expect, test } from '../support/page.ts';
import { accessibilityFaults } from '../support/accessibility.ts';
import { bundleWith, HOSTILE, line, PAYLOADS, PLAIN } from '../../support/payloads.ts';
import { alive, shows, watched } from '../support/payloads.ts';

let fhir: TestServer;
let site: PreviewServer;

test.beforeAll(async () => {
  fhir = await startFhirServer('letmein');
  site = await preview({
    configFile: false,
    appType: 'mpa',
    build: { outDir: 'dist-connected' },
    preview: { host: '127.0.0.1', port: 0 },
  });
});

test.afterAll(async () => {
  await fhir.close();
  await site.close();
});

test(
  "a child is pushed, another's change is not overwritten, and what is there is fetched",
  { tag: '@thorough' },
  async ({ page }) => {
    const base = site.resolvedUrls?.local[0] ?? '';
    await page.goto(`${base}#/server`);
    await expect(page.getByRole('heading', { name: 'A FHIR server' })).toBeVisible();
    expect(await accessibilityFaults(page)).toEqual([]);

    const push = page.getByRole('button', { name: 'Push Kestrel' });
    await page.getByLabel('Address of the server').fill('http://elsewhere.test/fhir');
    await push.click();
    await expect(page.getByText('Write the whole address, beginning with https://')).toBeVisible();

    await page.getByLabel('Address of the server').fill(fhir.base);
    await page.getByLabel('Access token').fill('letmein');
    await push.click();
    await expect(
      page.getByText(/^Pushed: \d+ new, 0 changed, 0 removed, 0 the same/),
    ).toBeVisible();
    await push.click();
    await expect(
      page.getByText(/^Pushed: 0 new, 0 changed, 0 removed, \d+ the same/),
    ).toBeVisible();

    const { entry = [] } = await fhir.repo.search({ resourceType: 'Patient' });
    await fhir.repo.updateResource({ ...entry[0]!.resource!, active: false } as never);
    await push.click();
    await expect(page.getByText('Nothing was sent')).toBeVisible();
    await expect(page.getByText('Patient: was changed on the server')).toBeVisible();

    await page.getByRole('button', { name: 'Fetch' }).click();
    await expect(page.getByText('here already, and different')).toBeVisible();
    // what differs is said, nothing is replaced unless it is asked for, and undo has the older one
    await expect(page.getByRole('row', { name: 'Archive nothing yes' })).toBeVisible();
    await expect(page.getByRole('radio', { name: 'Keep mine' })).toBeChecked();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page.getByText('Nothing is selected.')).toBeVisible();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.getByRole('radio', { name: 'Use theirs' }).check();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByText('Undone: everything is as it was before.')).toBeVisible();
    expect(await page.evaluate(() => JSON.stringify(localStorage))).not.toContain('letmein');
  },
);

/** A child put on the server by somebody else, all of whose texts are a payload. */
async function putThere(payload: string, identifier: string): Promise<void> {
  const [patient, ...parts] = bundleWith([payload]).entry.map(({ resource }) => resource);
  const { id } = (await fhir.repo.createResource({
    ...patient,
    id: undefined,
    identifier: [{ value: identifier }],
  } as never)) as { id: string };
  for (const part of parts)
    await fhir.repo.createResource({ ...part, subject: { reference: `Patient/${id}` } } as never);
}

// a refusal by the server is told in the console by the browser itself
loud(
  'script in what a server answers is refused, or shown as the text it is',
  { tag: '@thorough' },
  async ({ page }) => {
    const base = site.resolvedUrls?.local[0] ?? '';
    const signs = await watched(page, [base, fhir.base]);
    const asked = async (): Promise<void> => {
      await page.goto(`${base}#/server`);
      await page.getByLabel('Address of the server').fill(fhir.base);
      await page.getByLabel('Access token').fill('letmein');
    };
    // one that is kept and one that is refused, and every one of them in the thorough run
    const tried = process.env.THOROUGH ? PAYLOADS : [PLAIN[0]!, HOSTILE[0]!];
    let taken = 0;
    for (const [n, payload] of tried.entries()) {
      await asked();
      fhir.instead = {
        status: 500,
        body: JSON.stringify({
          resourceType: 'OperationOutcome',
          issue: [{ diagnostics: payload }],
        }),
      };
      await page.getByRole('button', { name: 'Fetch' }).click();
      await expect.poll(() => shows(page, payload)).toBe(true);
      expect(await alive(page)).toEqual([]);

      await putThere(payload, `hostile-${n}`);
      await page.getByLabel('Identifier').fill(`hostile-${n}`);
      await page.getByRole('button', { name: 'Fetch' }).click();
      const take = page.getByRole('button', { name: 'Save', exact: true });
      await expect(take.or(page.getByText(/markup or script/).first())).toBeVisible();
      expect(await alive(page), payload).toEqual([]);
      if ((await take.count()) > 0) {
        taken += 1;
        expect(await shows(page, line(payload))).toBe(true);
        await take.click();
        await page.getByRole('heading', { name: line(payload) }).waitFor();
        expect(await alive(page), payload).toEqual([]);
      }
      expect(signs(), payload).toEqual([]);
    }
    expect(taken).toBe(tried.filter((payload) => PLAIN.includes(payload)).length);
  },
);
