/** Measures the text of a page as it is drawn: what is cut off, what overlaps, what leaves the page. */
import type { Page } from '@playwright/test';

/** Faults of drawn text, each naming the words. Empty when every word can be read. */
export const textFaults = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    interface Box {
      words: string;
      element: Element;
      rect: DOMRect;
      floats: boolean;
    }
    // what lies over the page on purpose
    const floats = (element: Element): boolean => {
      for (let at: Element | null = element; at; at = at.parentElement) {
        const { position, zIndex } = getComputedStyle(at);
        if (['fixed', 'sticky'].includes(position)) return true;
        if (position === 'absolute' && zIndex !== 'auto') return true;
      }
      return false;
    };
    /** What of a text is seen within the parts of the page that scroll by themselves. */
    const seen = (element: Element, rect: DOMRect): DOMRect => {
      let { left, top, right, bottom } = rect;
      for (let at = element.parentElement; at && at !== document.body; at = at.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(at);
        if (!/auto|scroll/.test(overflowX + overflowY)) continue;
        const frame = at.getBoundingClientRect();
        [left, right] = [Math.max(left, frame.left), Math.min(right, frame.right)];
        [top, bottom] = [Math.max(top, frame.top), Math.min(bottom, frame.bottom)];
      }
      return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    };
    const isHidden = (element: Element): boolean =>
      !element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) ||
      element.closest('.unseen, .skip, #svelte-announcer, option, title, desc') !== null;

    const boxes: Box[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const words = node.textContent?.trim() ?? '';
      const element = node.parentElement;
      if (!words || !element || isHidden(element)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const whole of range.getClientRects()) {
        const rect = seen(element, whole);
        if (rect.width > 1 && rect.height > 1)
          boxes.push({ words, element, rect, floats: floats(element) });
      }
    }

    const faults: string[] = [];
    for (const { words, rect, element } of boxes) {
      const said = `"${words.slice(0, 40)}"`;
      let scrolls = false;
      for (let at = element.parentElement; at && !scrolls; at = at.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(at);
        const frame = at.getBoundingClientRect();
        scrolls = /auto|scroll/.test(overflowX + overflowY) && at !== document.body;
        const cuts = /hidden|clip/.test(overflowX) && at !== document.body;
        if (cuts && (rect.left < frame.left - 1.5 || rect.right > frame.right + 1.5))
          faults.push(`${said} is cut off`);
      }
      if (!scrolls && (rect.left < -1 || rect.right > document.documentElement.clientWidth + 1))
        faults.push(`${said} leaves the page`);
    }
    boxes.forEach((a, index) => {
      for (const b of boxes.slice(index + 1)) {
        if (a.floats || b.floats || a.element.contains(b.element) || b.element.contains(a.element))
          continue;
        const wide = Math.min(a.rect.right, b.rect.right) - Math.max(a.rect.left, b.rect.left);
        const high = Math.min(a.rect.bottom, b.rect.bottom) - Math.max(a.rect.top, b.rect.top);
        // a line's box is taller than its letters, so only a real overlap counts
        if (wide > 2 && high > Math.min(a.rect.height, b.rect.height) * 0.4)
          faults.push(`"${a.words.slice(0, 30)}" overlaps "${b.words.slice(0, 30)}"`);
      }
    });
    return [...new Set(faults)];
  });

/** How many pixels the page can be scrolled sideways. */
export const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
