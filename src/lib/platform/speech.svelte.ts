/** The browser's own voice, where it has one for a language. */

const speech = (): SpeechSynthesis | undefined =>
  'speechSynthesis' in globalThis ? globalThis.speechSynthesis : undefined;

export class Voice {
  /** They may come a while after the page. */
  #voices = $state.raw<readonly SpeechSynthesisVoice[]>([]);
  isSpeaking = $state(false);

  /** Listens for voices; answers with what ends it, and with it all that is being said. */
  listen(): () => void {
    const found = speech();
    if (!found) return () => undefined;
    const heard = (): void => {
      this.#voices = found.getVoices();
    };
    heard();
    found.addEventListener('voiceschanged', heard);
    return () => {
      found.removeEventListener('voiceschanged', heard);
      this.hush();
    };
  }

  /** A voice that speaks a language, on this machine: one elsewhere would be sent the words. */
  #for(tag: string): SpeechSynthesisVoice | undefined {
    const [language = tag] = tag.split('-');
    const fitting = this.#voices.filter(({ lang }) => lang.split(/[-_]/)[0] === language);
    return fitting.find(({ localService }) => localService);
  }

  speaks = (tag: string): boolean => this.#for(tag) !== undefined;

  say(text: string, tag: string): void {
    const found = speech();
    const voice = this.#for(tag);
    if (!found || !voice) return;
    found.cancel();
    const said = new SpeechSynthesisUtterance(text);
    said.voice = voice;
    said.lang = voice.lang;
    said.rate = 0.9; // a little slower: it is heard for the first time
    said.onend = said.onerror = () => {
      this.isSpeaking = false;
    };
    this.isSpeaking = true;
    found.speak(said);
  }

  hush(): void {
    speech()?.cancel();
    this.isSpeaking = false;
  }
}
