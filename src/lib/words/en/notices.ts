/** English for what a page says of what was just done or undone: it loads with the notices. */

export const name = 'What has just happened';
export const unread = (n: number): string =>
  n === 1
    ? 'One stored record could not be read. It is left as it is.'
    : `${n} stored records could not be read. They are left as they are.`;
export const undo = 'Undo';
export const redo = 'Redo';
export const close = 'Close';
export const did = {
  'child-added': 'Child added.',
  'child-changed': 'Details changed.',
  'child-removed': 'Child removed.',
  'file-opened': 'Case file opened.',
  'records-taken': 'Taken over.',
  'visit-added': 'Visit added.',
  'visit-changed': 'Visit changed.',
  'visit-removed': 'Visit removed.',
  archived: 'Put in the archive.',
  'taken-back': 'Taken out of the archive.',
  tagged: 'Tags changed.',
  'sheet-changed': 'Sheet changed.',
  'question-changed': 'Question changed.',
  'decision-changed': 'Decisions changed.',
  'family-changed': 'Family’s page changed.',
  duplicated: 'Child copied.',
  'examples-added': 'Invented children added.',
  'examples-cleared': 'Invented children cleared away.',
  'brought-back': 'Brought back from the bin.',
  'backup-taken': 'Taken from the backup.',
  'clash-decided': 'Kept as chosen.',
};
export const undid = {
  'child-added': 'Undone: the child is taken out again.',
  'child-changed': 'Undone: the details are as before.',
  'child-removed': 'Undone: the child is back.',
  'file-opened': 'Undone: the child from the file is taken out again.',
  'records-taken': 'Undone: everything is as it was before.',
  'visit-added': 'Undone: the visit is taken out again.',
  'visit-changed': 'Undone: the visit is as before.',
  'visit-removed': 'Undone: the visit is back.',
  archived: 'Undone: it is out of the archive again.',
  'taken-back': 'Undone: it is in the archive again.',
  tagged: 'Undone: the tags are as before.',
  'sheet-changed': 'Undone: the sheet is as before.',
  'question-changed': 'Undone: the question is as before.',
  'decision-changed': 'Undone: the decisions are as before.',
  'family-changed': 'Undone: the family’s page is as before.',
  duplicated: 'Undone: the copy is taken out again.',
  'examples-added': 'Undone: the invented children are taken out again.',
  'examples-cleared': 'Undone: the invented children are back.',
  'brought-back': 'Undone: it is in the bin again.',
  'backup-taken': 'Undone: the children are as before the backup.',
  'clash-decided': 'Undone: the record is as before the choice.',
};
/** In place of either, where it is true of a part alone. */
export const stays = 'Not all of it: what another window has changed since then stays as it is.';
export const drop = 'Let go to open the file.';
