/** English for the lock on what is kept, and for encrypted files. */
import type { EnvelopeProblem } from '../../store/envelope.ts';

const plural = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;

export const gate = {
  title: 'Tidemark is locked',
  lead: 'What is kept on this machine is sealed with a passphrase.',
  passphrase: 'Passphrase',
  open: 'Open',
  opening: 'Opening…',
  wrong: 'This is not the passphrase. Nothing has changed.',
  wait: (seconds: number): string =>
    `After several wrong ones, the next can be tried in ${plural(seconds, 'second')}.`,
  lost: 'A lost passphrase cannot be recovered by anybody. A backup saved before can be opened on this machine or another once this site’s data is cleared in the browser.',
  broken: 'What is kept here is sealed, and the record that the passphrase opens is missing.',
  brokenHelp:
    'This happens when another program has changed the browser’s files. Nothing was overwritten. Clear this site’s data in the browser and open a backup.',
};

export const page = {
  title: 'Lock',
  lead: 'A passphrase seals what is kept in this browser: children, sources and reflexes of your own, talks, and what was removed. It is asked for each time Tidemark is opened.',
  protects:
    'It protects against who opens this browser, or takes the disk, while Tidemark is locked. It does not protect while it is open, nor against a program that watches this machine.',
  impossible:
    'This page was opened over plain http, where the browser offers no encryption. Open Tidemark over https, or from a file, to set a lock.',
  notKept: 'Nothing is kept in this browser now, so there is nothing to lock.',
  set: 'Set a lock',
  setting: 'Sealing…',
  wasSet: 'The lock is set.',
  first: 'Before you set it',
  backup: 'Save a backup',
  backupHelp: 'and keep it where the passphrase is not needed to reach it.',
  lost: 'A lost passphrase cannot be recovered. There is no second way in.',
  traces:
    'What was written before the lock may stay in the browser’s own files until the browser tidies them. To be rid of it at once: save an encrypted backup, clear this site’s data in the browser, set the lock, and open the backup.',
  folder: (name: string): string =>
    `The backups that lie in the folder “${name}” are plain text and stay so. Under a lock no more go there, unless that is allowed under Keeping and backup.`,
  passphrase: 'Passphrase',
  passphraseHelp: (min: number): string =>
    `At least ${min} characters; four or five words that do not belong together are good.`,
  again: 'The same again',
  differ: 'The two are not the same.',
  show: 'Show what is typed',
  faults: {
    short: (min: number): string => `It is shorter than ${min} characters.`,
    long: 'It is longer than anybody can type.',
    same: 'It is nearly the same character throughout. Use several words.',
  },
  agreed: 'I have written the passphrase down where only those who should can find it.',
  refused: 'The browser refused to write. Nothing has changed.',
  lockNow: 'Lock now',
  isSet: 'What is kept here is locked with a passphrase.',
  idle: 'Locks after',
  minutes: (n: number): string => `${n} minutes`,
  idleHelp:
    'without use, in every window at once; and whenever Tidemark is closed. A talk that is being shown is not broken off: the lock falls when the talk is left. While a change cannot be saved, it waits.',
  old: 'Passphrase now',
  change: 'Change the passphrase',
  changeHelp:
    'The rows stay sealed with the same key; only the passphrase that opens it is another. If somebody else knew the old one, remove the lock and set a new one.',
  changed: 'The passphrase is changed.',
  remove: 'Remove the lock',
  removeHelp: 'What is kept here then lies open again.',
  removed: 'The lock is removed.',
};

export const settingsLink = {
  title: 'Lock',
  none: 'Nothing is locked.',
  set: 'Locked with a passphrase.',
  open: 'Lock what is kept here',
};

export const askFile = {
  title: 'This file is encrypted',
  lead: (name: string): string => `${name} opens with the passphrase it was saved with.`,
  passphrase: 'Passphrase of the file',
  open: 'Open the file',
  opening: 'Opening…',
  cancel: 'Leave it',
};

/** Why an encrypted file was not opened. */
export const envelopeWords: Readonly<Record<EnvelopeProblem, string>> = {
  'wrong-passphrase': 'This is not the passphrase of the file. Nothing has changed.',
  'by-key':
    'The file is encrypted for somebody’s key and not with a passphrase. Decrypt it with the program that holds the key, then open the result.',
  'too-costly':
    'The file asks for more work than an honest one does, so it was not opened. Nothing has changed.',
  damaged:
    'The passphrase may be right, but the file is damaged: it was cut short or changed. Nothing has changed here; try another copy.',
  'not-encrypted': 'This is not an encrypted file.',
  'too-large': 'The file is too large to be one of ours. Nothing has changed.',
};
