/**
 * Another version of a built site, made of the first within a moment: its own name, and its own name for
 * every part, so that nothing of one is found among the files of the other. A whole second build differs
 * in no way that a browser could tell; the thorough tests take one.
 */
import { createHash } from 'node:crypto';
import { cpSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const TEXT = /\.(?:js|css|html|json)$/;
const BOOT = /<script>([\s\S]*?)<\/script>/;

const hashOf = (text: string): string =>
  `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name));

/**
 * Writes the next version of a site.
 * @param from the folder of the first; @param to an empty folder; @param version what it is called
 * @throws where the site is not built as expected
 */
export function writeNextVersion(from: string, to: string, version: string): void {
  cpSync(from, to, { recursive: true });
  const told = readFileSync(join(to, '_app/version.json'), 'utf8');
  const { version: before } = JSON.parse(told) as { version: string };
  const parts = filesIn(join(to, '_app/immutable'));
  const names = parts.map((path) => path.split('/').at(-1)!);
  if (names.length < 50 || new Set(names).size < names.length)
    throw new Error('the parts of the site have no names of their own');
  const anyName = new RegExp(
    `(?<=[/"'\`])(?:${names.map((name) => name.replaceAll('.', '\\.')).join('|')})`,
    'g',
  );
  for (const path of filesIn(to).filter((one) => TEXT.test(one))) {
    const text = readFileSync(path, 'utf8');
    const boot = BOOT.exec(text)?.[1];
    let next = text.replaceAll(before, version).replaceAll(anyName, 'next-$&');
    const nextBoot = BOOT.exec(next)?.[1];
    if (path.endsWith('index.html') && boot && nextBoot)
      next = next.replace(hashOf(boot), hashOf(nextBoot));
    writeFileSync(path, next);
  }
  for (const path of parts) renameSync(path, path.replace(/[^/]+$/, 'next-$&'));
}
