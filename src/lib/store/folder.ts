/**
 * The folder chosen for backups, where the browser can write to one (File System Access). Its handle
 * cannot be written as text, so it is kept apart from the records, in a database of its own.
 */
import Dexie from 'dexie';

/** The parts of the standard that the type library does not have yet. */
type Folder = FileSystemDirectoryHandle & {
  queryPermission?(wanted: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(wanted: { mode: 'readwrite' }): Promise<PermissionState>;
};

type Picker = (wanted: { id: string; mode: 'readwrite' }) => Promise<Folder>;

const WRITE = { mode: 'readwrite' } as const;
const KEY = 'backups';

const picker = (): Picker | undefined =>
  (globalThis as { showDirectoryPicker?: Picker }).showDirectoryPicker;

/** Whether this browser can write to a folder at all. */
export const canChooseFolder = (): boolean => picker() !== undefined;

async function withHandles<T>(
  work: (table: Dexie.Table<Folder, string>) => PromiseLike<T>,
): Promise<T> {
  const database = new Dexie('tidemark-folder');
  database.version(1).stores({ handles: '' });
  try {
    return await work(database.table('handles'));
  } finally {
    database.close();
  }
}

/** The folder chosen before, and whether it may be written to without asking. */
export async function keptFolder(): Promise<{ folder: Folder; isOpen: boolean } | undefined> {
  const folder = await withHandles((table) => table.get(KEY));
  if (!folder) return undefined;
  const state = (await folder.queryPermission?.(WRITE)) ?? 'granted';
  return { folder, isOpen: state === 'granted' };
}

/** Lets the user choose a folder. Undefined when none was chosen. */
export async function chooseFolder(): Promise<Folder | undefined> {
  let folder: Folder | undefined;
  try {
    folder = await picker()?.({ id: 'tidemark-backups', ...WRITE });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return undefined;
    throw error;
  }
  if (folder) await withHandles((table) => table.put(folder, KEY));
  return folder;
}

/** Asks anew whether the folder may be written to: after a restart a browser wants that. */
export const askAgain = async (folder: Folder): Promise<boolean> =>
  ((await folder.requestPermission?.(WRITE)) ?? 'granted') === 'granted';

export const forgetFolder = (): Promise<void> => withHandles((table) => table.delete(KEY));

/** Writes a file whole: until it is closed, what stood under that name stays. */
export async function writeInto(folder: Folder, name: string, bytes: Uint8Array): Promise<void> {
  const file = await folder.getFileHandle(name, { create: true });
  const stream = await file.createWritable();
  await stream.write(new Uint8Array(bytes));
  await stream.close();
}

export type { Folder };
