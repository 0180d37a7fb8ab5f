import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** What a build is made of. */
const MADE_OF = [
  'src',
  'static',
  'adapters.js',
  'package.json',
  'package-lock.json',
  'svelte.config.js',
  'version.js',
  'vite.config.ts',
];

/** Every file at or under a path, in one order on every machine. @param {string} path @returns {string[]} */
const filesAt = (path) =>
  statSync(path).isDirectory()
    ? readdirSync(path)
        .sort()
        .flatMap((name) => filesAt(join(path, name)))
    : [path];

/**
 * The name of the version that is built: APP_VERSION where it is set, else the number in package.json
 * and a digest of the sources. Two builds of the same sources have the same name, and others never:
 * what a browser keeps of one version is found again by its name.
 */
export function versionName() {
  if (process.env.APP_VERSION) return process.env.APP_VERSION;
  const digest = createHash('sha256');
  for (const path of MADE_OF.flatMap(filesAt))
    digest.update(`${path.replaceAll('\\', '/')}\0`).update(readFileSync(path));
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  return `${version}-${digest.digest('hex').slice(0, 8)}`;
}
