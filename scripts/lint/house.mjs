/**
 * The house rule as lint: which folder of src/ may import from which, and which packages stay out of a folder.
 * The one list below is the order of README's map; folders of one row do not know each other. Types, re-exports, import()
 * and import('…').T count like any other import.
 */
import { dirname, resolve } from 'node:path';

/** Each row imports from the rows above it only. */
export const ROWS = [
  ['language'],
  ['units'],
  ['layout'],
  ['geometry'],
  ['zoning'],
  ['exposure'],
  ['allocation'],
  ['build'],
  ['import', 'export'],
  ['link'],
  ['cli'],
  ['worker'],
  ['store'],
  ['commands'],
  ['canvas'],
  ['panels'],
  ['screens'],
];
/** Rows that run unchanged in Node, worker and page. */
export const ENGINE = ROWS.slice(0, 10).flat();
/** Folders without a single React component. */
const WITHOUT_REACT = [...ENGINE, 'cli', 'worker', 'store', 'commands'];
/** Programs of their own: nothing imports them. */
const ENDS = ['cli'];

const SCREEN_PACKAGES = /^(react|react-dom|konva|react-konva|radix-ui|@radix-ui\/[^/]+)(\/|$)/;
const STATE_PACKAGES = /^(zustand|zundo|idb-keyval)(\/|$)/;
const NODE = /^node:/;

const rank = (folder) => ROWS.findIndex((row) => row.includes(folder));

/** The part of an absolute file name from its last src/ on, with forward slashes; '' outside a src/. */
const fromSource = (file) => {
  const path = file.replaceAll('\\', '/');
  const at = path.lastIndexOf('/src/');
  return at === -1 ? '' : path.slice(at + 1);
};

/** The first folder below src/, '' for a file directly in src/, null outside src/. */
const folderOf = (path) => {
  const [top, folder, ...rest] = path.split('/');
  if (top !== 'src') return null;
  return rest.length > 0 ? folder : '';
};

/** Why `folder` may not import from the folder of src/ at `path`; null where it may. */
const directionFault = (folder, path) => {
  const target = folderOf(path) ?? (path.startsWith('shared/') ? folder : null);
  if (target === null) return `src/ imports from src/ and shared/ only, not from ${path}`;
  if (target === folder) return null;
  if (ENDS.includes(target)) return `nothing imports from ${target}/`;
  if (folder === '') return null;
  if (rank(target) === -1) return `${folder}/ does not know ${path}`;
  return rank(target) < rank(folder) ? null : `${folder}/ stands above ${target}/ and may not import from it`;
};

/** Why `folder` may not use the package `name`; null where it may. */
const packageFault = (folder, name) => {
  if (WITHOUT_REACT.includes(folder) && SCREEN_PACKAGES.test(name)) return `${folder}/ stays free of ${name}`;
  if (!ENGINE.includes(folder)) return null;
  if (STATE_PACKAGES.test(name)) return `the engine folder ${folder}/ stays free of ${name}`;
  return NODE.test(name)
    ? `the engine folder ${folder}/ runs in the page too and stays free of ${name}`
    : null;
};

/** @returns {string | null} what is wrong with `specifier` in the file at `path` (src/…) */
export const importFault = (path, specifier) => {
  const folder = folderOf(path);
  if (folder === null) return null;
  if (folder !== '' && rank(folder) === -1) return `src/${folder}/ is missing in the list of folders`;
  if (!specifier.startsWith('.')) return packageFault(folder, specifier);
  return directionFault(folder, resolve('/', dirname(path), specifier).slice(1));
};

const direction = {
  meta: { type: 'problem', docs: { description: 'Each folder imports only from folders above it.' } },
  create(context) {
    const path = fromSource(context.filename);
    const check = (source) => {
      if (typeof source?.value !== 'string') return;
      const fault = importFault(path, source.value);
      if (fault !== null) context.report({ node: source, message: fault });
    };
    return {
      ImportDeclaration: (node) => check(node.source),
      ExportNamedDeclaration: (node) => check(node.source),
      ExportAllDeclaration: (node) => check(node.source),
      ImportExpression: (node) => check(node.source),
      TSImportType: (node) => check(node.source ?? node.argument?.literal ?? node.argument),
      TSExternalModuleReference: (node) => check(node.expression),
    };
  },
};

export default { meta: { name: 'house' }, rules: { direction } };
