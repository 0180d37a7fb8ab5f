/** Fills the places of sentences and puts the clinician's edits in their stead. */
import type { CivilDate } from '../age/civil.ts';
import { writtenDate } from '../age/written.ts';
import type { Reflex } from '../atlas/types.ts';
import type { FamilyEdit } from '../case/family.ts';
import {
  FAMILY_WORDS,
  type ChildPlaces,
  type FamilyWords,
  type ReflexPlain,
  type ReflexSentence,
  type SentenceId,
  type Who,
} from '../words/family.ts';
import type { Language } from '../case/family.ts';
import type { Sentence } from './model.ts';

const PLACE = /\{(\w+)\}/g;

export type Places = Readonly<Record<string, string>>;

/** A text with its places filled. An unknown place is an error: it would be read out as it stands. */
export function fill(text: string, places: Places): string {
  return text.replace(PLACE, (_, name: string) => {
    const value = places[name];
    if (value === undefined) throw new Error(`nothing to put into {${name}} of "${text}"`);
    return value;
  });
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Speaks one page: in one language, of one child, with the edits made to that page. */
export class Speaker {
  readonly words: FamilyWords;
  readonly child: ChildPlaces;
  readonly #edits: ReadonlyMap<string, FamilyEdit>;
  readonly #said = new Set<string>();

  constructor(language: Language, who: Who, edits: readonly FamilyEdit[]) {
    this.words = FAMILY_WORDS[language];
    this.child = this.words.child(who);
    this.#edits = new Map(
      edits.filter((edit) => edit.language === language).map((edit) => [edit.key, edit]),
    );
  }

  /** A sentence under a key: the clinician's where it was edited. */
  say(key: string, text: string, places: Places = {}): Sentence {
    const ours = capital(this.fill(text, places));
    const edit = this.#edits.get(key);
    this.#said.add(key);
    return {
      key,
      text: edit ? edit.text : ours,
      ours,
      theirs: edit !== undefined,
      changedBeneath: edit !== undefined && edit.over !== ours,
    };
  }

  /** A text with the child's places and others filled, that is no sentence of its own. */
  fill(text: string, places: Places = {}): string {
    return fill(text, { ...this.child, ...places });
  }

  one(id: SentenceId, places: Places = {}): Sentence {
    return this.say(id, this.words.sentences[id], places);
  }

  /** A sentence about a reflex: its key names the reflex and the kind of sentence. */
  about(reflex: Reflex, id: ReflexSentence, places: Places = {}): Sentence {
    const name = this.nameOf(reflex);
    return this.say(`item.${reflex.id}.${id}`, this.words.aboutReflex[id], {
      reflex: name,
      ...places,
    });
  }

  /** Whether the reflex has plain words of ours. */
  isPlain({ id }: Reflex): boolean {
    return id in this.words.reflexes;
  }

  plainOf({ id }: Reflex): ReflexPlain {
    const known: Readonly<Record<string, ReflexPlain>> = this.words.reflexes;
    return known[id] ?? this.words.ownReflex;
  }

  /** The plain name, beginning small; of a reflex of one's own, the name it was given. */
  name(reflex: Reflex): Sentence {
    const said = this.say(`item.${reflex.id}.name`, this.plainOf(reflex).name, {
      reflex: reflex.name,
    });
    return said.theirs || !this.isPlain(reflex) ? said : { ...said, text: small(said.text) };
  }

  /** The name as other sentences hold it: the clinician's where it was edited. */
  nameOf(reflex: Reflex): string {
    return this.name(reflex).text;
  }

  date(on: CivilDate): string {
    return writtenDate(on, this.words.tag);
  }

  /** Edits whose sentence was not said. */
  unused(): FamilyEdit[] {
    return [...this.#edits.values()].filter(({ key }) => !this.#said.has(key));
  }
}
