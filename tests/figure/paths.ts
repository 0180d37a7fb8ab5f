/** The points a path goes through or is drawn towards, for the commands that figures use. */
export function pointsOf(d: string): [number, number][] {
  const points: [number, number][] = [];
  let [x, y] = [0, 0];
  const go = (toX: number, toY: number): void => {
    points.push([toX, toY]);
  };
  for (const [, command = '', rest = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const n = (rest.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    const at = (i: number): number => n[i] ?? NaN;
    if (command === 'M') go(at(0), at(1));
    else if (command === 'h') go(x + at(0), y);
    else if (command === 'v') go(x, y + at(0));
    else if (command === 'a') go(x + at(5), y + at(6));
    else if (command === 'l' || command === 'q' || command === 'c')
      for (let i = 0; i + 1 < n.length; i += 2) go(x + at(i), y + at(i + 1));
    else if (command !== 'z' && command !== 'Z') throw new Error(`unknown command: ${command}`);
    [x, y] = points.at(-1) ?? [0, 0];
  }
  return points;
}
