/** Finds a Chromium for the browser tests, and brings one where that can be done without asking. */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from '@playwright/test';

export const NO_BROWSER =
  'No browser found for the browser tests: install one (Debian: apt-get install chromium), or set CHROME_PATH to a Chromium or Chrome.';

const NAMES = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
];

/**
 * The path of a Chromium or Chrome on this machine, or undefined. A wrong CHROME_PATH is an error.
 * @param {NodeJS.ProcessEnv} env
 * @returns {string | undefined}
 */
export function findBrowser(env = process.env) {
  if (env.CHROME_PATH) {
    if (!existsSync(env.CHROME_PATH))
      throw new Error(`CHROME_PATH is set to ${env.CHROME_PATH}, and no file is there.`);
    return env.CHROME_PATH;
  }
  for (const folder of (env.PATH ?? '').split(delimiter).filter(Boolean))
    for (const name of NAMES) {
      const path = join(folder, name);
      if (existsSync(path)) return path;
    }
  const own = chromium.executablePath();
  return existsSync(own) ? own : undefined;
}

/** What every launch of the browser shares: no sandbox as root, no calls home. */
export function launchOptions() {
  const executablePath = findBrowser();
  return {
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--font-render-hinting=none',
    ],
    ...(executablePath ? { executablePath } : {}),
  };
}

/**
 * Runs a command that brings a browser, said in one line; says whether it succeeded. What it prints is
 * left out: where it fails, the sentence at the end says what can be done.
 * @param {string} command
 * @param {string[]} args
 */
function attempt(command, args) {
  process.stdout.write(`No browser found, so trying: ${[command, ...args].join(' ')}\n`);
  try {
    execFileSync(command, args, { stdio: 'pipe' });
    return true;
  } catch {
    return false;
  }
}

/** Makes sure a browser is there: apt where it may be used, else Playwright's own download. */
export function ensureBrowser() {
  const found = findBrowser();
  if (found) return found;
  const root = process.getuid?.() === 0;
  if (root && existsSync('/usr/bin/apt-get') && attempt('apt-get', ['update']))
    // without windows it begins sooner; where there is none, the whole browser does
    for (const name of ['chromium-headless-shell', 'chromium'])
      if (!findBrowser()) attempt('apt-get', ['install', '-y', '--no-install-recommends', name]);
  if (!findBrowser()) attempt('npx', ['playwright', 'install', 'chromium']);
  const path = findBrowser();
  if (!path) throw new Error(NO_BROWSER);
  return path;
}
