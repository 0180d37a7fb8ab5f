import { describe, expect, it } from 'vitest';
import { PAGES } from '../browser/support/pages.ts';
import { CHILD_PLACES, SECTIONS, whereIs, type Place } from '../../src/lib/app/places.ts';

const said = (hash: string): string => {
  const { section, ofChild, below, isChild } = whereIs(hash);
  return [section, isChild ? (ofChild ?? { name: 'details' }) : undefined, below]
    .flatMap((one) => one?.name ?? [])
    .join(' > ');
};

describe('where an address is', () => {
  it.each([
    ['', 'children > chart'],
    ['#/', 'children > chart'],
    ['#/visits/3/record', 'children > visits'],
    ['#/next', 'children > plan'],
    ['#/course', 'children > progress'],
    ['#/table', 'children > conference'],
    ['#/report', 'children > share > report'],
    ['#/family?visit=all', 'children > share > family'],
    ['#/share', 'children > share > file'],
    ['#/child', 'children > details'],
    ['#/children', 'children > everyChild'],
    ['#/children/new', 'children > newChild'],
    ['#/incoming', 'children > everyChild'],
    ['#/sheet', 'children > sheet'],
    ['#/chart', 'reflexes > plainChart'],
    ['#/reflexes?does=arms-unlike', 'reflexes > everyReflex'],
    ['#/reflexes/moro', 'reflexes > everyReflex'],
    ['#/compare/moro/stepping', 'reflexes > compare'],
    ['#/voices', 'reflexes > sources'],
    ['#/own/source/new', 'reflexes > own'],
    ['#/talks/tables', 'teach > talks'],
    ['#/quiz/paper/5?count=12', 'teach > quiz'],
    ['#/keeping', 'settings > keeping'],
    ['#/about', 'settings > about'],
    ['#/nowhere', ''],
    ['#/settingsx', ''],
  ])('%s', (hash, where) => {
    expect(said(hash)).toBe(where);
  });

  it('is in a place for every page there is, but for one that is none', () => {
    expect(PAGES.filter((hash) => said(hash) === '')).toEqual(['#/nowhere']);
  });
});

it('there are ten places, and every address is named once', () => {
  expect(SECTIONS.length + CHILD_PLACES.length).toBe(10);
  const leaves = [...SECTIONS, ...CHILD_PLACES].flatMap((one: Place) => one.below ?? [one]);
  const hrefs = leaves.map(({ href }) => href);
  expect(new Set(hrefs).size).toBe(hrefs.length);
});
