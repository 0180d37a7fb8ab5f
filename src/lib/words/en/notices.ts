/** English for what a page says of what was just done or undone: it loads with the notices. */

export const name = 'Latest changes';
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
  'records-taken': 'Records added.',
  'visit-added': 'Visit added.',
  'visit-changed': 'Visit changed.',
  'visit-removed': 'Visit removed.',
  archived: 'Put in the archive.',
  'taken-back': 'Taken out of the archive.',
  tagged: 'Tags changed.',
  'sheet-changed': 'Sheet changed.',
  'question-changed': 'Question changed.',
  'decision-changed': 'Decisions changed.',
  'agreed-changed': 'Agreed answer changed.',
  'family-changed': 'Family’s page changed.',
  duplicated: 'Child copied.',
  'examples-added': 'Sample children added.',
  'examples-cleared': 'Sample children removed.',
  'brought-back': 'Restored from the bin.',
  'backup-taken': 'Restored from the backup.',
  'clash-decided': 'Saved as chosen.',
};
export const undid = {
  'child-added': 'Undone: the child is removed again.',
  'child-changed': 'Undone: the details are as before.',
  'child-removed': 'Undone: the child is back.',
  'file-opened': 'Undone: the child from the file is removed again.',
  'records-taken': 'Undone: everything is as it was before.',
  'visit-added': 'Undone: the visit is removed again.',
  'visit-changed': 'Undone: the visit is as before.',
  'visit-removed': 'Undone: the visit is back.',
  archived: 'Undone: it is out of the archive again.',
  'taken-back': 'Undone: it is in the archive again.',
  tagged: 'Undone: the tags are as before.',
  'sheet-changed': 'Undone: the sheet is as before.',
  'question-changed': 'Undone: the question is as before.',
  'decision-changed': 'Undone: the decisions are as before.',
  'agreed-changed': 'Undone: the agreed answer is as before.',
  'family-changed': 'Undone: the family’s page is as before.',
  duplicated: 'Undone: the copy is removed again.',
  'examples-added': 'Undone: the sample children are removed again.',
  'examples-cleared': 'Undone: the sample children are back.',
  'brought-back': 'Undone: it is in the bin again.',
  'backup-taken': 'Undone: the children are as before the backup.',
  'clash-decided': 'Undone: the record is as before the choice.',
};
/** In place of either, where it is true of a part alone. */
export const stays = 'Not all of it: what another window has changed since then stays as it is.';
export const drop = 'Drop to open the file.';
