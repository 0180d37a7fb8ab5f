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
    /** What is asked of an element again and again, found out once. */
    const once = <T>(find: (element: Element) => T): ((element: Element) => T) => {
      const found = new Map<Element, T>();
      return (element) => {
        if (!found.has(element)) found.set(element, find(element));
        return found.get(element)!;
      };
    };
    // what lies over the page on purpose
    const floats = once((element): boolean => {
      const { position, zIndex } = getComputedStyle(element);
      return (
        ['fixed', 'sticky'].includes(position) ||
        (position === 'absolute' && zIndex !== 'auto') ||
        (element.parentElement !== null && floats(element.parentElement))
      );
    });
    interface Frame {
      rect: DOMRect;
      scrolls: boolean;
      cuts: boolean;
    }
    /** Whichever of the elements around this one, the body left out, scroll by themselves or cut off. */
    const framesAround = once((element): readonly Frame[] => {
      const at = element.parentElement;
      if (!at) return [];
      const { overflowX, overflowY } = getComputedStyle(at);
      const scrolls = /auto|scroll/.test(overflowX + overflowY);
      const cuts = /hidden|clip/.test(overflowX);
      const own =
        at !== document.body && (scrolls || cuts)
          ? [{ rect: at.getBoundingClientRect(), scrolls, cuts }]
          : [];
      return [...own, ...framesAround(at)];
    });
    /** What of a text is seen within the parts of the page that scroll by themselves. */
    const seen = (element: Element, rect: DOMRect): DOMRect => {
      let { left, top, right, bottom } = rect;
      for (const { rect: frame, scrolls } of framesAround(element)) {
        if (!scrolls) continue;
        [left, right] = [Math.max(left, frame.left), Math.min(right, frame.right)];
        [top, bottom] = [Math.max(top, frame.top), Math.min(bottom, frame.bottom)];
      }
      return new DOMRect(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    };
    const isHidden = once(
      (element): boolean =>
        !element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) ||
        element.closest('.unseen, .skip, #svelte-announcer, option, title, desc') !== null,
    );

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
      for (const { rect: frame, scrolls: doesScroll, cuts } of framesAround(element)) {
        if (cuts && (rect.left < frame.left - 1.5 || rect.right > frame.right + 1.5))
          faults.push(`${said} is cut off`);
        scrolls = doesScroll;
        if (scrolls) break;
      }
      if (!scrolls && (rect.left < -1 || rect.right > document.documentElement.clientWidth + 1))
        faults.push(`${said} leaves the page`);
    }
    // from top to bottom, so that what begins below a box need not be looked at
    const fixed = boxes.filter((box) => !box.floats).sort((a, b) => a.rect.top - b.rect.top);
    fixed.forEach((a, index) => {
      for (let next = index + 1; next < fixed.length; next++) {
        const b = fixed[next]!;
        if (b.rect.top >= a.rect.bottom) break;
        if (a.element.contains(b.element) || b.element.contains(a.element)) continue;
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
