/**
 * The words in the sources: what is handed to `t` and `rich`, other text that looks like words, and which files the first
 * paint loads. Read from the syntax trees, so that comments and types do not count.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { parseAst } from 'vite';

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}
export interface Found {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

export const SRC = resolve(import.meta.dirname, '../../src');
/** Every source file below src/, the language files left out. */
export const sourceFiles = (): string[] =>
  readdirSync(SRC, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !name.replaceAll('\\', '/').startsWith('language/'))
    .map((name) => join(SRC, name));

const read = (file: string): string => readFileSync(file, 'utf8');
const treeOf = (file: string): Node =>
  parseAst(read(file), { lang: file.endsWith('x') ? 'tsx' : 'ts' }) as unknown as Node;

/** Every node with what it stands in, the nearest last; types left out. */
function walk(node: Node, above: readonly Node[], visit: (node: Node, above: readonly Node[]) => void): void {
  if (node.type.startsWith('TS') && !/^TS(As|Satisfies|NonNull)/.test(node.type)) return;
  visit(node, above);
  const inside = [...above, node];
  for (const value of Object.values(node))
    for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) walk(child, inside, visit);
}

const lineOf = (file: string, at: number): number => read(file).slice(0, at).split('\n').length;
const stringOf = (node: Node): string | null =>
  node.type === 'Literal' && typeof node['value'] === 'string' ? node['value'] : null;

/** All string literals of a file, wherever they stand. */
export function literalsOf(file: string): Set<string> {
  const found = new Set<string>();
  walk(treeOf(file), [], (node) => {
    const text = stringOf(node);
    if (text !== null) found.add(text);
  });
  return found;
}

const NOT_SEEN_ATTRIBUTES = new Set([
  'className',
  'data-testid',
  'key',
  'id',
  'htmlFor',
  'style',
  'viewBox',
  'd',
  'type',
  'role',
  'testId',
  'points',
  'transform',
  'fill',
  'stroke',
  'accept',
  'name',
  'look',
  'href',
  'rel',
  'target',
]);
const nameOf = (node: unknown): string => (isNode(node) ? String(node['name'] ?? '') : '');
/** Calls whose texts nobody reads: failures of the programmer, queries of the page. */
const NOT_READ =
  /^(Error|TypeError|RangeError|matchMedia|querySelector|querySelectorAll|closest|matches|test|replace|split|join|match|includes|startsWith|indexOf|measureText|literal|picklist|regex|addEventListener|setAttribute)$/;

function calleeName(node: Node): string {
  const callee = node['callee'];
  if (!isNode(callee)) return '';
  return callee.type === 'MemberExpression' ? nameOf(callee['property']) : nameOf(callee);
}
const isHidden = (above: readonly Node[]): boolean =>
  above.some(
    (node) =>
      (/^(Import|Export(All|Named)|ThrowStatement)/.test(node.type) &&
        !(node.type === 'ExportNamedDeclaration' && isNode(node['declaration']))) ||
      ((node.type === 'CallExpression' || node.type === 'NewExpression') &&
        NOT_READ.test(calleeName(node))) ||
      (node.type === 'JSXAttribute' && NOT_SEEN_ATTRIBUTES.has(nameOf(node['name']))),
  );

/** What is not read: ids and codes, keys of the keyboard, media queries, fonts, paths, addresses and types of files. */
const NO_WORDS =
  /^([a-z\d.:/_-]+|https?:\S+|(Shift|Alt|Control|Meta|Escape|Enter|Home|End|Delete|Backspace|Insert|Space|Tab)|\(prefers-.*\)|Esc|.*sans-serif|text\/.*|M[\d .-].*)$/;
/** Markup, and what a style or a picture is written in. */
const MARKUP = /[<>]|="|\w="|^" |:$|url\(|gradient\(|rgba\(|^deg, |data:image/;
/** Names of our own and of papers. */
const NAMES = /^(Evenplate( Sheet)?|Letter|English|Deutsch)$/;
/** Words of a language: two of them, or one that begins a sentence. */
const WORDS = /\p{L}{2,}[ \u00a0\u202f,.:;–-]+\p{L}{2,}|^\p{Lu}\p{Ll}{2,}$/u;
const LONE_WORD = /\p{L}{3,}|(?<![\p{L}-])(as|at|by|in|is|no|of|on|or|to)(?![\p{L}-])/u;

/**
 * What stands in files for machines or in their formats, in reports of faults of the program, in names that are stored.
 */
const NOT_FOR_READERS: readonly (readonly [file: RegExp, text: RegExp])[] = [
  // The command line, and the reports, tables and drawings that other programs read, stay English.
  [/^(cli|export\/(drawing|mesh|table|files))\//, /./],
  [/^export\/forUse\.ts$/, /author and reviewer/],
  // Languages as the browser knows them, selectors of the page, the window that another plate came from.
  [/^screens\/link\/LinkText\.tsx$/, /^(de-DE|en-GB)$/],
  [/^commands\/focus\.ts$/, /^select, input/],
  [/^screens\/library\/KeptTable\.tsx$/, /^another window$/],
  [
    /^(commands|screens)\//,
    /^(\.json|.*application\/json|.*image\/.*|.*model\/.*|"evenplate-library"|Shift\+|library-)$/,
  ],
  [/^panels\/readout\/explainLayer\.ts$/, /^max\($/],
  // Names that a new layout stores.
  [/^layout\/(defaults|demo|demoShapes)\.ts$/, /./],
  // Canonical texts, the dictionary of links, the library's file.
  [/^(layout\/checksum|link\/dictionary1|store\/library\/file)\.ts$/, /^[,:{"]/],
  // What the solver's own check says of a fault of the program.
  [/^allocation\/solver\/(check|groups)\.ts$/, /./],
  // Words of the formats that are read: headings of tables, DXF, STL, SVG, 3MF; a file's own words for its things.
  [/^import\/table\/columns\.ts$/, /^[a-zä ]+$/],
  [/^import\/(dxf|svg)\//, /^(AutoCAD Binary DXF|block |use |Mid)$/],
  [/^import\/mesh\//, /^(outer loop|object |:path|xmlns:|Relationship|Override|application\/vnd.*)$/],
  // Codes of messages that are put together, paths of scripts, a statement of a script.
  [/^(import|worker)\//, /^((mesh-)?left-out-|\.\/\w+\.worker\.ts|import )$/],
  // Answers that code compares.
  [
    /^(allocation\/spread|store\/(keeper|sharedStorage|library\/keptAside)|worker\/heightEngine)\.ts$/,
    /^(what .*|as it was|no room|another window|carry through|newest only)$/,
  ],
];
const isForMachines = (file: string, text: string): boolean =>
  NAMES.test(text) || NOT_FOR_READERS.some(([files, texts]) => files.test(file) && texts.test(text));

/** Text in the file that a reader would see and that has no German: literals, pieces of templates, text between tags. */
export function leftovers(file: string, known: ReadonlySet<string>): Found[] {
  const found: Found[] = [];
  const name = file.slice(SRC.length + 1).replaceAll('\\', '/');
  const note = (node: Node, text: string): void => {
    if (!isForMachines(name, text)) found.push({ file: name, line: lineOf(file, node.start), text });
  };
  walk(treeOf(file), [], (node, above) => {
    if (isHidden(above)) return;
    const text = stringOf(node);
    if (text !== null && WORDS.test(text) && !NO_WORDS.test(text) && !MARKUP.test(text) && !known.has(text))
      note(node, text);
    if (node.type === 'TemplateElement') {
      const raw = String((node['value'] as { cooked?: string }).cooked ?? '');
      if (
        !MARKUP.test(raw) &&
        !NO_WORDS.test(raw) &&
        LONE_WORD.test(raw.replace(/(^|[^\p{L}])(mm|cm|kB|MB|rgb|url|translate|rotate|var)(?!\p{L})/gu, ' '))
      )
        note(node, raw);
    }
    if (node.type === 'JSXText' && LONE_WORD.test(String(node['value'])))
      note(node, String(node['value']).trim());
  });
  return found;
}

/** The files that the page's first script holds: imported from main.tsx on, by value and not by `import()`. */
export function firstFiles(): string[] {
  const seen = new Set<string>();
  const visit = (file: string): void => {
    if (seen.has(file)) return;
    seen.add(file);
    walk(treeOf(file), [], (node) => {
      const source = node['source'];
      if (!/^(Import|Export)\w*Declaration$/.test(node.type) || !isNode(source)) return;
      if (node['importKind'] === 'type' || node['exportKind'] === 'type') return;
      const target = String(source['value']);
      if (target.startsWith('.') && !/\.(css|svg|json)|\?/.test(target))
        visit(found(resolve(dirname(file), target)));
    });
  };
  visit(join(SRC, 'main.tsx'));
  return [...seen];
}
const ENDINGS = ['.ts', '.tsx', '/index.ts', '/index.tsx', ''];
function found(path: string): string {
  for (const ending of ENDINGS)
    try {
      read(path + ending);
      return path + ending;
    } catch {
      continue;
    }
  throw new Error(`expected a source file at ${path}`);
}
