/** A short form of the fault test: the browser is killed while it writes, and started again. */
import { kills } from '../../faults/kills.js';
import { expect, test } from '@playwright/test';

test('killed while it writes, the browser has all that was said to be saved', async ({
  baseURL,
}) => {
  const sum = await kills({ site: baseURL!, times: 5, seed: 3 });
  expect(sum).toMatchObject({ tried: 5, lost: 0, torn: 0 });
  expect(sum.confirmed).toBeGreaterThanOrEqual(5);
});
