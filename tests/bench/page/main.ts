/** The real chart, driven from outside. Without a harness on the page nothing is shown or offered. */
import './page.css';
import { flushSync, mount } from 'svelte';
import type { Workload } from '../workload.js';
import Bench from './Bench.svelte';

interface Chart {
  cursor(ageWeeks: number): void;
  zoom(weeks: readonly [number, number]): void;
  toggleSource(id: string): void;
  sort(ids: readonly string[]): void;
}

declare global {
  interface Window {
    __harness?: unknown;
    bench?: Chart & { load(work: Workload): void };
  }
}

function offer(target: Element): NonNullable<Window['bench']> {
  let chart: Chart | undefined;
  const now = (change: (chart: Chart) => void): void => {
    flushSync(() => {
      if (chart) change(chart);
    });
  };
  return {
    load(work) {
      chart = mount(Bench, { target, props: { work } });
      flushSync();
    },
    cursor(ageWeeks) {
      now((c) => {
        c.cursor(ageWeeks);
      });
    },
    zoom(weeks) {
      now((c) => {
        c.zoom(weeks);
      });
    },
    toggleSource(id) {
      now((c) => {
        c.toggleSource(id);
      });
    },
    sort(ids) {
      now((c) => {
        c.sort(ids);
      });
    },
  };
}

const target = document.querySelector('main');
if (window.__harness && target) window.bench = offer(target);
