/** Faults that are tried by tests of their own: run once more, and counted. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** @typedef {{ tried: string; times: number; lost: string; slowest?: string; failed: boolean }} Row */

/** No file may stop whoever opens it for longer, in milliseconds. */
export const MOST_MS = 1000;

/** What the tests wrote down: how many they tried, and the slowest reading of each format. */
function readLog(/** @type {string} */ log) {
  let [tried, reads] = [0, 0];
  /** @type {[format: string, ms: number][]} */
  const slowest = [];
  for (const line of log.trim().split('\n')) {
    const [what, number = '0', ...format] = line.split(' ');
    if (what === 'tried') tried += Number(number);
    else if (what === 'read') reads += Number(number);
    else if (what === 'slowest') slowest.push([format.join(' '), Number(number)]);
  }
  return { times: tried || reads, slowest };
}

/**
 * A file of property tests: how many cases they tried, how long the slowest file of each format took
 * where that was measured, and whether one of them failed or took too long.
 * @param {string} tried @param {string} file @param {string} nothing what is said where none failed
 * @returns {Row}
 */
export function properties(tried, file, nothing) {
  const folder = mkdtempSync(join(tmpdir(), 'tidemark-faults-'));
  const log = join(folder, 'tried');
  try {
    const { status } = spawnSync('npx', ['vitest', 'run', file, '--silent'], {
      env: { ...process.env, FAULTS_LOG: log, THOROUGH: '1' },
      stdio: ['ignore', 'ignore', 'inherit'],
    });
    const { times, slowest } = readLog(readFileSync(log, 'utf8'));
    const isSlow = slowest.some(([, ms]) => ms > MOST_MS);
    const hasFailed = status !== 0 || times === 0;
    return {
      tried,
      times,
      lost: hasFailed ? `failed: see ${file}` : nothing,
      slowest: slowest.map(([format, ms]) => `${format} ${Math.ceil(ms)} ms`).join(', '),
      failed: hasFailed || isSlow,
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Tests in a browser, by a part of their titles: how many were run, and whether one failed.
 * @param {string} tried @param {string} file @param {string} titles @param {string} nothing
 * @param {number} port that the site is served on for them
 * @returns {Row}
 */
export function pages(tried, file, titles, nothing, port) {
  const { status, stdout } = spawnSync(
    'npx',
    ['playwright', 'test', file, '-g', titles, '--reporter=json'],
    {
      encoding: 'utf8',
      env: { ...process.env, TEST_PORT: String(port) },
      stdio: ['ignore', 'pipe', 'inherit'],
      maxBuffer: 1e8,
    },
  );
  /** @type {{ stats: { expected: number } }} */
  const { stats } = JSON.parse(stdout.slice(stdout.indexOf('{')));
  const failed = status !== 0 || stats.expected === 0;
  return { tried, times: stats.expected, lost: failed ? `failed: see ${file}` : nothing, failed };
}
