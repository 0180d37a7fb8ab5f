/** Saving a table: a browser may read what it is given only after the click has been dealt with. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { saveTable } from '../../src/lib/exchange/tables.ts';

beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout'] }));
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

test('the address of a file is taken back only some time after it was handed over', async () => {
  const link = { href: '', download: '', click: vi.fn() };
  vi.stubGlobal('document', { createElement: () => link });
  vi.spyOn(URL, 'createObjectURL').mockReturnValue('blob:table');
  const revoked = vi.spyOn(URL, 'revokeObjectURL').mockReturnValue();

  await saveTable('Günther & Co.', [
    { reflex: 'Moro reflex', appears: '28 wk', integrates: '4-6 mo', note: '' },
  ]);
  expect(link).toMatchObject({ href: 'blob:table', download: 'günther-co.csv' });
  expect(link.click).toHaveBeenCalledOnce();
  expect(revoked).not.toHaveBeenCalled();
  vi.runOnlyPendingTimers();
  expect(revoked).toHaveBeenCalledExactlyOnceWith('blob:table');

  await saveTable('…', []);
  expect(link.download).toBe('source.csv');
});
