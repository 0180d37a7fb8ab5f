/**
 * How far a due date can be trusted: a standard deviation in days for each way of dating a
 * pregnancy. Where a 95 % half-width is published it is divided by 1.96.
 */

export const DATING_METHODS = [
  'assisted-conception',
  'ultrasound-first-trimester',
  'ultrasound-14w0d-21w6d',
  'ultrasound-22w0d-27w6d',
  'ultrasound-third-trimester',
  'last-period',
  'newborn-exam',
  'unknown',
] as const;

export type DatingMethod = (typeof DATING_METHODS)[number];

export const isDatingMethod = (text: string): text is DatingMethod =>
  (DATING_METHODS as readonly string[]).includes(text);

/**
 * Standard deviation of the gestational age, in days.
 * - assisted conception: half-width 1 day (family-practice dating page);
 * - ultrasound: half-widths 7, 10, 14 and 30 days to 13w6d, 21w6d, 27w6d and later (ACOG 700, from memory);
 * - last period: SD 8.0 days against a first-trimester scan (Hoffman 2008, n 1867);
 * - newborn examination: half-width 3.8 weeks (Lee 2017, nine studies);
 * - unknown: as wide as the widest ultrasound; a choice of ours.
 */
export const DATING_SD_DAYS: Readonly<Record<DatingMethod, number>> = {
  'assisted-conception': 0.5,
  'ultrasound-first-trimester': 3.6,
  'ultrasound-14w0d-21w6d': 5.1,
  'ultrasound-22w0d-27w6d': 7.1,
  'ultrasound-third-trimester': 15.3,
  'last-period': 8.0,
  'newborn-exam': 13.6,
  unknown: 15.3,
};
