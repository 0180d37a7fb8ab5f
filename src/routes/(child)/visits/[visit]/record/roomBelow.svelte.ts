/** How far down the page a part begins: what is left of the screen is divided below it. */
export class RoomBelow {
  topPx = $state(0);
  #room: HTMLElement | undefined;

  measure(): void {
    if (this.#room) this.topPx = Math.ceil(this.#room.getBoundingClientRect().top + window.scrollY);
  }

  /** Follows an element; what stands above it changes its height by itself, as when letters have come. */
  readonly attach = (room: HTMLElement): (() => void) | undefined => {
    this.#room = room;
    this.measure();
    const above = room.previousElementSibling;
    if (!above) return undefined;
    const watch = new ResizeObserver(() => this.measure());
    watch.observe(above);
    return () => watch.disconnect();
  };
}
