/** English for the codes of a record. */
import type { DatingMethod } from '../../age/doubt.ts';
import type { InfantState, Response } from '../../case/finding.ts';

export const responses: Record<Response, string> = {
  'not-elicited': 'not elicited',
  weak: 'weak',
  elicited: 'elicited',
  brisk: 'brisk',
  obligatory: 'obligatory',
  'not-assessable': 'not assessable',
};

export const responseHelp: Record<Response, string> = {
  'not-elicited': 'Tried in the right way and state, without a response.',
  weak: 'Present, but faint, slow or incomplete.',
  elicited: 'Present, as described.',
  brisk: 'Present, quicker or larger than usual.',
  obligatory: 'The infant cannot leave the posture while the stimulus lasts.',
  'not-assessable': 'Could not be tried or read. Say why in the note.',
};

export const states: Record<InfantState, string> = {
  'quiet-sleep': 'quiet sleep',
  'active-sleep': 'active sleep',
  drowsy: 'drowsy',
  'quiet-alert': 'quiet alert',
  'active-alert': 'active alert',
  crying: 'crying',
  'not-recorded': 'not recorded',
};

export const datings: Record<DatingMethod, string> = {
  'assisted-conception': 'assisted conception',
  'ultrasound-first-trimester': 'ultrasound to 13w6d',
  'ultrasound-14w0d-21w6d': 'ultrasound 14w0d to 21w6d',
  'ultrasound-22w0d-27w6d': 'ultrasound 22w0d to 27w6d',
  'ultrasound-third-trimester': 'ultrasound from 28w0d',
  'last-period': 'last period',
  'newborn-exam': 'examination of the newborn',
  unknown: 'not known',
};
