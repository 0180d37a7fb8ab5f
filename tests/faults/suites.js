/** Faults that are tried by tests of their own: run once more, and counted. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** @typedef {{ tried: string; times: number; lost: string; failed: boolean }} Row */

/**
 * A file of property tests: how many cases they tried, and whether one of them failed.
 * @param {string} tried @param {string} file @param {string} nothing what is said where none failed
 * @returns {Row}
 */
export function properties(tried, file, nothing) {
  const folder = mkdtempSync(join(tmpdir(), 'tidemark-faults-'));
  const log = join(folder, 'tried');
  try {
    const { status } = spawnSync('npx', ['vitest', 'run', file, '--silent'], {
      env: { ...process.env, FAULTS_LOG: log },
      stdio: ['ignore', 'ignore', 'inherit'],
    });
    const times = readFileSync(log, 'utf8')
      .trim()
      .split('\n')
      .reduce((sum, line) => sum + Number(line), 0);
    const failed = status !== 0 || times === 0;
    return { tried, times, lost: failed ? `failed: see ${file}` : nothing, failed };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Tests in a browser, by a part of their titles: how many were run, and whether one failed.
 * @param {string} tried @param {string} file @param {string} titles @param {string} nothing
 * @returns {Row}
 */
export function pages(tried, file, titles, nothing) {
  const { status, stdout } = spawnSync(
    'npx',
    ['playwright', 'test', file, '-g', titles, '--reporter=json'],
    { encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'], maxBuffer: 1e8 },
  );
  /** @type {{ stats: { expected: number } }} */
  const { stats } = JSON.parse(stdout.slice(stdout.indexOf('{')));
  const failed = status !== 0 || stats.expected === 0;
  return { tried, times: stats.expected, lost: failed ? `failed: see ${file}` : nothing, failed };
}
