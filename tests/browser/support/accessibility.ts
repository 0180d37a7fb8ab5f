/** Accessibility faults of what a page shows, found by axe-core. The library is put into a page once. */
import type { Page } from '@playwright/test';
import axe from 'axe-core';

/** What is asked of a page beyond axe's own choice of rules, or instead of it. */
export interface AxeScope {
  /** Only these rules. */
  only?: readonly string[];
  /** These rules too, which axe leaves out by itself. */
  also?: readonly string[];
}

/** Rules that depend on colours: all that a dark theme can break. */
export const CONTRAST = { only: ['color-contrast'] } as const satisfies AxeScope;

/** Violations, each naming the rule and the elements. Empty where there is none. */
export async function accessibilityFaults(
  page: Page,
  { only, also }: AxeScope = {},
): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source);
  // a colour that is still on its way to another is neither of the two
  await page.evaluate(async () => {
    await new Promise(requestAnimationFrame);
    const underWay = document
      .getAnimations()
      .filter(({ effect }) => effect?.getComputedTiming().endTime !== Infinity);
    await Promise.allSettled(underWay.map(({ finished }) => finished));
  });
  return page.evaluate(
    async ({ only, also }) => {
      const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
      axe.configure({ noHtml: true }); // a fault names its elements by their selectors
      const { violations, passes } = await axe.run(document, {
        resultTypes: ['violations'],
        ...(only ? { runOnly: { type: 'rule', values: [...only] } } : {}),
        rules: Object.fromEntries((also ?? []).map((rule) => [rule, { enabled: true }])),
      });
      if (violations.length + passes.length === 0) return ['axe looked at nothing'];
      return violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
      );
    },
    { only, also },
  );
}
