/** Words that are typed, in a real browser: kept before the field is left, and never typed over unseen. */
import type { Page } from '@playwright/test';
import { noteOf, setNote, standing } from '../support/keep.ts';
import { expect, listen, open, test, VISIT } from '../support/page.ts';

/** Opens a window on the same store, with the same clock, and listens to its console. */
async function second(page: Page, heard: string[] = []): Promise<Page> {
  const other = await page.context().newPage();
  listen(other, heard);
  await other.clock.setFixedTime(new Date('2026-06-08T10:00:00'));
  return other;
}

/** Types behind what stands in a field, as a person does, and stays in it. */
async function typeIn(page: Page, text: string): Promise<void> {
  await noteOf(page).focus();
  await page.keyboard.press('Control+End');
  await page.keyboard.type(text);
}

const question = (page: Page) => page.getByLabel('The question to the team');

test('a note is kept though its field is not left, and is undone in one step', async ({ page }) => {
  await open(page, '#/visits/3');
  const before = await noteOf(page).inputValue();
  await typeIn(page, ' One.');
  await expect(standing(page)).toHaveText('Saving…');
  await expect(standing(page)).toHaveText('Saved');
  await page.keyboard.type(' Two. ');
  await expect(standing(page)).toHaveText('Saving…');
  await expect(standing(page)).toHaveText('Saved');
  // what is kept is kept without the space at its end, which stays under the fingers
  await expect(noteOf(page)).toHaveValue(`${before} One. Two. `);
  await page.keyboard.type('Three.');
  await noteOf(page).blur();
  const after = `${before} One. Two. Three.`;
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(noteOf(page)).toHaveValue(before);
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(noteOf(page)).toHaveValue(after);
  await expect(standing(page)).toHaveText('Saved');
  await page.reload();
  await expect(noteOf(page)).toHaveValue(after);
});

test(
  'Ctrl+Z in a note takes back letters there and nothing else, also once they are kept',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/3');
    const before = await noteOf(page).inputValue();
    await page.getByRole('button', { name: 'Remove Moro reflex' }).click();
    await typeIn(page, 'startled');
    await expect(standing(page)).toHaveText('Saving…');
    await expect(standing(page)).toHaveText('Saved');
    await page.keyboard.press('Control+z');
    await expect(noteOf(page)).toHaveValue(before);
    await expect(page.getByRole('button', { name: 'Change Moro reflex' })).toBeHidden();
  },
);

for (const [how, go] of [
  ['reloaded', (page: Page) => page.reload().then(() => page)],
  [
    'closed',
    async (page: Page) => {
      const other = await second(page);
      await page.close({ runBeforeUnload: true });
      await other.goto('/#/visits/3');
      return other;
    },
  ],
] as const)
  test(
    `a note in the middle of a word is there when the page is ${how} at once`,
    { tag: how === 'closed' ? '@thorough' : [] },
    async ({ page }) => {
      await open(page, '#/visits/3');
      const before = await noteOf(page).inputValue();
      await typeIn(page, 'unfinis');
      const then = await go(page);
      await expect(noteOf(then)).toHaveValue(`${before}unfinis`);
    },
  );

test('what is typed before the store has answered is there after a reload', async ({ page }) => {
  await page.addInitScript(() => {
    if (sessionStorage.getItem('loaded')) return;
    sessionStorage.setItem('loaded', 'once');
    IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest; // it never answers
  });
  await open(page, '#/visits/3');
  const before = await noteOf(page).inputValue();
  await typeIn(page, 'unfinis');
  await page.reload();
  await expect(noteOf(page)).toHaveValue(`${before}unfinis`);
});

test(
  'a page that goes out of sight keeps at once what is typed',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/3');
    const before = await noteOf(page).inputValue();
    await page.clock.pauseAt(new Date('2026-06-08T10:00:10')); // no pause in the typing ever ends
    await typeIn(page, 'unfinis');
    await page.evaluate(() => {
      Object.defineProperty(document, 'hidden', { value: true, configurable: true });
      document.dispatchEvent(new Event('visibilitychange'));
    });
    await expect(standing(page)).toHaveText('Saved');
    const other = await second(page);
    await open(other, '#/visits/3');
    await expect(noteOf(other)).toHaveValue(`${before}unfinis`);
  },
);

test(
  'what cannot be kept is not said while it is typed, and is when the field is left',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/3');
    const refused = page.getByText('holds markup or script');
    await typeIn(page, ' fine');
    await expect(standing(page)).toHaveText('Saving…');
    await expect(standing(page)).toHaveText('Saved');
    const kept = await noteOf(page).inputValue();
    await page.clock.pauseAt(new Date('2026-06-08T10:00:10'));
    await page.keyboard.type(' <b>');
    await page.clock.runFor(1500);
    await expect(refused).toBeHidden();
    await noteOf(page).blur();
    await expect(refused).toBeVisible();
    await expect(noteOf(page)).toHaveValue(`${kept} <b>`);
    await expect(page.getByText('Not saved yet')).toBeVisible();
    await page.reload();
    await expect(noteOf(page)).toHaveValue(`${kept} <b>`);
  },
);

test(
  'a new visit is kept from its first words on, and its field goes on',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/visits/new');
    await typeIn(page, 'Came in');
    await expect(page).toHaveURL(VISIT);
    await page.keyboard.type(' asleep');
    await expect(noteOf(page)).toHaveValue('Came in asleep');
    await expect(standing(page)).toHaveText('Saving…');
    await expect(standing(page)).toHaveText('Saved');
    await page.reload();
    await expect(noteOf(page)).toHaveValue('Came in asleep');
  },
);

test(
  'two windows typing one note: both are kept, and the user is asked',
  { tag: '@thorough' },
  async ({ page }) => {
    const heard: string[] = [];
    const other = await second(page, heard);
    await open(page, '#/visits/3');
    await open(other, '#/visits/3');
    // the typing never pauses for long enough
    await other.clock.pauseAt(new Date('2026-06-08T10:00:10'));
    const before = await noteOf(other).inputValue();
    await typeIn(other, 'in the other');
    await setNote(page, 'in the one');
    const asked = '1 record was changed differently in two windows: choose';
    await expect(page.getByRole('link', { name: asked })).toBeVisible();
    await expect(noteOf(other)).toHaveValue(`${before}in the other`);
    await open(page, '#/keeping');
    await expect(page.getByText(`${before}in the other`)).toBeVisible();
    await expect(page.getByText('in the one')).toBeVisible();
    expect(heard).toEqual([]);
  },
);

test(
  'words typed on over what came from another window are asked about, not lost',
  { tag: '@thorough' },
  async ({ page }) => {
    const heard: string[] = [];
    const other = await second(page, heard);
    await open(page, '#/visits/3');
    await open(other, '#/visits/3');
    const before = await noteOf(other).inputValue();
    await typeIn(other, 'first');
    await expect(standing(other)).toHaveText('Saving…');
    await expect(standing(other)).toHaveText('Saved');
    await expect(noteOf(page)).toHaveValue(`${before}first`);
    await setNote(page, 'written over it');
    await expect(standing(page)).toHaveText('Saved');
    await other.keyboard.type(' second');
    await expect(noteOf(other)).toHaveValue(`${before}first second`);
    await noteOf(other).blur();
    const asked = '1 record was changed differently in two windows: choose';
    await expect(other.getByRole('link', { name: asked })).toBeVisible();
    await expect(noteOf(other)).toHaveValue('written over it');
    await open(page, '#/keeping');
    await expect(page.getByText(`${before}first second`)).toBeVisible();
    expect(heard).toEqual([]);
  },
);

test(
  'a visit removed in one window while its note is typed in another: the words are not lost',
  { tag: '@thorough' },
  async ({ page }) => {
    const heard: string[] = [];
    const other = await second(page, heard);
    await open(page, '#/visits/3');
    await open(other, '#/visits/3');
    await other.clock.pauseAt(new Date('2026-06-08T10:00:10'));
    await typeIn(other, 'still to come');
    await page.getByRole('button', { name: 'Remove this visit' }).click();
    await expect(standing(page)).toHaveText('Saved');
    await open(page, '#/visits/3');
    await expect(noteOf(page)).toHaveValue(/still to come/);
    await expect(noteOf(other)).toHaveValue(/still to come/);
    // once they are kept, they go with the visit, into the bin
    await page.getByRole('button', { name: 'Remove this visit' }).click();
    await expect(other.getByRole('heading', { name: 'There is no such visit' })).toBeVisible();
    expect(heard).toEqual([]);
  },
);

test(
  'the question of a conference is kept before its field is left',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/table');
    await question(page).focus();
    await page.keyboard.press('Control+a');
    await page.keyboard.type('Is the left side weaker? ');
    await expect(standing(page)).toHaveText('Saved');
    await expect(question(page)).toHaveValue('Is the left side weaker? ');
    await page.reload();
    await expect(question(page)).toHaveValue('Is the left side weaker?');
  },
);

test('a decision typed and not added is there after a look elsewhere and a reload', async ({
  page,
}) => {
  await open(page, '#/table');
  const what = page.getByLabel('Decision', { exact: true });
  await what.fill('Repeat in four weeks');
  await open(page, '#/visits');
  await open(page, '#/table');
  await expect(what).toHaveValue('Repeat in four weeks');
  await page.reload();
  await expect(what).toHaveValue('Repeat in four weeks');
  await page.getByRole('button', { name: 'Record the decision' }).click();
  await expect(what).toHaveValue('');
  await expect(page.getByRole('checkbox', { name: /Repeat in four weeks/ })).toBeVisible();
});

test(
  'a question that cannot be kept stands as it was typed, with what is to be mended',
  { tag: '@thorough' },
  async ({ page }) => {
    await open(page, '#/table');
    await question(page).fill('Is <b>the</b> left side weaker?');
    await question(page).blur();
    await expect(page.locator('#question-wrong')).not.toBeEmpty();
    await expect(question(page)).toHaveValue('Is <b>the</b> left side weaker?');
    await question(page).fill('Is the left side weaker?');
    await question(page).blur();
    await expect(page.locator('#question-wrong')).toBeEmpty();
    await expect(standing(page)).toHaveText('Saved');
  },
);
