/** A backup on another machine: everything that was written is read back, and one undo takes all of it out. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ATLAS, ATLAS_PARTS, type Atlas } from '../../src/lib/atlas/atlas.ts';
import type { OwnEntry } from '../../src/lib/atlas/own.ts';
import { READY_IDS, readyTalk } from '../../src/lib/lecture/talks/ready.ts';
import { Backups } from '../../src/lib/backup/backups.svelte.ts';
import { demoCase } from '../../src/lib/examples/demo.ts';
import { Desk } from '../../src/lib/repository/cases.svelte.ts';
import { Keeping } from '../../src/lib/repository/saveStatus.svelte.ts';
import { Library } from '../../src/lib/repository/library.svelte.ts';
import { newMappings } from '../../src/lib/exchange/mappings.ts';
import { QUESTIONS, SETTINGS, SHEETS } from '../../src/lib/platform/storageKeys.ts';
import { believed } from '../../src/lib/backup/parseStored.ts';
import {
  Laying,
  takeInto,
  takenOf,
  type Here,
  type Preview,
  type SmallPlace,
} from '../../src/lib/backup/preview.ts';
import { QuizProgress } from '../../src/lib/teaching/quizProgress.svelte.ts';
import { Settings, TEXTS, THEMES } from '../../src/lib/app/settings.svelte.ts';
import { Talks } from '../../src/lib/repository/talks.svelte.ts';
import { everything, joinUndo } from '../../src/lib/platform/undoing.ts';
import { backupBytes, readBackup, type Backup } from '../../src/lib/store/backupFile.ts';
import { memoryRows } from '../../src/lib/store/memory.ts';
import { BACKUP_TABLES } from '../../src/lib/store/names.ts';
import { StoreError, type Rows } from '../../src/lib/store/rows.ts';
import { line, record } from '../support/records.ts';
import { runs } from '../support/runs.ts';

const NOW = new Date('2026-06-08T10:00:00.000Z');

class Shelf {
  kept = new Map<string, string>();
  getItem = (key: string): string | null => this.kept.get(key) ?? null;
  setItem = (key: string, value: string): void => void this.kept.set(key, value);
}

/** Everything one browser has, as the page puts it together. */
async function machine(rows: Rows = memoryRows()) {
  const keeping = new Keeping();
  const shelf = new Shelf();
  const library = new Library(ATLAS_PARTS, keeping);
  const desk = new Desk(library.known, [], undefined, keeping);
  const talks = new Talks(keeping);
  const settings = new Settings(shelf, ATLAS.sources);
  const progress = new QuizProgress(shelf);
  const mappings = newMappings(shelf);
  const small: Record<string, SmallPlace> = {
    [SETTINGS]: settings.kept,
    [QUESTIONS]: progress.kept,
    [SHEETS]: mappings,
  };
  const backups = new Backups(
    { cases: desk.backed, own: library.backed, talks: talks.backed },
    () =>
      Object.fromEntries(
        Object.entries(small).flatMap(([name, { text }]) => (text ? [[name, text]] : [])),
      ),
    { isSealed: () => false, shelf: undefined },
  );
  for (const one of [library, desk, talks, settings.kept, progress.kept, mappings]) joinUndo(one);
  await library.load(rows);
  await library.ready();
  await desk.load(rows);
  await talks.load(rows);
  const written = () => Promise.all([desk.written, library.written, talks.written]);
  return {
    keeping,
    library,
    desk,
    talks,
    settings,
    progress,
    mappings,
    small,
    backups,
    shelf,
    rows,
    written,
  };
}
type Machine = Awaited<ReturnType<typeof machine>>;

const hereOn = ({ desk, library, talks, small }: Machine) => ({
  texts: {
    cases: desk.backed.texts(),
    own: library.backed.texts(),
    talks: talks.backed.texts(),
  },
  small,
});

const id = fc.stringMatching(/^[a-z0-9]{8}$/);
const tier = fc.constantFrom(
  'primary-study' as const,
  'textbook' as const,
  'course-notes' as const,
);
const own: fc.Arbitrary<OwnEntry> = fc.record({
  kind: fc.constant('source' as const),
  id: id.map((name) => `own-${name}`),
  name: line,
  tier,
  on: fc.boolean(),
  rows: fc.array(
    fc.record({ reflex: fc.constant('moro'), appears: line, integrates: line, note: line }),
    { maxLength: 3 },
  ),
});

/** Everything a person may have made on one machine. */
const made = fc.record({
  children: fc.uniqueArray(fc.record({ id, record }), {
    selector: (kept) => kept.id,
    maxLength: 3,
  }),
  own: fc.uniqueArray(own, { selector: (entry) => entry.id, maxLength: 3 }),
  talks: fc.array(fc.constantFrom(...READY_IDS), { maxLength: 2 }),
  theme: fc.constantFrom(...THEMES),
  text: fc.constantFrom(...TEXTS),
  verdicts: fc.boolean(),
  clinic: fc.record({ name: line, phone: line }),
  answers: fc.array(
    fc.tuple(fc.constantFrom('phase|moro', 'name|atnr', 'kind|landau'), fc.boolean()),
    {
      maxLength: 6,
    },
  ),
  mappings: fc.uniqueArray(line, { maxLength: 3 }),
});
type Made = typeof made extends fc.Arbitrary<infer T> ? T : never;

async function fill(on: Machine, from: Made): Promise<void> {
  on.library.takeIn(from.own);
  on.desk.takeRecords(from.children);
  for (const talk of from.talks) on.talks.add(readyTalk(talk, ATLAS));
  on.settings.setTheme(from.theme);
  on.settings.setText(from.text);
  on.settings.setVerdicts(from.verdicts);
  on.settings.setClinic(from.clinic);
  for (const [subject, isRight] of from.answers) on.progress.answered(subject, isRight, NOW);
  const values = { reflex: { M: 'moro' }, side: {}, response: {}, state: {} };
  const kept = from.mappings.map((name) => ({
    name,
    columns: { reflex: name },
    values,
    order: 'day-month-year' as const,
  }));
  on.mappings.become(kept, 'kept');
  await on.written();
}

function carried(from: Machine): Backup {
  const read = readBackup(backupBytes(from.backups.everything(NOW)));
  if (!read.ok) throw new Error(read.problem.code);
  return read.backup;
}

const sortedTexts = async (rows: Rows): Promise<Record<string, [string, string][]>> =>
  Object.fromEntries(
    await Promise.all(
      BACKUP_TABLES.map(async (table) => [
        table,
        (await rows.read(table))
          .map((row): [string, string] => [row.id, row.text])
          .sort(([a], [b]) => (a < b ? -1 : 1)),
      ]),
    ),
  ) as Record<string, [string, string][]>;

/** A whole backup laid beside what is there, as one piece. */
function previewOf(
  { items, small }: Pick<Backup, 'items' | 'small'>,
  here: Here,
  atlas: Atlas,
): Preview {
  const laying = new Laying(here);
  const read = items.map((item) => ({ id: item.id, entry: believed(item, atlas) }));
  laying.add(
    read.flatMap(({ entry }) => entry ?? []),
    read.flatMap(({ id, entry }) => (entry ? [] : [id])),
  );
  laying.addSmall(small);
  return laying.preview;
}

const take = (here: Machine, { lines }: Preview, how: 'mine' | 'theirs'): number =>
  takeInto(
    here,
    takenOf(
      lines,
      () => how,
      () => '',
      hereOn(here).texts,
    ),
  );

describe('a backup that goes over what is there', () => {
  /** Two machines with one child, changed on the second after the backup of the first. */
  async function changed(rows: Rows) {
    const [there, here] = [await machine(), await machine(rows)];
    for (const one of [there, here])
      one.desk.takeRecords([{ id: 'kestrel', record: demoCase(ATLAS) }]);
    here.desk.follow({ question: 'asked after the backup' }, 'question-changed');
    await Promise.all([there.written(), here.written()]);
    return { here, preview: previewOf(carried(there), hereOn(here), here.library.known) };
  }
  const said = async (rows: Rows, table: 'cases' | 'bin'): Promise<string> =>
    (await rows.read(table)).map(({ text }) => text).join('');

  test('is taken before anything else can happen, and what it replaces lies in the bin', async () => {
    const { here, preview } = await changed(memoryRows());
    expect(take(here, preview, 'theirs')).toBe(1);
    expect(here.desk.open?.record.question).toBe(demoCase(ATLAS).question);
    // a page that goes now leaves both behind
    const left = here.desk.unwritten();
    expect(left.entries.map(({ id }) => id)).toEqual(['kestrel']);
    expect(left.beside.map(({ table, text }) => [table, text?.includes('asked after')])).toEqual([
      ['bin', true],
    ]);
    await here.written();
    expect(await said(here.rows, 'bin')).toContain('asked after the backup');
    expect(await said(here.rows, 'cases')).not.toContain('asked after the backup');
  });

  test('replaces nothing where the bin takes no copy', async () => {
    const rows = memoryRows();
    const { here, preview } = await changed({
      ...rows,
      write: (changes) =>
        changes.some(({ table, text }) => table === 'bin' && text !== undefined)
          ? Promise.reject(new StoreError('full'))
          : rows.write(changes),
    });
    take(here, preview, 'theirs');
    await here.written();
    expect(here.keeping.trouble).toBe('full');
    expect(await said(rows, 'cases')).toContain('asked after the backup');
  });
});

describe('a backup taken on an empty machine', () => {
  test('brings back everything that was written, to the stores as well; one undo takes it out', async () => {
    await fc.assert(
      fc.asyncProperty(made, async (all) => {
        const [there, here] = [await machine(), await machine()];
        await fill(there, all);
        const backup = carried(there);
        const preview = previewOf(backup, hereOn(here), here.library.known);
        expect(preview.unread).toEqual([]);
        expect(preview.lines.map(({ compared }) => compared)).not.toContain('changed');
        const before = here.backups.everything(NOW);
        const count = take(here, preview, 'theirs');
        await here.written();
        const { items, small } = here.backups.everything(NOW);
        const byPlace = (list: Backup['items']) =>
          list.toSorted((a, b) => (a.table + a.id < b.table + b.id ? -1 : 1));
        expect(byPlace(items)).toEqual(byPlace(backup.items));
        expect(small).toEqual(backup.small);
        expect(count).toBe(items.length + Object.keys(small).length);
        expect(await sortedTexts(here.rows)).toEqual(await sortedTexts(there.rows));
        // a page that is opened anew reads the same from what the browser keeps
        expect(new Settings(here.shelf, ATLAS.sources).kept.now).toEqual(there.settings.kept.now);
        expect(new QuizProgress(here.shelf).subjects).toEqual(there.progress.subjects);
        expect(newMappings(here.shelf).now).toEqual(there.mappings.now);

        const again = previewOf(backup, hereOn(here), here.library.known);
        expect(again.lines.every(({ compared }) => compared === 'same')).toBe(true);
        if (count === 0) return;
        everything.undo();
        expect(here.backups.everything(NOW)).toEqual(before);
        everything.redo();
        expect(here.backups.everything(NOW).small).toEqual(backup.small);
        expect(byPlace(here.backups.everything(NOW).items)).toEqual(byPlace(backup.items));
      }),
      { numRuns: runs(60, 15) },
    );
  });

  test('of settings that differ says so, and leaves them unless they are asked for', async () => {
    const [there, here] = [await machine(), await machine()];
    there.settings.setTheme('dark');
    here.settings.setTheme('light');
    const preview = previewOf(carried(there), hereOn(here), here.library.known);
    expect(preview.lines.map(({ compared, entry }) => [entry.id, compared])).toEqual([
      [SETTINGS, 'changed'],
    ]);
    take(here, preview, 'mine');
    expect(here.settings.theme).toBe('light');
    take(here, preview, 'theirs');
    expect(here.settings.theme).toBe('dark');
    here.settings.kept.undo();
    expect(here.settings.theme).toBe('light');
  });

  test.each([
    [SETTINGS, '7'],
    [QUESTIONS, 'not JSON'],
    [SHEETS, '{"a":1}'],
    ['tidemark-other', '{}'],
    ['tidemark-locked', '1'],
  ])('leaves out %s where it holds %s', async (name, text) => {
    const here = await machine();
    const preview = previewOf({ items: [], small: { [name]: text } }, hereOn(here), ATLAS);
    expect(preview).toEqual({ lines: [], unread: [name] });
  });
});
