/** A file that is being read apart from the page: said where it takes long, with a way to give it up. */
import { Ended } from './pieces.ts';

/** What is read sooner is not spoken of, ms. */
const LONG_MS = 400;

/** How reading ended: all was read, it was given up, or it broke off. */
export type End = 'whole' | 'left' | 'broke';

class Reading {
  /** What is read and has taken a while. */
  now = $state.raw<{ name: string } | undefined>(undefined);
  #going: AbortController | undefined;

  /** Takes each piece in turn. A file that is begun while another is read takes its place. */
  async through<P>(
    name: string,
    pieces: (signal: AbortSignal) => AsyncIterable<P>,
    take: (piece: P) => void,
  ): Promise<End> {
    this.leave();
    const going = (this.#going = new AbortController());
    const timer = setTimeout(() => (this.now = { name }), LONG_MS);
    try {
      for await (const piece of pieces(going.signal)) take(piece);
      return going.signal.aborted ? 'left' : 'whole';
    } catch (error) {
      if (error instanceof Ended) return error.why;
      throw error;
    } finally {
      clearTimeout(timer);
      if (this.#going === going) {
        this.#going = undefined;
        this.now = undefined;
      }
    }
  }

  /** Gives up what is being read. */
  leave(): void {
    this.#going?.abort();
    this.#going = undefined;
    this.now = undefined;
  }
}

export const reading = new Reading();
