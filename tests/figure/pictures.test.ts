import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import Figure from '../../src/lib/figure/Figure.svelte';
import { momentsOf, sceneOf, thumbnailOf, type Scene } from '../../src/lib/figure/scene.ts';
import { MILESTONE_POSES } from '../../src/lib/figure/milestonePoses.ts';
import { VARIANTS } from './cases.ts';

const FOLDER = new URL('../pictures/figure/', import.meta.url);

/** The stills of a response side by side, drawn by the component itself. */
function sheet(scenes: readonly Scene[], labels: readonly string[]): string {
  const stills = scenes.map((scene, i) => {
    const { body } = render(Figure, {
      props: { scene, label: labels[i] ?? '' },
      idPrefix: `s${i}`,
    });
    return (
      body
        .replaceAll(/<!--.*?-->/g, '')
        .replaceAll(/ class="[^"]*"| data-union(="")?|<defs><\/defs>/g, '')
        // Colours as they fall back, so that a picture can be opened anywhere.
        .replaceAll(/var\(--[a-z-]+, (#[0-9a-f]+)\)/g, '$1')
        .replaceAll('></path>', '/>')
        .replace(
          '<svg ',
          `<svg x="${i * scene.width}" width="${scene.width}" height="${scene.height}" `,
        )
        .replaceAll(/(<(?:path|g|svg|linearGradient|mask|\/g))/g, '\n$1')
    );
  });
  const [first] = scenes;
  const width = scenes.reduce((sum, s) => sum + s.width, 0);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${first?.height ?? 0}">${stills.join('')}\n</svg>\n`;
}

/**
 * A picture seen and approved is kept and compared as text. One that is missing or differs is written
 * beside it, to be looked at; to approve it, put it in the other's place.
 */
function expectApproved(name: string, drawn: string): void {
  mkdirSync(FOLDER, { recursive: true });
  const file = new URL(`${name}.svg`, FOLDER);
  const beside = new URL(`${name}-changed.svg`, FOLDER);
  const approved = existsSync(file) ? readFileSync(file, 'utf8') : '';
  if (approved === drawn) rmSync(beside, { force: true });
  else writeFileSync(beside, drawn);
  expect(approved === drawn, `${name}: compare ${name}.svg with ${name}-changed.svg`).toBe(true);
}

test.each(VARIANTS)('$name', ({ name, pattern, id }) => {
  const moments = momentsOf(pattern, id);
  const scenes = moments.map((m) => sceneOf(pattern, id, m.time, 'left'));
  expectApproved(
    name,
    sheet(
      scenes,
      moments.map((m) => m.key),
    ),
  );
});

test('the small pictures', () => {
  const stations = [
    'arms-from-each-other',
    'arms-from-legs',
    'forward',
    'sideways',
    'backward',
  ] as const;
  expectApproved('thumbnails', sheet(stations.map(thumbnailOf), stations));
});

test('the milestones that orders name', () => {
  expectApproved('milestones', sheet(MILESTONE_POSES.map(thumbnailOf), MILESTONE_POSES));
});

test('every variant has a picture of its own name', () => {
  expect(new Set(VARIANTS.map((v) => v.name)).size).toBe(VARIANTS.length);
});
