/** English for the lock on what is stored, and for encrypted files. */
import type { EnvelopeProblem } from '../../store/envelope.ts';

const plural = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;

export const gate = {
  title: 'Tidemark is locked',
  lead: 'The records on this machine are encrypted with a passphrase.',
  passphrase: 'Passphrase',
  open: 'Open',
  opening: 'Opening…',
  wrong: 'This is not the passphrase. Nothing has changed.',
  wait: (seconds: number): string =>
    `After several wrong ones, the next can be tried in ${plural(seconds, 'second')}.`,
  lost: 'A lost passphrase cannot be recovered by anybody. A backup saved before can be opened on this machine or another once this site’s data is cleared in the browser.',
  broken: 'The records here are encrypted, and the key that the passphrase opens is missing.',
  brokenHelp:
    'This happens when another program has changed the browser’s files. Nothing was overwritten. Clear this site’s data in the browser and open a backup.',
};

export const page = {
  title: 'Lock',
  lead: 'A passphrase encrypts what is stored in this browser: children, your own sources and reflexes, talks, and the contents of the bin. It is asked for each time Tidemark is opened.',
  protects:
    'It protects against anyone who opens this browser, or takes the disk, while Tidemark is locked. It does not protect while it is open, nor against a program that spies on this machine.',
  impossible:
    'This page was opened over plain http, where the browser offers no encryption. Open Tidemark over https, or from a file, to set a lock.',
  notKept: 'Nothing is stored in this browser now, so there is nothing to lock.',
  set: 'Set a lock',
  setting: 'Encrypting…',
  wasSet: 'The lock is set.',
  first: 'Before you set it',
  backup: 'Save a backup',
  backupHelp: 'and store it where the passphrase is not needed to reach it.',
  lost: 'A lost passphrase cannot be recovered. There is no second way in.',
  traces:
    'Data written before the lock was set may stay in the browser’s own files until the browser cleans them up. To remove it at once: save an encrypted backup, clear this site’s data in the browser, set the lock, and open the backup.',
  folder: (name: string): string =>
    `The backups in the folder “${name}” are plain text and stay so. With a lock set no more are written there, unless that is allowed under Storage and backup.`,
  passphrase: 'Passphrase',
  passphraseHelp: (min: number): string =>
    `At least ${min} characters; four or five words that do not belong together are good.`,
  again: 'Repeat the passphrase',
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
  isSet: 'The records here are locked with a passphrase.',
  idle: 'Locks after',
  minutes: (n: number): string => `${n} minutes`,
  idleHelp:
    'without use, in every window at once, and whenever Tidemark is closed. A talk being shown is not interrupted: Tidemark locks when the talk is left. While a change cannot be saved, it waits.',
  old: 'Current passphrase',
  change: 'Change the passphrase',
  changeHelp:
    'The records stay encrypted with the same key. Only the passphrase that opens it changes. If somebody else knew the old one, remove the lock and set a new one.',
  changed: 'The passphrase is changed.',
  remove: 'Remove the lock',
  removeHelp: 'The records here are then stored unencrypted again.',
  removed: 'The lock is removed.',
};

export const settingsLink = {
  title: 'Lock',
  none: 'Nothing is locked.',
  set: 'Locked with a passphrase.',
  open: 'Lock these records',
};

export const askFile = {
  title: 'This file is encrypted',
  lead: (name: string): string => `${name} opens with the passphrase it was saved with.`,
  passphrase: 'Passphrase of the file',
  open: 'Open the file',
  opening: 'Opening…',
  cancel: 'Cancel',
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
