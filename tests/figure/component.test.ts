import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import Figure from '../../src/lib/figure/Figure.svelte';
import Player from '../../src/lib/figure/Player.svelte';
import { sceneOf } from '../../src/lib/figure/scene.ts';
import { VARIANTS } from './cases.ts';

const moro = VARIANTS.find((v) => v.id === 'moro');
if (!moro) throw new Error('the atlas holds the Moro reflex');
const scene = sceneOf(moro.pattern, moro.id, 2, 'left');
const figure = (props: { thin?: boolean } = {}): string =>
  render(Figure, { props: { scene, label: 'Arms spread', ...props } }).body;

test('it is one picture with a name, and carries no style attribute', () => {
  const svg = figure();
  expect(svg.match(/<svg/g)).toHaveLength(1);
  expect(svg).toContain('role="img" aria-label="Arms spread"');
  expect(svg).not.toContain('style=');
});

test('every colour can be set by the page and falls back', () => {
  const colours = [...figure().matchAll(/(?:fill|stroke|stop-color)="([^"]*)"/g)].map((m) => m[1]);
  expect(colours.length).toBeGreaterThan(40);
  for (const colour of colours)
    expect(colour).toMatch(/^(none|url\(#|var\(--[a-z-]+, #|color-mix\(in srgb, var\(--)/);
});

test('every definition has an id of its own, and what is used is defined', () => {
  const svg = figure();
  const ids = [...svg.matchAll(/ id="([^"]*)"/g)].map((m) => m[1]);
  const uses = [...svg.matchAll(/url\(#([^)]*)\)/g)].map((m) => m[1]);
  expect(new Set(ids).size).toBe(ids.length);
  expect(uses.length).toBeGreaterThan(0);
  for (const use of uses) expect(ids).toContain(use);
});

test('a thin figure has finer lines', () => {
  const widest = (svg: string): number =>
    Math.max(...[...svg.matchAll(/stroke-width="([^"]*)"/g)].map((m) => Number(m[1])));
  expect(widest(figure({ thin: true }))).toBeLessThan(widest(figure()));
});

test('the player names its controls and every moment in the words it is given', () => {
  const { body } = render(Player, {
    props: {
      pattern: moro.pattern,
      reflexId: moro.id,
      side: 'left',
      words: {
        controls: 'Show the response',
        play: 'Play',
        hold: 'Hold',
        describe: (i: number) => `Picture ${i}`,
        name: (i: number) => `Moment ${i}`,
      },
    },
  });
  expect(body).toContain('aria-label="Show the response"');
  expect(body).toContain('aria-label="Picture 0"');
  for (const i of [0, 1, 2, 3]) expect(body).toContain(`Moment ${i}`);
  expect(body).not.toContain('style=');
});
