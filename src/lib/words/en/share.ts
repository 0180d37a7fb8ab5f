/** English for the page on which a child's record is handed over as a file. */
export const page = {
  lead: 'A case file that another Tidemark opens. What goes out is shown here before it goes.',
  what: 'What goes out',
  whole: 'The whole record, with label, dates and notes',
  nameless: 'Without identity: ages kept, dates moved',
  namelessHelp:
    'Label and examiners are replaced, all dates are moved together, and notes, question, decisions, tags and what was written for the family are left out. Ages in days, findings and verdicts stay the same.',
  months: 'Ages in months and days may read a day or two otherwise on the moved dates.',
  keepsDay: 'Only the year of birth could be moved: day and month of birth are the real ones.',
  still:
    'Ages, findings and the order of visits can still point to a child in a small place. Share as your local rules allow.',
  encrypt: 'Encrypt the file with a passphrase',
  encryptBackup: 'Encrypt the backup with a passphrase',
  encryptHelp:
    'In the open age format, which other programs open too. Tell the passphrase by another way than the file.',
  passphrase: 'Passphrase of the file',
  saving: 'Encrypting…',
  save: 'Save the file',
  saved: (name: string): string => `Saved as ${name}.`,
  leaves: 'What leaves this machine',
  field: 'Field',
  leaving: 'What leaves',
  preview: 'The file itself, word for word',
  label: 'A child (dates moved)',
  examiner: (n: number): string => `Examiner ${String(n).padStart(3, '0')}`,
  fileName: 'a child',
};
