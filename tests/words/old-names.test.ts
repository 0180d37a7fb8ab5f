/**
 * Names that clinicians did not understand, kept out of what they read: the words of the interface, the sentences
 * of the command line, the atlas's descriptions, and the guides. The list is typed here by hand, and is not taken
 * from the words. The family's page has plain words of its own and is not looked at. Codes may keep old names:
 * what is only compared or is a key is no text.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Each old name and what is said instead. `whole`: only where it is all of a text. */
const OLD: readonly { old: RegExp; rather: string }[] = [
  {
    old: /\bask(?:s|ed|ing)? for attention\b|\bnothing asks\b/i,
    rather: 'findings to review, flagged',
  },
  { old: /\bwatched\b|\b(?:a|at|to) watch\b|^watch$/i, rather: 'recheck' },
  { old: /\blooked at\b/i, rather: 'tested' },
  { old: /^asking$/, rather: 'flagged' },
  { old: /^in order of$/i, rather: 'sort by' },
  { old: /\brecord on the sheet\b/i, rather: 'record findings' },
  {
    old: /^(?:How|Drop|Ground|Firm|Label|Details|Course|Order|Next)$/,
    rather: 'the name of the thing',
  },
  { old: /\btells? (?:much|little|nothing|more)\b|\btells? of\b/i, rather: 'informative' },
  { old: /\btak(?:e|en) away\b/i, rather: 'export' },
  { old: /\bhand(?:ed)? over\b/i, rather: 'share' },
  {
    old: /\bkeeping and backup\b|\bbackups by themselves\b/i,
    rather: 'storage and backup; automatic',
  },
  { old: /^take it$|\bthrow it away\b/i, rather: 'save, discard' },
  { old: /\bhang(?:s|ing)?\b/i, rather: 'depends' },
  { old: /\bclosing\b/i, rather: 'expected to fade' },
  { old: /\bmissing\b/i, rather: 'not elicited' },
  { old: /\buneven\b/i, rather: 'asymmetric' },
  { old: /\breturned\b/i, rather: 're-emerged' },
  { old: /\bat its height\b/i, rather: 'strong; established' },
  { old: /\bstill there\b|\bthere (?:yet|now|again)\b|\bgone\b/i, rather: 'present, integrated' },
  { old: /\bawaited\b/i, rather: 'expected' },
  {
    old: /\b(?:come|comes|apart from|arms apart|legs apart) (?:apart|each|the legs)\b|\bsets? (?:the )?\w+ apart\b/i,
    rather: 'dissociated',
  },
  { old: /\border of things\b|\bthe trade\b/i, rather: 'developmental sequences; usually taught' },
  { old: /\bquarrel/i, rather: 'disagree' },
  {
    old: /\b(?:sources?|that|voices?|which) speaks?\b|\blets? (?:it )?go\b/i,
    rather: 'give an age; expect integration',
  },
  {
    old: /\bon the (?:back|belly)\b|\bbelly\b|\bheld in the air\b/i,
    rather: 'supine, prone, ventral suspension',
  },
  { old: /\bben(?:t|ds?)\b/i, rather: 'flexed' },
  { old: /\bstraight(?:en|ens|ened|ening)?\b/i, rather: 'extended' },
  { old: /\bspreads?\b/i, rather: 'abducted' },
  { old: /\bdrawn in\b/i, rather: 'adducted' },
  { old: /\bhead let drop\b/i, rather: 'supported head drop' },
  { old: /\bsince birth\b/i, rather: 'chronological' },
  { old: /\bshould answer\b/i, rather: 'expected to be present' },
  { old: /\bage line\b/i, rather: 'age marker' },
  { old: /\binvented\b/i, rather: 'fictional' },
  { old: /\bempty axis\b/i, rather: 'timeline exercise' },
  {
    old: /\bscreen for many\b|\bnear the wrong choices\b|\bnumber of (?:a|the) set\b/i,
    rather: 'present to a class; difficulty; set number',
  },
  { old: /\bforgives a slip\b/i, rather: 'small spelling mistakes are accepted' },
  { old: /\bturns the infant least\b|\bstands last\b/i, rather: 'reposition the infant least' },
  { old: /\bheld in the (?:left|right) hand\b/i, rather: 'device in' },
  { old: /\bthe same again\b/i, rather: 'repeat the passphrase' },
  { old: /\bas the machine\b|\bby custom\b/i, rather: 'match the system; default' },
  { old: /\btakes? (?:no )?part\b/i, rather: 'in use' },
  { old: /\bhas become\b/i, rather: 'was, now' },
  { old: /\bmend(?:s|ed|ing)?\b|\breckon/i, rather: 'correct; compute' },
  { old: /\bat hand\b|\bof (?:your|one’s) own\b/i, rather: 'available; your own' },
  { old: /(?<!\bthere )\b(?:is|are) no (?!longer\b|more\b)\w+/i, rather: 'is not a' },
  { old: /\bstands?\b(?! (?:alone|before))/i, rather: 'is' },
  { old: /\blies\b(?! prone| supine)/i, rather: 'is' },
  { old: /^What\b[^?]*$/, rather: 'a noun' },
];
/** Where such a word is meant otherwise, and how. */
const ALLOWED: readonly { at: RegExp; text: RegExp; why: string }[] = [
  {
    at: /words\/en\/ui\.ts/,
    text: /^(?:Order|Next|Course|Details|Hand over)$/,
    why: 'links of the header',
  },
  {
    at: /words\/en\/(?:tried|course)\.ts/,
    text: /^What if$/,
    why: 'the name of trying another due date or source',
  },
  {
    at: /words\/en\/(?:atlasPages|talks)\.ts/,
    text: /^Next$/,
    why: 'the next reflex or step, no plan of a visit',
  },
  {
    at: /words\/en\/|cli\//,
    text: /^(?:… |--\w+ )?(?:is|are) missing\b/,
    why: 'a field that is not filled in',
  },
  { at: /words\/en\/sheets\.ts/, text: /a quotation mark were missing/, why: 'a sign in a file' },
  {
    at: /words\/en\/lock\.ts/,
    text: /the key that the passphrase opens is missing/,
    why: 'a stored key',
  },
  {
    at: /words\/en\/trouble\.ts/,
    text: /Any that are missing were not saved/,
    why: 'changes in a record',
  },
  {
    at: /words\/en\/pages\.ts/,
    text: /Each way of dating has a spread/,
    why: 'spread of a distribution',
  },
  {
    at: /words\/en\/howRead\.ts/,
    text: /spread evenly over its two months/,
    why: 'weight over a time',
  },
  {
    at: /atlas\/prose\/protective-forward\.ts/,
    text: /fingers spread/i,
    why: 'fingers, as physiotherapists say',
  },
  {
    at: /atlas\/prose\/positive-support\.ts/,
    text: /^leg straightening reflex$/,
    why: 'a synonym in use',
  },
  { at: /atlas\/prose\/glabellar\.ts/, text: /One eyelid closing less/, why: 'an eyelid' },
  {
    at: /atlas\/prose\/swallowing\.ts/,
    text: /missing breathing pauses/,
    why: 'an examiner who overlooks them',
  },
];

const isAllowed = ({ at, text }: Text): boolean =>
  ALLOWED.some((one) => one.at.test(at) && one.text.test(text));

interface Text {
  at: string;
  text: string;
}

const filesIn = (folder: string): string[] =>
  readdirSync(`${ROOT}${folder}`, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${folder}/${name}`);

/** Whether a string is only compared, a key, a type or an address of a module: no text that is read. */
function isCode(node: ts.Node): boolean {
  const { parent } = node;
  return (
    ts.isCaseClause(parent) ||
    ts.isLiteralTypeNode(parent) ||
    ts.isImportDeclaration(parent) ||
    ts.isExportDeclaration(parent) ||
    ts.isElementAccessExpression(parent) ||
    (ts.isPropertyAssignment(parent) && parent.name === node) ||
    (ts.isBinaryExpression(parent) && /^[!=]==$/.test(parent.operatorToken.getText()))
  );
}

function textsOf(file: string): Text[] {
  const source = ts.createSourceFile(
    file,
    readFileSync(`${ROOT}${file}`, 'utf8'),
    ts.ScriptTarget.Latest,
    true,
  );
  const found: Text[] = [];
  const look = (node: ts.Node): void => {
    if ((ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) && !isCode(node))
      found.push({ at: file, text: node.text });
    else if (ts.isTemplateExpression(node))
      found.push({
        at: file,
        text: [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('…'),
      });
    ts.forEachChild(node, look);
  };
  look(source);
  return found;
}

const guide = (file: string): Text[] =>
  readFileSync(`${ROOT}${file}`, 'utf8')
    .replaceAll(/```[\s\S]*?```/g, '')
    .replaceAll(/`[^`]*`/g, '')
    .replaceAll(/\n(?![\n|#-])/g, ' ')
    .split('\n')
    .map((text) => ({ at: file, text }));

const TEXTS: Readonly<Record<string, readonly Text[]>> = {
  words: filesIn('src/lib/words/en')
    .filter((f) => !f.endsWith('/en/family.ts'))
    .flatMap(textsOf),
  cli: filesIn('src/cli').flatMap(textsOf),
  atlas: [
    ...filesIn('src/lib/atlas/prose'),
    'src/lib/atlas/standing.ts',
    'src/lib/atlas/absence.ts',
  ].flatMap(textsOf),
  guides: ['README.md', 'SECURITY.md'].flatMap(guide),
};

describe('old names', () => {
  it.each(Object.keys(TEXTS))('are not in %s', (part) => {
    expect(TEXTS[part]!.length).toBeGreaterThan(20);
    const found = TEXTS[part]!.filter((one) => !isAllowed(one)).flatMap(({ at, text }) =>
      OLD.filter(({ old }) => old.test(text)).map(
        ({ rather }) => `${at}: ${text} (rather: ${rather})`,
      ),
    );
    expect(found).toEqual([]);
  });

  it.each([
    ['Findings that ask for attention', true],
    ['The age line', true],
    ['Both arms bent', true],
    ['A list of findings to review', false],
    ['The arms flexed', false],
  ])('are found in "%s": %s', (text, isOld) => {
    expect(OLD.some(({ old }) => old.test(text))).toBe(isOld);
  });

  it('reads what is said, and passes over codes and keys', () => {
    const texts = TEXTS['words']!.map(({ text }) => text);
    expect(texts).toContain('expected, not elicited');
    expect(texts).not.toContain('missing');
  });
});
