/**
 * Counts what properties try, for the table of faults. It stands before a test file only where a file to
 * write the count into is named (`FAULTS_LOG`).
 */
import { appendFileSync } from 'node:fs';
import fc from 'fast-check';
import { afterAll } from 'vitest';

let tried = 0;
fc.installGlobalPlugin(
  fc.beforeEach(() => {
    tried += 1;
  }),
);

afterAll(() => {
  const log = process.env.FAULTS_LOG;
  if (log) appendFileSync(log, `tried ${tried}\n`);
});
