/** Every page of Tidemark as it is tried: its address, and what is done there before it is looked at. */
import type { Page } from '@playwright/test';
import { dropSheet, expect, more, open, verdict } from './page.ts';

/** A page in a state worth looking at. */
export interface Scene {
  /** Names the scene in a failure. */
  name: string;
  hash: string;
  /** Brings the page into its state. */
  act?: (page: Page) => Promise<void>;
  /** Shown to a whole room: contrast has to be the enhanced one (WCAG 2.2, 1.4.6). */
  isForHall?: boolean;
  /** Another view of a page that is looked at anyway: for the thorough run. */
  isFurther?: boolean;
}

/** Pages that need nothing done, by address. */
export const PAGES = [
  '#/',
  '#/chart',
  '#/axis',
  '#/visits',
  '#/visits/3',
  '#/visits/new',
  '#/visits/3/record',
  '#/visits/new/record',
  '#/next',
  '#/sheet',
  '#/child',
  '#/children',
  '#/children/new',
  '#/course',
  '#/table',
  '#/report',
  '#/family',
  '#/share',
  '#/incoming',
  '#/keeping',
  '#/lock',
  '#/sources',
  '#/voices',
  '#/reading',
  '#/about',
  '#/settings',
  '#/reflexes',
  '#/reflexes?does=arms-unlike',
  '#/reflexes/moro',
  '#/reflexes/atnr',
  '#/reflexes/nowhere',
  '#/compare',
  '#/compare/moro/acoustic-startle',
  '#/compare/stepping/placing-leg/positive-support/protective-downward',
  '#/order',
  '#/quarrels',
  '#/own',
  '#/own/source/new',
  '#/own/reflex/new',
  '#/talks',
  '#/talks/tables',
  '#/quiz',
  '#/quiz?seed=5&count=6&difficulty=medium',
  '#/quiz?seed=9&count=3&difficulty=hard&kinds=name',
  '#/quiz/paper/5?count=12&difficulty=easy',
  '#/nowhere',
] as const;

const STAGES = [
  '#/stage/first-year?step=5',
  '#/stage/reading-a-child?step=7',
  '#/stage/tables?step=2',
  '#/quiz/stage/5?count=6&difficulty=medium',
  '#/quiz/stage/9?count=3&difficulty=hard&kinds=order',
] as const;

const press = (key: string) => (page: Page) => page.keyboard.press(key);

/** What a quiz shows once it is answered. */
const answered = (key: string) => async (page: Page) => {
  await page.keyboard.press(key);
  await expect(page.locator('main .right').first()).toBeVisible();
};

const SIDES = ['L', 'R', 'left', 'right'];
const TESTED = ['Moro', 'ATNR', 'Galant', 'Rooting', 'Stepping', 'Palmar grasp', 'Plantar grasp'];
/** A clinic's sheet of thirty columns. */
const WIDE_SHEET = [
  `Infant,Seen on,${TESTED.flatMap((name) => SIDES.map((side) => `${name} ${side}`)).join(',')}`,
  `Kestrel,2026-05-13${',weak,+,,'.repeat(TESTED.length)}`,
].join('\n');

const SCENES: readonly Scene[] = [
  {
    name: 'an opened verdict',
    hash: '#/',
    act: async (page) => {
      await verdict(page, 'moro').click();
      await expect(page.locator('#ground-moro')).toContainText('Pitfalls');
    },
  },
  {
    name: 'an opened finding',
    hash: '#/visits/3',
    act: (page) => page.getByRole('button', { name: 'Change Moro reflex' }).click(),
  },
  {
    name: 'recording: a reason is asked for',
    hash: '#/visits/new/record',
    act: async (page) => {
      await page.getByRole('button', { name: 'left: not assessable', exact: true }).click();
      await expect(page.getByText('No reason yet.')).toBeVisible();
    },
  },
  {
    name: 'recording: its keys',
    hash: '#/visits/new/record',
    act: async (page) => {
      await page.keyboard.press('?');
      await expect(page.getByRole('dialog')).toBeVisible();
    },
  },
  {
    name: 'a sheet with everything open',
    hash: '#/next',
    act: async (page) => {
      // on a phone what is beyond the core set is folded
      for (const fold of await page.locator('[data-part] > details > summary').all())
        if (!(await fold.evaluate((one) => one.closest('details')!.open))) await fold.click();
      await page.getByRole('button', { name: 'Remove Snout' }).click();
      await page.getByText(/Not on the sheet: \d+ more/).click();
      const line = page.locator('[data-line="moro"]');
      await line.getByText('Technique').click();
      await expect(line).toContainText('Pitfalls');
    },
  },
  {
    name: 'the exercise on an empty axis, compared',
    hash: '#/axis',
    act: (page) => page.getByRole('button', { name: 'Compare with the sources' }).click(),
  },
  {
    name: 'a picture about to be taken away',
    hash: '#/chart',
    act: async (page) => {
      const folded = page.getByRole('button', { name: 'Chart options' });
      if (await folded.isVisible()) await folded.click(); // on a phone
      await page.getByRole('button', { name: /^Export figure/ }).click();
      await page.locator('.take-away img').waitFor();
    },
  },
  {
    name: 'an answered question',
    hash: '#/quiz?seed=5&count=6&difficulty=medium',
    act: answered('1'),
  },
  {
    name: 'an answered question on a stage',
    hash: '#/quiz/stage/5?count=6&difficulty=medium',
    act: answered('Space'),
    isForHall: true,
  },
  { name: 'the keys of a stage', hash: '#/stage/tables?step=2', act: press('?') },
  {
    name: 'invented children, one of them opened, and what the list shows',
    hash: '#/children',
    act: async (page) => {
      await page.getByRole('button', { name: 'Add sample children' }).click();
      await expect(page.getByText('Sample children added.')).toBeVisible();
      await page.getByRole('button', { name: 'How to read this' }).click();
      await more(page, 'Curlew');
      const filters = page.getByRole('button', { name: 'Filter and sort' });
      if (await filters.isVisible()) await filters.click();
    },
  },
  {
    name: 'a clinic’s sheet of thirty columns',
    hash: '#/children',
    act: async (page) => {
      await dropSheet(page, 'wide.csv', WIDE_SHEET);
      await expect(page.getByRole('button', { name: 'Add 7 findings' })).toBeVisible();
    },
  },
  {
    name: 'a file handed over',
    hash: '#/share',
    act: async (page) => {
      const saving = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save the file' }).click();
      await saving;
    },
  },
  {
    name: 'a talk of one’s own',
    hash: '#/talks',
    act: async (page) => {
      await page.getByRole('button', { name: 'Copy to edit: Look-alikes' }).click();
      await expect(page.getByRole('heading', { level: 1 })).toHaveText('Look-alikes (copy)');
    },
  },
  {
    // last, since what it removes is gone from the pages before
    name: 'a bin with a child in it',
    hash: '#/children',
    act: async (page) => {
      await more(page, 'Kestrel');
      await page.getByRole('button', { name: 'Remove Kestrel' }).click();
      await open(page, '#/keeping');
      await expect(page.getByRole('button', { name: 'Restore Kestrel' })).toBeVisible();
    },
  },
];

/** Pages that another entry shows too: with more on them, or of the same kind. */
const FURTHER: readonly string[] = [
  '#/visits/3', // with an opened finding
  '#/visits/new/record', // asked for a reason, and with its keys
  '#/next', // with everything open
  '#/children', // with the invented ones
  '#/share', // with a file handed over
  '#/reflexes?does=arms-unlike',
  '#/reflexes/atnr',
  '#/reflexes/nowhere',
  '#/compare/moro/acoustic-startle', // four beside one another are harder to fit
  '#/quiz?seed=5&count=6&difficulty=medium', // answered
  '#/quiz?seed=9&count=3&difficulty=hard&kinds=name',
  '#/stage/tables?step=2', // with its keys
  '#/quiz/stage/5?count=6&difficulty=medium', // answered
  '#/quiz/stage/9?count=3&difficulty=hard&kinds=order',
];

const plain = (hash: string): Scene => ({
  name: hash,
  hash,
  isFurther: FURTHER.includes(hash),
});

/** Everything the crawl looks at, in an order in which each can be reached. */
export const ALL: readonly Scene[] = [
  ...PAGES.map(plain),
  ...STAGES.map((hash) => ({ ...plain(hash), isForHall: hash.includes('quiz') })),
  ...SCENES,
];
export const EVERYDAY = ALL.filter(({ isFurther }) => !isFurther);
export const OTHERS = ALL.filter(({ isFurther }) => isFurther);
if (OTHERS.length !== FURTHER.length) throw new Error('a further view is no page of the list');

/** The letters of the kinds of control that a thumb has to hit; the area counts that answers a touch. */
export const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, select, summary, a.word, input:not([type=file])')]
      .filter((one) => one.checkVisibility() && !one.closest('.unseen'))
      .map((one) => (one.matches('input') ? (one.closest('label') ?? one) : one))
      .map((one) => ({ rect: one.getBoundingClientRect(), words: one.textContent.trim() }))
      .filter(({ rect }) => rect.height < 24 || rect.width < 24)
      .map(({ rect, words }) => `${words} ${Math.round(rect.width)} x ${Math.round(rect.height)}`),
  );
