/** English for the page on which a child's record is shared as a file. */
export const page = {
  title: 'Share file',
  lead: 'A case file that another Tidemark opens. Everything in it is shown here first.',
  what: 'Contents',
  whole: 'The whole record, with name or code, dates and notes',
  nameless: 'Without identity: ages kept, dates moved',
  namelessHelp:
    'Name or code and examiners are replaced, all dates are moved together, and notes, question, decisions, tags and the text written for the family are left out. Ages in days, findings and verdicts stay the same.',
  months: 'Ages in months and days may differ by a day or two on the moved dates.',
  keepsDay: 'Only the year of birth could be moved: day and month of birth are unchanged.',
  still:
    'Ages, findings and the order of visits can still identify a child in a small community. Share as your local rules allow.',
  encrypt: 'Encrypt the file with a passphrase',
  encryptBackup: 'Encrypt the backup with a passphrase',
  encryptHelp:
    'In the open “age” encryption format, which other programs open too. Send the passphrase separately from the file.',
  passphrase: 'Passphrase of the file',
  saving: 'Encrypting…',
  save: 'Save the file',
  saved: (name: string): string => `Saved as ${name}.`,
  leaves: 'Data leaving this machine',
  field: 'Field',
  leaving: 'Value in the file',
  preview: 'The file itself',
  label: 'A child (dates moved)',
  examiner: (n: number): string => `Examiner ${String(n).padStart(3, '0')}`,
  fileName: 'a child',
};
