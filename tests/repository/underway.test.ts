/** A page that goes in the middle of something leaves word of it, and the next one says so. */
import { expect, test } from 'vitest';
import { Underway } from '../../src/lib/repository/underway.svelte.ts';
import { smallPlace } from '../support/place.ts';

const never = (): Promise<void> => new Promise(() => undefined);
const begun = async (place: Storage, lock?: string): Promise<Underway> => {
  const one = new Underway(() => place);
  await one.begin(() => Promise.resolve(lock));
  return one;
};

test('what was underway is said by the next page, once', async () => {
  const place = smallPlace();
  const gone = await begun(place);
  void gone.during('file', never);
  gone.leave([]);
  expect((await begun(place)).unfinished).toEqual(['file']);
  expect((await begun(place)).unfinished).toEqual([]);
});

test('of what was finished, or has failed and was said to, no word is left', async () => {
  const place = smallPlace();
  const page = await begun(place);
  let finish = (): void => undefined;
  const work = page.during('examples', () => new Promise<void>((resolve) => (finish = resolve)));
  page.leave([]); // out of sight, and back again
  finish();
  await work;
  await page.during('file', () => Promise.reject(new Error('refused'))).catch(() => undefined);
  page.leave([]);
  expect((await begun(place)).unfinished).toEqual([]);
});

test('a lock that was set in time is not said to be as it was', async () => {
  const place = smallPlace();
  for (const [before, after, said] of [
    [undefined, undefined, ['lock']],
    [undefined, 'set', []],
    ['old', 'old', ['lock']],
    ['old', 'new', []],
    ['old', undefined, []],
  ] as const) {
    const gone = await begun(place, before);
    void gone.during('lock', never);
    gone.leave([]);
    expect((await begun(place, after)).unfinished).toEqual(said);
  }
});

test('what no page wrote is no word', async () => {
  const place = smallPlace();
  place.setItem('tidemark-unfinished-a', '[{"kind":"other"}]');
  place.setItem('tidemark-unfinished-b', 'not JSON');
  expect((await begun(place)).unfinished).toEqual([]);
  expect(place.length).toBe(0);
});

test('a word that comes when the next page has begun is said there, and not again', async () => {
  const place = smallPlace();
  const gone = await begun(place);
  const next = await begun(place);
  void gone.during('lock', never);
  gone.leave([]);
  // a browser tells the other pages of each entry, and of each that goes
  const key = place.key(0)!;
  next.hear(key, place.getItem(key));
  next.hear('tidemark-settings', '[{"kind":"file"}]');
  next.hear(key.replace('unfinished', 'unfinished-b'), null);
  expect(next.unfinished).toEqual(['lock']);
  next.hush();
  expect(next.unfinished).toEqual([]);
  expect((await begun(place)).unfinished).toEqual([]);
});

test('a late word of a lock that is another by now is none', async () => {
  const place = smallPlace();
  const gone = await begun(place, 'old');
  const next = await begun(place, 'new');
  void gone.during('lock', never);
  gone.leave([]);
  const key = place.key(0)!;
  next.hear(key, place.getItem(key));
  expect(next.unfinished).toEqual([]);
});
