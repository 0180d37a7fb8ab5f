/**
 * How long the slowest file of each format took to read, for the table of faults: nothing is measured
 * unless a file to write it into is named (`FAULTS_LOG`), and no test fails by it.
 */
import { appendFileSync } from 'node:fs';
import { afterAll } from 'vitest';

const log = process.env.FAULTS_LOG;
/** Below this a file is quick enough not to be looked at again. */
const LOOK_MS = 50;
/** What is slow by itself is slow each time; what met a clearing of memory is not. */
const TIMES = 3;

/** Milliseconds of work since a moment: those of the processor, since a busy machine stops any reading. */
const work = (since: NodeJS.CpuUsage): number => {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1000;
};

const slowest = new Map<string, number>();
let reads = 0;

/** Reads a file once, or, where it is slower than any before it, a few times, of which the least counts. */
export function reading<T>(format: string, read: () => T): T {
  if (!log) return read();
  const began = process.cpuUsage();
  const result = read();
  reads += 1;
  const done = async (): Promise<void> => {
    let ms = work(began);
    const most = slowest.get(format) ?? 0;
    for (let time = 1; time < TIMES && ms > Math.max(LOOK_MS, most); time++) {
      const again = process.cpuUsage();
      const answer = read();
      if (answer instanceof Promise) await answer;
      ms = Math.min(ms, work(again));
    }
    slowest.set(format, Math.max(most, ms));
  };
  if (result instanceof Promise) return result.finally(done) as T;
  void done();
  return result;
}

if (log)
  afterAll(() => {
    appendFileSync(log, `read ${reads}\n`);
    for (const [format, ms] of slowest) appendFileSync(log, `slowest ${ms.toFixed(1)} ${format}\n`);
  });
