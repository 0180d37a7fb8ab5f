/** The machine's sleep, held off while a page is seen. */

/** Holds sleep off, again whenever the page comes back into sight; answers with what lets go. */
export function heldAwake(): () => void {
  let lock: WakeLockSentinel | undefined;
  let over = false;
  const hold = async (): Promise<void> => {
    if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    try {
      lock = await navigator.wakeLock.request('screen');
      if (over) void lock.release();
    } catch {
      // denied, as on a low battery: the page goes on
    }
  };
  const seen = (): void => void hold();
  document.addEventListener('visibilitychange', seen);
  void hold();
  return () => {
    over = true;
    document.removeEventListener('visibilitychange', seen);
    void lock?.release();
  };
}
