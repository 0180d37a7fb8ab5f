/** A path as it is written: to a tenth of a page unit, each step from the last point, without spare characters. */
import type { Spot } from './page.ts';

const TENTHS = 10;

/** Tenths of a unit as short as SVG allows: no leading zero, no trailing one. */
function short(tenths: number): string {
  const sign = tenths < 0 ? '-' : '';
  const size = Math.abs(tenths);
  const whole = Math.floor(size / TENTHS);
  const rest = size % TENTHS;
  return `${sign}${whole || !rest ? whole : ''}${rest ? `.${rest}` : ''}`;
}

const joined = (numbers: readonly string[]): string =>
  numbers.reduce((text, n) => (text && !n.startsWith('-') ? `${text} ${n}` : text + n), '');

/** Writes one path. Steps are counted from rounded points, so that rounding never adds up. */
export class Trace {
  d = '';
  #x = 0;
  #y = 0;

  #steps(points: readonly Spot[]): string {
    const [x0, y0] = [this.#x, this.#y];
    const numbers = points.flatMap(([x, y]) => {
      this.#x = Math.round(x * TENTHS);
      this.#y = Math.round(y * TENTHS);
      return [short(this.#x - x0), short(this.#y - y0)];
    });
    return joined(numbers);
  }

  move(to: Spot): this {
    this.#x = Math.round(to[0] * TENTHS);
    this.#y = Math.round(to[1] * TENTHS);
    this.d += `M${joined([short(this.#x), short(this.#y)])}`;
    return this;
  }

  line(to: Spot): this {
    this.d += `l${this.#steps([to])}`;
    return this;
  }

  /** A clockwise arc of a circle, less than half of it. */
  arc(radius: number, to: Spot): this {
    const r = short(Math.round(radius * TENTHS));
    this.d += `a${joined([r, r, '0', '0', '1', this.#steps([to])])}`;
    return this;
  }

  quadratic(through: Spot, to: Spot): this {
    this.d += `q${this.#steps([through, to])}`;
    return this;
  }

  cubic(out: Spot, back: Spot, to: Spot): this {
    this.d += `c${this.#steps([out, back, to])}`;
    return this;
  }

  close(): string {
    return `${this.d}z`;
  }
}
