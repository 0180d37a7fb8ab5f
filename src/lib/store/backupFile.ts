/**
 * The backup file, version 1: everything of one's own in one JSON text, each entry the text of its own
 * file. What is read is treated as hostile: its size, depth and names are looked at before its shape,
 * and what the entries say is believed only by their own parsers.
 */
import * as v from 'valibot';
import { kindOf, type FileKind } from '../case/kind.ts';
import { weightOf } from '../case/weight.ts';
import { BACKUP_TABLES } from './names.ts';

const FORMAT = 'tidemark-backup';
const VERSION = 1;

/** Limits that no honest backup reaches. */
export const MAX_BACKUP_BYTES = 200_000_000;
export const MAX_BACKUP_ITEMS = 20_000;
const MAX_DEPTH = 6;
/** Five for each entry, and as many as the browser keeps beside them. */
const MAX_PARTS = 5 * MAX_BACKUP_ITEMS + 1000;
const MAX_SMALL = 2_000_000;

export type BackupTable = (typeof BACKUP_TABLES)[number];

export interface BackupItem {
  table: BackupTable;
  id: string;
  /** The text of its own file. */
  text: string;
}

export interface Backup {
  /** When it was made, as ISO 8601 in UTC. */
  at: string;
  items: readonly BackupItem[];
  /** What the browser keeps beside the records, by name: settings, answers to questions. */
  small: Readonly<Record<string, string>>;
}

export type BackupProblem =
  | { code: 'too-large'; megabytes: number; limitMegabytes: number }
  /** `kind`: it is another of Tidemark's files. */
  | { code: 'not-a-backup'; kind?: FileKind | undefined }
  | { code: 'blank' }
  | { code: 'cut-short' }
  | { code: 'newer-backup'; version: number }
  | { code: 'too-deep' }
  | { code: 'twice'; id: string };

export type ReadBackup = { ok: true; backup: Backup } | { ok: false; problem: BackupProblem };

const shape = v.object({
  format: v.literal(FORMAT),
  version: v.literal(VERSION),
  at: v.pipe(v.string(), v.isoTimestamp()),
  items: v.pipe(
    v.array(
      v.object({
        table: v.picklist(BACKUP_TABLES),
        id: v.pipe(v.string(), v.regex(/^[\w-]{1,100}$/)),
        text: v.string(),
      }),
    ),
    v.maxLength(MAX_BACKUP_ITEMS),
  ),
  small: v.optional(
    v.record(
      v.pipe(v.string(), v.regex(/^[\w-]{1,60}$/)),
      v.pipe(v.string(), v.maxLength(MAX_SMALL)),
    ),
    {},
  ),
});

const refuse = (problem: BackupProblem): ReadBackup => ({ ok: false, problem });

/** Names that reach into what every object shares. */
const REACHING = new Set(['__proto__', 'constructor', 'prototype']);

class Reaching extends Error {}

function parsed(text: string): unknown {
  return JSON.parse(text, (name, value: unknown) => {
    if (REACHING.has(name)) throw new Reaching();
    return value;
  });
}

/** The bytes of a backup. */
export function backupBytes(backup: Backup): Uint8Array<ArrayBuffer> {
  const whole = { format: FORMAT, version: VERSION, ...backup };
  return new TextEncoder().encode(`${JSON.stringify(whole, null, 1)}\n`);
}

/** Reads a backup's bytes. Nothing is taken from one with a problem. */
export function readBackup(bytes: Uint8Array): ReadBackup {
  const large = backupTooLarge(bytes.length);
  if (large) return refuse(large);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refuse({ code: 'not-a-backup' });
  }
  return readText(text);
}

/** A file too large to be read, before it is. */
export function backupTooLarge(bytes: number): BackupProblem | undefined {
  if (bytes <= MAX_BACKUP_BYTES) return undefined;
  const limitMegabytes = MAX_BACKUP_BYTES / 1e6;
  return { code: 'too-large', megabytes: Math.ceil(bytes / 1e6), limitMegabytes };
}

/** Which of our files begins so; nothing more of one that is no backup is read. */
function kindAt(text: string): FileKind | undefined {
  const [, format] = /"format"\s*:\s*"([\w-]+)"/.exec(text.slice(0, 200)) ?? [];
  return kindOf({ format });
}

function readText(text: string): ReadBackup {
  if (text.trim() === '') return refuse({ code: 'blank' });
  if (!text.includes(FORMAT)) return refuse({ code: 'not-a-backup', kind: kindAt(text) });
  const { deepest, open, parts } = weightOf(text, MAX_DEPTH);
  if (deepest > MAX_DEPTH) return refuse({ code: 'too-deep' });
  if (parts > MAX_PARTS) return refuse({ code: 'not-a-backup' });
  let value: unknown;
  try {
    value = parsed(text);
  } catch (error) {
    const isCut = !(error instanceof Reaching) && open > 0;
    return refuse({ code: isCut ? 'cut-short' : 'not-a-backup' });
  }
  const head = value as { format?: unknown; version?: unknown } | null;
  if (typeof head !== 'object' || head?.format !== FORMAT) return refuse({ code: 'not-a-backup' });
  const { version } = head;
  if (typeof version === 'number' && Number.isInteger(version) && version > VERSION)
    return refuse({ code: 'newer-backup', version });
  // one thing that is wrong is enough: a list of a million of them would take minutes
  const read = v.safeParse(shape, value, { abortEarly: true });
  if (!read.success) return refuse({ code: 'not-a-backup' });
  const { at, items, small } = read.output;
  const seen = new Set<string>();
  for (const { table, id } of items) {
    if (seen.has(`${table} ${id}`)) return refuse({ code: 'twice', id });
    seen.add(`${table} ${id}`);
  }
  return { ok: true, backup: { at, items, small } };
}
